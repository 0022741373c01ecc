package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/** Makes the cuts of a sheet, one after the other, as a person with a trimmer would. */
final class Cutting {
  private Cutting() {}

  /** The parts on the table after the last cut. */
  static List<PaperBox> partsOf(Sheet sheet) {
    List<PaperBox> parts = new ArrayList<>();
    parts.add(PaperBox.at(Length.ZERO, Length.ZERO, sheet.size()));
    for (Cut cut : sheet.cuts()) {
      List<PaperBox> hit = parts.stream().filter(part -> runsThrough(cut, part)).toList();
      assertEquals(
          1, hit.size(), () -> cut + " must run edge to edge through one part of " + parts);
      parts.remove(hit.get(0));
      parts.addAll(halves(cut, hit.get(0)));
    }
    return parts;
  }

  /** Every piece is one of the parts, none twice, and every cut makes the edge of a piece. */
  static void assertCutsFreeEveryPiece(Sheet sheet) {
    List<PaperBox> parts = partsOf(sheet);
    Set<PaperBox> pieces = new HashSet<>();
    for (PlacedPiece placed : sheet.pieces()) {
      assertTrue(pieces.add(placed.box()), () -> "two pieces lie at " + placed.box());
      assertTrue(parts.contains(placed.box()), () -> placed + " is not cut out: " + parts);
      PaperSize lying = placed.turned() ? placed.piece().size().turned() : placed.piece().size();
      assertEquals(lying, placed.box().size(), placed::toString);
    }
    for (Cut cut : sheet.cuts()) {
      assertTrue(
          pieces.stream().anyMatch(piece -> isEdge(cut, piece)),
          () -> cut + " makes no piece's edge");
    }
  }

  private static boolean isEdge(Cut cut, PaperBox piece) {
    return cut.axis() == Cut.Axis.X
        ? (cut.at().equals(piece.x()) || cut.at().equals(piece.right()))
            && piece.y().compareTo(cut.to()) < 0
            && cut.from().compareTo(piece.bottom()) < 0
        : (cut.at().equals(piece.y()) || cut.at().equals(piece.bottom()))
            && piece.x().compareTo(cut.to()) < 0
            && cut.from().compareTo(piece.right()) < 0;
  }

  private static boolean runsThrough(Cut cut, PaperBox part) {
    return cut.axis() == Cut.Axis.X
        ? part.y().equals(cut.from())
            && part.bottom().equals(cut.to())
            && cut.at().isLongerThan(part.x())
            && part.right().isLongerThan(cut.at())
        : part.x().equals(cut.from())
            && part.right().equals(cut.to())
            && cut.at().isLongerThan(part.y())
            && part.bottom().isLongerThan(cut.at());
  }

  private static List<PaperBox> halves(Cut cut, PaperBox part) {
    if (cut.axis() == Cut.Axis.X) {
      Length left = cut.at().minus(part.x());
      return List.of(
          new PaperBox(part.x(), part.y(), left, part.height()),
          new PaperBox(cut.at(), part.y(), part.width().minus(left), part.height()));
    }
    Length top = cut.at().minus(part.y());
    return List.of(
        new PaperBox(part.x(), part.y(), part.width(), top),
        new PaperBox(part.x(), cut.at(), part.width(), part.height().minus(top)));
  }
}
