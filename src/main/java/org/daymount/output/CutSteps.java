package org.daymount.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.sheet.Cut;
import org.daymount.sheet.PlacedPiece;
import org.daymount.sheet.Sheet;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.Units;

/**
 * Follows the cuts of a sheet and says each as it is made: on the part then in hand, measured from
 * that part's own edge, because the sheet's edge may be gone by then.
 */
final class CutSteps {
  private final Sheet sheet;
  private final Units units;
  private final List<PaperBox> parts = new ArrayList<>();

  CutSteps(Sheet sheet, Units units) {
    this.units = units;
    this.sheet = sheet;
    parts.add(PaperBox.at(Length.ZERO, Length.ZERO, sheet.size()));
  }

  /** One sentence a cut, in order. */
  List<String> sentences() {
    return sheet.cuts().stream().map(this::sentence).toList();
  }

  private String sentence(Cut cut) {
    PaperBox part =
        parts.stream()
            .filter(cut::runsThrough)
            .findFirst()
            .orElseThrow(
                () -> new IllegalArgumentException("no part is cut from edge to edge by " + cut));
    boolean isUpDown = cut.axis() == Cut.Axis.X;
    PaperBox first = cut.halves(part).get(0);
    PaperBox second = cut.halves(part).get(1);
    String where =
        part.size().equals(sheet.size())
            ? "The sheet: cut "
            : "The part with " + PartNames.of(names(part), ", ") + ": cut ";
    Length measure = isUpDown ? cut.at().minus(part.x()) : cut.at().minus(part.y());
    parts.remove(part);
    parts.add(first);
    parts.add(second);
    return where
        + (isUpDown ? "from top to bottom, " : "from side to side, ")
        + units.of(measure)
        + (isUpDown ? " from the left edge" : " from the top edge")
        + outcome(first, second);
  }

  private String outcome(PaperBox first, PaperBox second) {
    List<String> done = new ArrayList<>();
    piece(first).ifPresent(done::add);
    piece(second).ifPresent(done::add);
    boolean hasWaste = names(first).isEmpty() || names(second).isEmpty();
    String text = done.isEmpty() ? "" : "; " + String.join(" and ", done) + " done";
    return text + (hasWaste ? "; the other side is waste" : "") + ".";
  }

  private Optional<String> piece(PaperBox part) {
    return sheet.pieces().stream()
        .filter(placed -> placed.box().equals(part))
        .map(placed -> placed.piece().label())
        .findFirst();
  }

  private List<String> names(PaperBox part) {
    return sheet.pieces().stream()
        .filter(placed -> placed.box().overlaps(part))
        .map(PlacedPiece::piece)
        .map(org.daymount.sheet.Piece::label)
        .toList();
  }
}
