package org.daymount.benchmark;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether a photo costs the same in a small month as in a large one. */
final class Slope {
  private Slope() {}

  /**
   * For each contender milliseconds per file at each size, and that as a ratio to the size before.
   *
   * @param sizes in the order in which they were run; nothing is printed for a single one
   */
  static void print(List<Results> sizes) {
    if (sizes.size() < 2) {
      return;
    }
    System.out.printf(
        Locale.ROOT,
        "%-32s %7s %10s %7s %10s %7s%n",
        "per file",
        "photos",
        "CPU ms",
        "ratio",
        "wall ms",
        "ratio");
    for (Contender contender : sizes.get(0).costs().keySet()) {
      Optional<Cost> before = Optional.empty();
      for (Results results : sizes) {
        Optional<Cost> now = results.perFile(contender);
        if (now.isPresent()) {
          print(contender.name(), results.jpegs(), now.get(), before);
        }
        before = now;
      }
    }
  }

  private static void print(String name, int photos, Cost now, Optional<Cost> before) {
    System.out.printf(
        Locale.ROOT,
        "%-32s %7d %10.1f %7s %10.1f %7s%n",
        name,
        photos,
        1000 * now.cpu(),
        ratio(now.cpu(), before.map(Cost::cpu)),
        1000 * now.wall(),
        ratio(now.wall(), before.map(Cost::wall)));
  }

  private static String ratio(double now, Optional<Double> before) {
    return before.map(one -> String.format(Locale.ROOT, "%.2f", now / one)).orElse("");
  }
}
