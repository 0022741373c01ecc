package org.daymount.sheet;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.daymount.crop.Seams;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/** Tells the cropping where pieces larger than the sheet will be joined; asked for every crop. */
public final class SheetJoins implements Seams {
  private final PaperSize sheet;
  private final Map<PaperSize, List<PaperBox>> known = new ConcurrentHashMap<>();

  public SheetJoins(PaperSize sheet) {
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
