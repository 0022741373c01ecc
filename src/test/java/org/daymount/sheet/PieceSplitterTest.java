package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.daymount.sheet.PieceSplitter.Part;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

class PieceSplitterTest {
  private static final PaperSize SHEET_4X6 = PaperSize.inches(4, 6);

  private final PieceSplitter splitter = new PieceSplitter();

  @Test
  void aTallSixByEightBecomesTwoHalvesAboveEachOther() {
    List<Part> parts = split(PaperSize.inches(6, 8), SHEET_4X6);
    assertEquals(
        List.of(
            part("07a-1", box(0, 0, 6, 4)), //
            part("07a-2", box(0, 4, 6, 4))),
        parts);
  }

  @Test
  void aWideEightBySixBecomesTwoHalvesBesideEachOther() {
    List<Part> parts = split(PaperSize.inches(8, 6), SHEET_4X6);
    assertEquals(
        List.of(
            part("07a-1", box(0, 0, 4, 6)), //
            part("07a-2", box(4, 0, 4, 6))),
        parts);
  }

  @Test
  void aPieceThatFitsStaysWholeWithItsLabel() {
    Part whole = new Part(piece(PaperSize.inches(6, 8)), box(0, 0, 6, 8));
    assertEquals(List.of(whole), split(PaperSize.inches(6, 8), PaperSize.inches(6, 8)));
  }

  @Test
  void aPieceThatFitsOnlyTurnedIsNotSplit() {
    assertEquals(1, split(PaperSize.inches(6, 4), SHEET_4X6).size());
    assertEquals(1, split(PaperSize.inches(8, 6), PaperSize.inches(6, 8)).size());
  }

  @Test
  void anEightByTenBecomesFourEqualParts() {
    List<Part> parts = split(PaperSize.inches(8, 10), SHEET_4X6);
    assertEquals(
        List.of(
            part("07a-1", box(0, 0, 4, 5)),
            part("07a-2", box(4, 0, 4, 5)),
            part("07a-3", box(0, 5, 4, 5)),
            part("07a-4", box(4, 5, 4, 5))),
        parts);
  }

  @Test
  void unequalPartsAreTakenWhereTheySaveOne() {
    // Rows and columns make 6. A strip of 10 x 6 takes 4 x 6 and 6 x 6, that is one and two; a
    // strip of 10 x 4 takes two.
    assertEquals(5, split(PaperSize.inches(10, 10), SHEET_4X6).size());
  }

  @Test
  void partsOfAnOddWidthMeetToTheNanometre() {
    PaperSize whole = new PaperSize(new Length(100_000_001), new Length(50_000_000));
    List<Part> parts = split(whole, PaperSize.millimetres(51, 50));
    assertEquals(2, parts.size());
    assertMakeUp(whole, parts);
  }

  @Property(tries = 150)
  void partsMakeUpTheWholeFitTheSheetAndAreTheFewest(
      @ForAll @IntRange(min = 1, max = 18) int width,
      @ForAll @IntRange(min = 1, max = 18) int height,
      @ForAll @IntRange(min = 3, max = 8) int sheetWidth,
      @ForAll @IntRange(min = 3, max = 8) int sheetHeight) {
    PaperSize whole = PaperSize.inches(width, height);
    PaperSize sheet = PaperSize.inches(sheetWidth, sheetHeight);
    List<Part> parts = split(whole, sheet);
    assertMakeUp(whole, parts);
    for (Part part : parts) {
      PaperSize size = part.piece().size();
      assertEquals(size, part.within().size());
      assertTrue(size.fitsInto(sheet) || size.turned().fitsInto(sheet), part.toString());
    }
    assertEquals(fewestByTryingEveryInch(width, height, sheetWidth, sheetHeight), parts.size());
    int rowsAndColumns =
        Math.min(
            ceiling(width, sheetWidth) * ceiling(height, sheetHeight),
            ceiling(width, sheetHeight) * ceiling(height, sheetWidth));
    if (parts.size() == rowsAndColumns) {
      assertAlike(parts);
    }
    for (int i = 1; i < parts.size(); i++) {
      PaperBox before = parts.get(i - 1).within();
      PaperBox next = parts.get(i).within();
      boolean below = next.y().isLongerThan(before.y());
      boolean beside = next.y().equals(before.y()) && next.x().isLongerThan(before.x());
      assertTrue(below || beside, before + " is numbered before " + next);
    }
  }

  private static int ceiling(int number, int by) {
    return (number + by - 1) / by;
  }

  /** To the nanometre that a division may leave. */
  private static void assertAlike(List<Part> parts) {
    PaperSize first = parts.get(0).piece().size();
    for (Part part : parts) {
      PaperSize size = part.piece().size();
      assertTrue(Math.abs(size.width().minus(first.width()).nanometres()) <= 1, size + " " + first);
      assertTrue(
          Math.abs(size.height().minus(first.height()).nanometres()) <= 1, size + " " + first);
    }
  }

  /** A straight join at every whole inch; shares nothing with the splitter. */
  private static int fewestByTryingEveryInch(int width, int height, int a, int b) {
    int[][] fewest = new int[width + 1][height + 1];
    for (int w = 1; w <= width; w++) {
      for (int h = 1; h <= height; h++) {
        fewest[w][h] = w <= a && h <= b || w <= b && h <= a ? 1 : w * h;
        for (int at = 1; at < w; at++) {
          fewest[w][h] = Math.min(fewest[w][h], fewest[at][h] + fewest[w - at][h]);
        }
        for (int at = 1; at < h; at++) {
          fewest[w][h] = Math.min(fewest[w][h], fewest[w][at] + fewest[w][h - at]);
        }
      }
    }
    return fewest[width][height];
  }

  private static void assertMakeUp(PaperSize whole, List<Part> parts) {
    double area = 0;
    for (Part one : parts) {
      PaperBox box = one.within();
      assertTrue(box.x().nanometres() >= 0 && box.y().nanometres() >= 0);
      assertFalse(box.right().isLongerThan(whole.width()));
      assertFalse(box.bottom().isLongerThan(whole.height()));
      for (Part other : parts) {
        assertTrue(one == other || !box.overlaps(other.within()), one + " " + other);
      }
      area += box.size().squareInches();
    }
    assertEquals(whole.squareInches(), area, 1e-9);
  }

  private List<Part> split(PaperSize size, PaperSize sheet) {
    return splitter.split(piece(size), sheet);
  }

  private static Piece piece(PaperSize size) {
    return new Piece("07a", size, 3);
  }

  private static Part part(String label, PaperBox box) {
    return new Part(new Piece(label, box.size(), 3), box);
  }

  private static PaperBox box(double x, double y, double width, double height) {
    return new PaperBox(
        Length.inches(x), Length.inches(y), Length.inches(width), Length.inches(height));
  }
}
