package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CuttingStockSolverTest {
  private static final int NODES = 1_500;
  private static final int BAR = 132;

  /**
   * Bars of 132. The relaxation needs 2/3 + 3/4 + 6/11 = 1.96 of them, and still two are not
   * enough: of two only 5 could be lost. A bar with both pieces of 44 loses 8 or 11; of two bars
   * with one each, one also has two of 33, and loses 10. (Instances like this are known in the
   * literature on the gap between the two; this one is quoted from memory, the argument is
   * complete.)
   */
  private static final int[] LENGTHS = {44, 33, 12};

  private static final int[] DEMAND = {2, 3, 6};

  @Test
  void aSheetMoreThanTheBoundIsProvenWhereTheBoundCannotBeMet() {
    CuttingStockSolver.Cover cover = bars().fewest(DEMAND, NODES);
    assertEquals(2 / 3.0 + 3 / 4.0 + 6 / 11.0, cover.linear(), 1e-9);
    assertEquals(2, cover.atLeast());
    assertEquals(3, cover.sheets());
    assertTrue(cover.fewest());
    assertMeets(cover.times());
  }

  /** Every way to fill bars one after the other is tried; shares nothing with the programme. */
  @Test
  void noOtherUseOfThePatternsNeedsFewerSheets() {
    Random random = new Random(11);
    for (int i = 0; i < 300; i++) {
      int[] lengths = {20 + random.nextInt(60), 20 + random.nextInt(60), 10 + random.nextInt(40)};
      int[] demand = {random.nextInt(5), random.nextInt(5), 1 + random.nextInt(5)};
      List<int[]> patterns = patterns(lengths);
      CuttingStockSolver.Cover cover = new CuttingStockSolver(patterns).fewest(demand, NODES);
      String what = Arrays.toString(lengths) + " " + Arrays.toString(demand);
      assertEquals(fewestBars(patterns, demand, new HashMap<>()), cover.sheets(), what);
      assertTrue(cover.fewest(), what);
      assertTrue(isMet(demand, patterns, cover.times()), what);
    }
  }

  /** Bars of 132 cut into three pieces each and shuffled: no plan can do with fewer. */
  @Test
  void aPlanWithoutWasteIsFound() {
    for (long seed = 0; seed < 12; seed++) {
      Random random = new Random(seed);
      int[] lengths = new int[12];
      for (int i = 0; i < lengths.length; i += 3) {
        lengths[i] = 20 + random.nextInt(30);
        lengths[i + 1] = 20 + random.nextInt(30);
        lengths[i + 2] = BAR - lengths[i] - lengths[i + 1];
      }
      int[] demand = new int[lengths.length];
      Arrays.fill(demand, 1);
      List<int[]> patterns = new ArrayList<>();
      addSubsets(patterns, lengths, new int[lengths.length], 0, BAR);
      CuttingStockSolver.Cover cover = new CuttingStockSolver(patterns).fewest(demand, NODES);
      assertEquals(4, cover.sheets(), "seed " + seed);
      assertTrue(cover.fewest(), "seed " + seed);
      assertTrue(isMet(demand, patterns, cover.times()), "seed " + seed);
    }
  }

  private static void addSubsets(
      List<int[]> patterns, int[] lengths, int[] chosen, int next, int rest) {
    if (next == lengths.length) {
      patterns.add(chosen.clone());
      return;
    }
    addSubsets(patterns, lengths, chosen, next + 1, rest);
    if (lengths[next] <= rest) {
      chosen[next] = 1;
      addSubsets(patterns, lengths, chosen, next + 1, rest - lengths[next]);
      chosen[next] = 0;
    }
  }

  private static int fewestBars(
      List<int[]> patterns, int[] open, Map<List<Integer>, Integer> known) {
    List<Integer> key = Arrays.stream(open).boxed().toList();
    if (Arrays.stream(open).sum() == 0) {
      return 0;
    }
    Integer answer = known.get(key);
    if (answer == null) {
      answer = Integer.MAX_VALUE;
      for (int[] pattern : patterns) {
        int[] rest = open.clone();
        for (int kind = 0; kind < rest.length; kind++) {
          rest[kind] = Math.max(0, rest[kind] - pattern[kind]);
        }
        if (!Arrays.equals(rest, open)) {
          answer = Math.min(answer, 1 + fewestBars(patterns, rest, known));
        }
      }
      known.put(key, answer);
    }
    return answer;
  }

  @Test
  void aPlanWithSoManySheetsIsFoundOrThereIsNone() {
    CuttingStockSolver bars = bars();
    long[] prices = bars.prices(DEMAND);
    assertEquals(Optional.empty(), bars.within(DEMAND, 2, prices, NODES));
    assertMeets(bars.within(DEMAND, 3, prices, NODES).orElseThrow());
  }

  @Test
  void piecesThatNoPatternHasAreRefused() {
    CuttingStockSolver cover = new CuttingStockSolver(List.of(new int[] {1, 0}));
    assertThrows(IllegalArgumentException.class, () -> cover.fewest(new int[] {1, 1}, NODES));
  }

  @Test
  void partOfASheetIsAWholeOne() {
    assertEquals(0, CuttingStockSolver.ceilingOf(0, 3));
    assertEquals(1, CuttingStockSolver.ceilingOf(1, 3));
    assertEquals(1, CuttingStockSolver.ceilingOf(3, 3));
    assertEquals(2, CuttingStockSolver.ceilingOf(4, 3));
  }

  @Test
  void theBoundIsTheWorthOfAllPiecesInSheetsOfTheDearestPattern() {
    CuttingStockSolver cover = new CuttingStockSolver(List.of(new int[] {2, 0}, new int[] {1, 1}));
    // 3 x 2 + 4 x 5 = 26; the dearest pattern is worth 7
    assertEquals(4, cover.atLeast(new long[] {2, 5}, new int[] {3, 4}));
    assertEquals(0, cover.atLeast(new long[] {0, 0}, new int[] {3, 4}));
  }

  private static void assertMeets(int[] times) {
    assertTrue(isMet(DEMAND, patterns(LENGTHS), times), Arrays.toString(times));
    assertEquals(3, Arrays.stream(times).sum());
  }

  private static boolean isMet(int[] demand, List<int[]> patterns, int[] times) {
    for (int kind = 0; kind < demand.length; kind++) {
      int made = 0;
      for (int i = 0; i < times.length; i++) {
        made += times[i] * patterns.get(i)[kind];
      }
      if (made < demand[kind]) {
        return false;
      }
    }
    return true;
  }

  private static CuttingStockSolver bars() {
    return new CuttingStockSolver(patterns(LENGTHS));
  }

  /** The fillings of a bar of 132 to which no piece of the last length could be added. */
  private static List<int[]> patterns(int[] lengths) {
    List<int[]> patterns = new ArrayList<>();
    for (int a = 0; a * lengths[0] <= BAR; a++) {
      for (int b = 0; a * lengths[0] + b * lengths[1] <= BAR; b++) {
        int c = (BAR - a * lengths[0] - b * lengths[1]) / lengths[2];
        patterns.add(new int[] {a, b, c});
      }
    }
    return patterns;
  }
}
