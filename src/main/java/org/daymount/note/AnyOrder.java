package org.daymount.note;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A note whose lines are nearly all days, each of them once, in whatever order they came to mind.
 */
final class AnyOrder {
  private static final int FEWEST = 6; // days
  private static final double OF_LINES = 0.8; // are days
  private static final double OF_SPAN = 0.8; // from the first to the last day are there

  private AnyOrder() {}

  /** For each line its day; empty when the note is not of that kind. */
  static Optional<List<Optional<DayCandidate>>> read(List<List<DayCandidate>> lines, int filled) {
    List<Optional<DayCandidate>> read = new ArrayList<>();
    Set<Integer> seen = new HashSet<>();
    for (List<DayCandidate> candidates : lines) {
      Optional<DayCandidate> best =
          candidates.stream()
              .filter(DayCandidate::inMonth)
              .filter(day -> !day.style().equals(DayName.WEEKDAY_ALONE))
              .filter(day -> day.doubt() < Math.max(1, day.strength()))
              .max(Comparator.comparingDouble(day -> day.strength() - day.doubt()));
      if (best.isPresent()) {
        for (int day : best.get().names().stream().map(PartialDate::day).toList()) {
          if (!seen.add(day)) {
            return Optional.empty();
          }
        }
      }
      read.add(best);
    }
    int first = seen.stream().min(Integer::compare).orElse(0);
    int last = seen.stream().max(Integer::compare).orElse(0);
    long days = read.stream().flatMap(Optional::stream).count();
    boolean is =
        days >= FEWEST && days >= OF_LINES * filled && seen.size() >= OF_SPAN * (last - first + 1);
    return is ? Optional.of(List.copyOf(read)) : Optional.empty();
  }
}
