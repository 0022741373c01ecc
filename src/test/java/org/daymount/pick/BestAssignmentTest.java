package org.daymount.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.daymount.pick.BestAssignment.Assignment;
import org.junit.jupiter.api.Test;

class BestAssignmentTest {
  /** The example of scipy.optimize.linear_sum_assignment's reference page, from memory: cost 5. */
  @Test
  void aPublishedSquareCaseReachesItsOptimum() {
    double[][] cost = {{4, 1, 3}, {2, 0, 5}, {3, 2, 2}};
    Assignment best = BestAssignment.ranked(negated(cost), 1).get(0);
    assertEquals(-5, best.worth());
    assertEquals(List.of(1, 0, 2), best.columns());
  }

  /**
   * The worked example of OR-Tools' assignment guide, from memory: 5 workers, 4 tasks, cost 265.
   */
  @Test
  void aPublishedCaseWithMoreRowsThanColumnsLeavesOneRowWithout() {
    double[][] cost = {
      {90, 80, 75, 70}, {35, 85, 55, 65}, {125, 95, 90, 95}, {45, 110, 95, 115}, {50, 100, 90, 100}
    };
    Assignment best = BestAssignment.ranked(negated(cost), 1).get(0);
    assertEquals(-265, best.worth());
    assertEquals(1, best.columns().stream().filter(c -> c == BestAssignment.NONE).count());
  }

  @Test
  void aRowWithoutAPossibleColumnGetsNone() {
    double[][] worth = {{1, Double.NaN}, {2, Double.NaN}};
    Assignment best = BestAssignment.ranked(worth, 1).get(0);
    assertEquals(List.of(BestAssignment.NONE, 0), best.columns());
  }

  @Test
  void aDayWithoutPicturesHasOneWayToStayEmpty() {
    List<Assignment> all = BestAssignment.ranked(new double[2][0], 5);
    assertEquals(List.of(BestAssignment.NONE, BestAssignment.NONE), all.get(0).columns());
  }

  /** Against every assignment there is, by brute force. */
  @Property(tries = 200)
  void rankedAssignmentsAreTheBestOnesInOrderAndAllDifferent(
      @ForAll @IntRange(min = 1, max = 3) int rows,
      @ForAll @IntRange(min = 3, max = 5) int columns,
      @ForAll Random random) {
    double[][] worth = new double[rows][columns];
    for (double[] row : worth) {
      for (int j = 0; j < columns; j++) {
        row[j] = random.nextInt(100);
      }
    }
    List<Double> expected = new ArrayList<>();
    everyWay(worth, 0, new ArrayList<>(), 0, expected);
    expected.sort((a, b) -> Double.compare(b, a));
    List<Assignment> ranked = BestAssignment.ranked(worth, 6);
    for (int k = 0; k < Math.min(ranked.size(), expected.size()); k++) {
      assertEquals(expected.get(k), ranked.get(k).worth(), 1e-9);
    }
    assertTrue(ranked.size() >= Math.min(6, expected.size()));
    assertEquals(
        ranked.size(), new HashSet<>(ranked.stream().map(Assignment::columns).toList()).size());
    assertTrue(
        ranked.stream()
            .limit(expected.size())
            .allMatch(a -> new HashSet<>(a.columns()).size() == rows));
  }

  private static void everyWay(
      double[][] worth, int row, List<Integer> taken, double sum, List<Double> found) {
    if (row == worth.length) {
      found.add(sum);
      return;
    }
    for (int j = 0; j < worth[row].length; j++) {
      if (!taken.contains(j)) {
        taken.add(j);
        everyWay(worth, row + 1, taken, sum + worth[row][j], found);
        taken.remove(Integer.valueOf(j));
      }
    }
  }

  private static double[][] negated(double[][] cost) {
    double[][] worth = new double[cost.length][];
    for (int i = 0; i < cost.length; i++) {
      worth[i] = new double[cost[i].length];
      for (int j = 0; j < cost[i].length; j++) {
        worth[i][j] = -cost[i][j];
      }
    }
    return worth;
  }
}
