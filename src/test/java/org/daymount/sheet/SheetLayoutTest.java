package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

/** Where pieces lie on a sheet whose rim the lab may cut off; by subtraction. */
class SheetLayoutTest {
  private static final PaperSize SHEET = PaperSize.inches(4, 6);
  private static final Length TRIM = Length.inches(0.0625);

  @Test
  void neighboursMeetWithoutATrimBetweenThem() {
    Sheet row = lay(beside(piece("a", 1.9, 5.8), piece("b", 1.9, 5.8)));
    assertEquals(box(0.0625, 0.0625, 1.9, 5.8), row.pieces().get(0).box());
    assertEquals(box(1.9625, 0.0625, 1.9, 5.8), row.pieces().get(1).box());
    Sheet column = lay(below(piece("a", 3.8, 2.9), piece("b", 3.8, 2.9)));
    assertEquals(box(0.0625, 2.9625, 3.8, 2.9), column.pieces().get(1).box());
  }

  @Test
  void aSmallerNeighbourTakesTheTrimThatTheLargerOneLeft() {
    // 6 - 5.9 in leave .05 at the top; the smaller piece has room for the .0125 that lack.
    Sheet row = lay(beside(piece("a", 2, 5.9), piece("b", 1.8, 5)));
    assertEquals(box(0.0625, 0.05, 2, 5.9), row.pieces().get(0).box());
    assertEquals(box(2.0625, 0.0625, 1.8, 5), row.pieces().get(1).box());
    Sheet column = lay(below(piece("a", 3.9, 3), piece("b", 3, 2.8)));
    assertEquals(box(0.05, 0.0625, 3.9, 3), column.pieces().get(0).box());
    assertEquals(box(0.0625, 3.0625, 3, 2.8), column.pieces().get(1).box());
  }

  @Test
  void whatLacksIsSharedByBothEdges() {
    // After .05 at either edge .0125 lack at both, and there are .02.
    Sheet row = lay(beside(piece("a", 2, 5.9), piece("b", 1.8, 5.88)));
    assertEquals(box(2.0625, 0.06, 1.8, 5.88), row.pieces().get(1).box());
    Sheet column = lay(below(piece("a", 3.9, 3), piece("b", 3.88, 2.8)));
    assertEquals(box(0.06, 3.0625, 3.88, 2.8), column.pieces().get(1).box());
  }

  @Test
  void onlyOuterEdgesWantATrim() {
    // a narrow pair at the right of a tall piece, and of the pair the upper one narrower: it lies
    // at the tall piece, though its right edge is far from the sheet's.
    Sheet sheet = lay(beside(piece("a", 2, 5.8), below(piece("b", 1.5, 2), piece("c", 1.8, 2))));
    assertEquals(box(2.0625, 0.0625, 1.5, 2), sheet.pieces().get(1).box());
    assertEquals(box(2.0625, 2.0625, 1.8, 2), sheet.pieces().get(2).box());
    // the same turned over the diagonal
    Sheet turned =
        new SheetLayout(TRIM, TRIM)
            .lay(
                below(piece("a", 5.8, 2), beside(piece("b", 2, 1.5), piece("c", 2, 1.8))),
                PaperSize.inches(6, 4));
    assertEquals(box(0.0625, 2.0625, 2, 1.5), turned.pieces().get(1).box());
    assertEquals(box(2.0625, 2.0625, 2, 1.8), turned.pieces().get(2).box());
  }

  @Test
  void thePieceCloserToAnEdgeThanTheTrimIsTold() {
    SheetSettings settings = new SheetSettings(SHEET, TRIM);
    Sheet sheet = new Sheet(SHEET, List.of(), List.of());
    assertFalse(touchesTrim(settings, sheet, at(box(0.0625, 0.0625, 3.875, 5.875))));
    assertTrue(touchesTrim(settings, sheet, at(box(0.06, 1, 1, 1))));
    assertTrue(touchesTrim(settings, sheet, at(box(1, 0.06, 1, 1))));
    assertTrue(touchesTrim(settings, sheet, at(box(2.94, 1, 1, 1))));
    assertTrue(touchesTrim(settings, sheet, at(box(1, 4.94, 1, 1))));
    assertFalse(touchesTrim(new SheetSettings(SHEET, Length.ZERO), sheet, at(box(0, 0, 4, 6))));
  }

  @Test
  void aTrimBelowZeroIsRefused() {
    Length below = new Length(-1);
    assertThrows(IllegalArgumentException.class, () -> new SheetSettings(SHEET, below));
  }

  private static PlacedPiece at(PaperBox box) {
    return new PlacedPiece(new Piece("a", box.size(), 0), box, false);
  }

  private static Sheet lay(FilledTree tree) {
    Sheet sheet = new SheetLayout(TRIM, TRIM).lay(tree, SHEET);
    Cutting.assertCutsFreeEveryPiece(sheet);
    return sheet;
  }

  private static FilledTree piece(String label, double width, double height) {
    return new FilledTree.Leaf(new Piece(label, PaperSize.inches(width, height), 0), false);
  }

  private static FilledTree beside(FilledTree one, FilledTree other) {
    return new FilledTree.Join(Cut.Axis.X, one, other);
  }

  private static FilledTree below(FilledTree one, FilledTree other) {
    return new FilledTree.Join(Cut.Axis.Y, one, other);
  }

  private static PaperBox box(double x, double y, double width, double height) {
    return new PaperBox(
        Length.inches(x), Length.inches(y), Length.inches(width), Length.inches(height));
  }

  /** Whether the lab may cut into the piece: it lies closer to the sheet's edge than the trim. */
  static boolean touchesTrim(SheetSettings settings, Sheet on, PlacedPiece placed) {
    PaperBox box = placed.box();
    Length nearest =
        box.x()
            .min(box.y())
            .min(on.size().width().minus(box.right()))
            .min(on.size().height().minus(box.bottom()));
    return settings.labTrim().isLongerThan(nearest);
  }
}
