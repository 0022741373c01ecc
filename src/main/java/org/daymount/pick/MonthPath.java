package org.daymount.pick;

import java.util.ArrayList;
import java.util.List;
import org.daymount.pick.DayOptions.Way;

/**
 * One way to fill each day so that the month as a whole is best: the days' own worth less what it
 * costs when a day shows nearly the same picture as the day before. Exact over the ways offered, by
 * the shortest path through the days (Viterbi 1967).
 */
final class MonthPath {
  private static final double SAME_AS_YESTERDAY = 0.8;

  private MonthPath() {}

  /** Index of the chosen way per day. */
  static List<Integer> best(List<DayOptions> days) {
    int[][] from = new int[days.size()][];
    double[] reached = {0};
    List<Way> before = List.of();
    for (int d = 0; d < days.size(); d++) {
      List<Way> ways = days.get(d).ways();
      double[] next = new double[ways.size()];
      from[d] = new int[ways.size()];
      for (int w = 0; w < ways.size(); w++) {
        double best = Double.NEGATIVE_INFINITY;
        for (int p = 0; p < reached.length; p++) {
          double sameness = before.isEmpty() ? 0 : sameness(before.get(p), ways.get(w));
          if (reached[p] - sameness > best) {
            best = reached[p] - sameness;
            from[d][w] = p;
          }
        }
        next[w] = best + ways.get(w).worth();
      }
      reached = next;
      before = ways;
    }
    return walkBack(days, from, reached);
  }

  private static List<Integer> walkBack(List<DayOptions> days, int[][] from, double[] reached) {
    List<Integer> chosen = new ArrayList<>();
    int way = 0;
    for (int w = 1; w < reached.length; w++) {
      if (reached[w] > reached[way]) {
        way = w;
      }
    }
    for (int d = days.size() - 1; d >= 0; d--) {
      chosen.add(0, way);
      way = from[d][way];
    }
    return chosen;
  }

  static double sameness(Way yesterday, Way today) {
    double sum = 0;
    for (SpaceTrial one : yesterday.filled()) {
      for (SpaceTrial other : today.filled()) {
        sum += SAME_AS_YESTERDAY * Similarity.between(one.looked(), other.looked());
      }
    }
    return sum;
  }
}
