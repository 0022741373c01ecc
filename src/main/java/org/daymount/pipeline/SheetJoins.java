package org.daymount.pipeline;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.daymount.crop.Seams;
import org.daymount.sheet.Piece;
import org.daymount.sheet.PieceSplitter;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/** Tells the cropping where pieces larger than the sheet will be joined; asked for every crop. */
final class SheetJoins implements Seams {
  private final PaperSize sheet;
  private final Map<PaperSize, List<PaperBox>> known = new ConcurrentHashMap<>();

  SheetJoins(PaperSize sheet) {
    this.sheet = sheet;
  }

  @Override
  public List<PaperBox> parts(PaperSize piece) {
    return known.computeIfAbsent(
        piece,
        size ->
            new PieceSplitter()
                .split(new Piece("whole", size, 0), sheet).stream()
                    .map(PieceSplitter.Part::within)
                    .toList());
  }
}
