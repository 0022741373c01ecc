package org.daymount.benchmark;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What one run took.
 *
 * @param cpu seconds of processor time, with all child processes
 * @param wall seconds
 * @param megabytes the most memory any one process held (resident), as far as it was seen
 */
record Cost(double cpu, double wall, double megabytes) {
  /** Of each figure by itself. */
  static Cost median(List<Cost> costs) {
    return new Cost(
        median(costs, Cost::cpu), median(costs, Cost::wall), median(costs, Cost::megabytes));
  }

  Cost perFile(int files) {
    return new Cost(cpu / files, wall / files, megabytes);
  }

  private static double median(List<Cost> costs, ToDoubleFunction<Cost> figure) {
    List<Double> sorted =
        costs.stream().map(figure::applyAsDouble).sorted(Comparator.naturalOrder()).toList();
    int middle = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(middle)
        : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
  }
}
