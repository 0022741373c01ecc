package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ColumnGenerationTest {
  @Test
  void wherePiecesAreOfTooManySizesTheirAreaStillBoundsTheSheets() {
    // Strips of one height, two of each length, which together fill three sheets exactly.
    Random random = new Random(5);
    List<PieceKind> kinds = new ArrayList<>();
    long sum = 0;
    for (int i = 0; i < 41; i++) {
      long length = 1_000 + random.nextInt(2_000);
      sum += 2 * length;
      kinds.add(new PieceKind(length, 1, false));
    }
    long last = 1_000 + (3 - (sum + 2_000) % 3) * 2 % 3; // makes the sum one of threes
    kinds.add(new PieceKind(last, 1, false));
    sum += 2 * last;
    assertEquals(0, sum % 3);
    int[] demand = new int[kinds.size()];
    Arrays.fill(demand, 2);
    CuttingInstance wanted = new CuttingInstance(sum / 3, 1, kinds, demand);
    assertTrue(BestPattern.of(wanted, new long[kinds.size()]).isEmpty());
    assertEquals(3, ColumnGeneration.from(FirstFit.pack(wanted), wanted).atLeast());
  }
}
