package org.daymount.benchmark;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.daymount.benchmark.Contender.Input;

/**
 * What the contenders took on one month.
 *
 * @param costs medians, in the order of the turns; without those that failed
 */
record Results(int jpegs, int heics, Map<Contender, Cost> costs) {

  /** One table for each kind of input. */
  void print() {
    for (Input input : Input.values()) {
      if (costs.keySet().stream().anyMatch(contender -> contender.input() == input)) {
        print(input);
      }
    }
  }

  private void print(Input input) {
    Optional<Cost> reference =
        costs.keySet().stream()
            .filter(contender -> contender.name().equals(input.reference()))
            .findFirst()
            .map(costs::get);
    System.out.printf(
        Locale.ROOT,
        "%-32s %9s %9s %8s %10s %10s%n",
        input + " (" + input.files(jpegs, heics) + ")",
        "CPU s",
        "wall s",
        "MB",
        "CPU ratio",
        "wall ratio");
    costs.forEach(
        (contender, cost) -> {
          if (contender.input() == input) {
            System.out.printf(
                Locale.ROOT,
                "%-32s %9.2f %9.2f %8.0f %10s %10s%n",
                contender.name(),
                cost.cpu(),
                cost.wall(),
                cost.megabytes(),
                ratio(cost.cpu(), reference.map(Cost::cpu)),
                ratio(cost.wall(), reference.map(Cost::wall)));
          }
        });
    System.out.println();
  }

  private static String ratio(double value, Optional<Double> of) {
    return of.map(one -> String.format(Locale.ROOT, "%.2f", value / one)).orElse("-");
  }

  /** What a contender took for each of its files; empty when it took none, or failed. */
  Optional<Cost> perFile(Contender contender) {
    int files = contender.input().files(jpegs, heics);
    return files == 0
        ? Optional.empty()
        : Optional.ofNullable(costs.get(contender)).map(cost -> cost.perFile(files));
  }
}
