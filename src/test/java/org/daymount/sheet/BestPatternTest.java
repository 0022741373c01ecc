package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Beside the published cases, small ones that can be added up. */
class BestPatternTest {
  @Test
  void aSheetIsHalvedEitherWay() {
    for (PieceKind half : List.of(new PieceKind(4, 3, false), new PieceKind(2, 6, false))) {
      CuttingInstance wanted = new CuttingInstance(4, 6, List.of(half), new int[] {9});
      BestPattern best = BestPattern.of(wanted, new long[] {5}).orElseThrow();
      assertEquals(10, best.value());
      assertArrayEquals(new int[] {2}, best.pattern().counts());
    }
  }

  @Test
  void nothingOfWorthIsNoPattern() {
    CuttingInstance wanted =
        new CuttingInstance(4, 6, List.of(new PieceKind(4, 3, false)), new int[] {9});
    assertTrue(BestPattern.of(wanted, new long[] {0}).isEmpty());
  }
}
