package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Small sheets in whole inches, drawn on paper first. */
class FirstFitTest {
  @Test
  void theLargestPieceIsPlacedFirst() {
    // 4 x 6 fills a sheet; the small one, though named first, comes onto the second.
    List<Pattern> sheets = pack(4, 6, new int[] {1, 1}, kind(3, 4), kind(4, 6));
    assertEquals(2, sheets.size());
    assertArrayEquals(new int[] {0, 1}, sheets.get(0).counts());
    assertArrayEquals(new int[] {1, 0}, sheets.get(1).counts());
  }

  @Test
  void theLongerRestStaysWhole() {
    // Below 8 x 7 on 10 x 10 a strip of 10 x 3 is left, or of 8 x 3 if the sheet were cut the other
    // way first; and the same turned.
    assertEquals(1, pack(10, 10, new int[] {1, 1}, kind(8, 7), kind(10, 3)).size());
    assertEquals(1, pack(10, 10, new int[] {1, 1}, kind(7, 8), kind(3, 10)).size());
  }

  @Test
  void bothRestsAreUsed() {
    // 6 x 6 on 10 x 8: beside it 4 x 8 for two of 4 x 4, below it 6 x 2 for three of 2 x 2.
    List<Pattern> sheets = pack(10, 8, new int[] {1, 2, 3}, kind(6, 6), kind(4, 4), kind(2, 2));
    assertEquals(1, sheets.size());
    assertArrayEquals(new int[] {1, 2, 3}, sheets.get(0).counts());
    long[] extent = extent(sheets.get(0).tree(), kind(6, 6), kind(4, 4), kind(2, 2));
    assertTrue(extent[0] <= 10 && extent[1] <= 8, extent[0] + " x " + extent[1]);
  }

  @Test
  void aPieceIsTurnedWhereItLiesInNoOtherWay() {
    PieceKind lying = new PieceKind(6, 4, true);
    GuillotineTree tree = pack(4, 6, new int[] {1}, lying).get(0).tree();
    assertEquals(new GuillotineTree.Slot(0, true), tree);
  }

  @Test
  void aSheetThatIsFullIsFollowedByAnother() {
    List<Pattern> sheets = pack(4, 6, new int[] {5}, kind(4, 3));
    assertEquals(List.of(2, 2, 1), sheets.stream().map(sheet -> sheet.counts()[0]).toList());
  }

  @Test
  void aPieceLargerThanTheSheetIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> pack(4, 6, new int[] {1}, kind(5, 7)));
  }

  private static PieceKind kind(long width, long height) {
    return new PieceKind(width, height, false);
  }

  private static List<Pattern> pack(long width, long height, int[] demand, PieceKind... kinds) {
    return FirstFit.pack(new CuttingInstance(width, height, List.of(kinds), demand));
  }

  private static long[] extent(GuillotineTree tree, PieceKind... kinds) {
    if (tree instanceof GuillotineTree.Slot slot) {
      return new long[] {kinds[slot.kind()].width(), kinds[slot.kind()].height()};
    }
    GuillotineTree.Split split = (GuillotineTree.Split) tree;
    long[] one = extent(split.first(), kinds);
    long[] other = extent(split.second(), kinds);
    return split.axis() == Cut.Axis.X
        ? new long[] {one[0] + other[0], Math.max(one[1], other[1])}
        : new long[] {Math.max(one[0], other[0]), one[1] + other[1]};
  }
}
