package org.daymount.note;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Decides for all lines of a note at once which of them start a day: the cheapest reading, where
 * days that are missing, doubled or out of order cost, and so do lines read against their looks. A
 * dynamic programme over the lines, whose state is the number of the day above. It is run once to
 * learn how this note writes its days, and again with that known.
 */
final class DayOrder {
  private static final int STATES = 32;
  // Chosen on half of our own notes.
  private static final double MISSING = 0.4;
  private static final double MOST_MISSING = 4;
  private static final double NEXT = 0.8; // the very next day is what is waited for
  private static final double DOUBLED = 3.5;
  private static final double BACKWARDS = 5;
  private static final double BACKWARDS_EACH = 0.3;
  private static final double BARE_BACKWARDS = 2; // a bare number is a list sooner than a day
  private static final double HABIT = 2.5;
  private static final double AGAINST_HABIT = 1.5;
  private static final double USUAL = 0.3; // of a note's days
  private static final double UNUSUAL = 0.2;
  private static final double NEARLY_ALL = 0.7; // of a note's days
  private static final double AFTERTHOUGHT = 3;

  private static final double LOST = 1.5; // above the first day a line is on nobody's page

  private final List<List<DayCandidate>> lines;
  private Map<String, Double> habit = Map.of();
  private double rare; // the share of a style met once, or a little more

  private DayOrder(List<List<DayCandidate>> lines) {
    this.lines = lines;
  }

  /**
   * For each line its day, or nothing for a line of story.
   *
   * @param filled how many lines of the note have anything on them
   */
  static List<Optional<DayCandidate>> decide(List<List<DayCandidate>> lines, int filled) {
    DayOrder order = new DayOrder(lines);
    List<Optional<DayCandidate>> first = order.cheapest();
    order.learn(first);
    List<Optional<DayCandidate>> read = order.cheapest();
    long days = read.stream().flatMap(Optional::stream).count();
    return AnyOrder.read(lines, filled)
        .filter(any -> any.stream().flatMap(Optional::stream).count() > days)
        .orElse(read);
  }

  private void learn(List<Optional<DayCandidate>> read) {
    Map<String, Double> shares = new HashMap<>();
    List<DayCandidate> days = read.stream().flatMap(Optional::stream).toList();
    days.forEach(day -> shares.merge(day.style(), 1.0 / days.size(), Double::sum));
    double weekdays =
        shares.entrySet().stream()
            .filter(style -> style.getKey().startsWith("weekday"))
            .mapToDouble(Map.Entry::getValue)
            .sum();
    shares.merge(DayName.SHORT_WEEKDAY_ALONE, weekdays, Math::max);
    rare = Math.max(0.1, days.size() < 5 ? 0 : 1.5 / days.size());
    habit = days.size() < 3 ? Map.of() : shares;
  }

  private List<Optional<DayCandidate>> cheapest() {
    Path rising = run(false);
    Path falling = run(true);
    return falling.cost + 2 < rising.cost ? falling.read : rising.read;
  }

  private record Path(double cost, List<Optional<DayCandidate>> read) {}

  private Path run(boolean falling) {
    double[] cost = new double[STATES];
    Arrays.fill(cost, Double.POSITIVE_INFINITY);
    cost[0] = 0;
    int[][] from = new int[lines.size()][];
    int[][] chosen = new int[lines.size()][];
    for (int i = 0; i < lines.size(); i++) {
      List<DayCandidate> candidates = lines.get(i);
      if (candidates.isEmpty()) {
        continue;
      }
      double story = candidates.stream().mapToDouble(this::strength).max().orElse(0);
      double[] next = new double[STATES];
      from[i] = new int[STATES];
      chosen[i] = new int[STATES];
      for (int above = 0; above < STATES; above++) {
        next[above] = cost[above] + story + (above == 0 ? Math.min(story, LOST) : 0);
        from[i][above] = above;
        chosen[i][above] = -1;
      }
      boolean dated = candidates.stream().anyMatch(this::isUsualDate);
      for (int c = 0; c < candidates.size(); c++) {
        double doubt = doubt(candidates.get(c), dated) + unusual(candidates.get(c), candidates);
        boolean alone = isAlone(i, candidates.get(c));
        relax(candidates.get(c), c, alone, doubt, cost, next, from[i], chosen[i], falling);
      }
      cost = next;
    }
    return trace(cost, from, chosen);
  }

  private void relax(
      DayCandidate day,
      int c,
      boolean alone,
      double doubt,
      double[] cost,
      double[] next,
      int[] from,
      int[] chosen,
      boolean falling) {
    for (int above = 0; above < STATES; above++) {
      int gap = falling ? above - day.first() : day.first() - above;
      if (day.isNextDay() && (gap != 1 || above == 0)) {
        continue;
      }
      // A bare number that goes back does not begin the count anew: lists in stories do that.
      boolean counts =
          day.inMonth()
              && !day.isAfterthought()
              && (above == 0 || gap >= 0 || day.isExplicit() || !day.words().saysNothing());
      int to = counts ? day.lastInRow() : above;
      boolean free = !day.inMonth() || day.isAfterthought();
      double back = counts || free || alone ? 0 : BARE_BACKWARDS;
      double step = free ? 0 : step(above, day, falling);
      double total = cost[above] + doubt + back + (alone ? Math.min(AFTERTHOUGHT, step) : step);
      if (total < next[to]) {
        next[to] = total;
        from[to] = above;
        chosen[to] = c;
      }
    }
  }

  /**
   * Whether a number that goes back is written as nearly all of this note's days are, and is no
   * item of a list: an afterthought on an earlier day.
   */
  private boolean isAlone(int line, DayCandidate day) {
    return habit.getOrDefault(day.style(), 0.0) >= NEARLY_ALL
        && !day.style().isEmpty()
        && IntStream.of(line - 1, line + 1)
            .filter(near -> near >= 0 && near < lines.size())
            .mapToObj(lines::get)
            .flatMap(List::stream)
            .noneMatch(near -> Math.abs(near.first() - day.first()) == 1);
  }

  private static double step(int above, DayCandidate day, boolean falling) {
    if (above == 0) {
      return falling ? 0 : Math.min(1, 0.1 * (day.first() - 1));
    }
    int gap = falling ? above - day.first() : day.first() - above;
    if (gap == 0) {
      return day.mayRepeat() ? 0 : DOUBLED;
    }
    if (gap == 1) {
      return -NEXT;
    }
    return gap > 0 ? Math.min(MOST_MISSING, MISSING * (gap - 1)) : BACKWARDS - BACKWARDS_EACH * gap;
  }

  private double strength(DayCandidate day) {
    return day.strength() + (habit.getOrDefault(day.style(), 0.0) >= USUAL ? HABIT : 0);
  }

  /** 5/6 as the fifth of June, in a note that writes its days so. */
  private boolean isUsualDate(DayCandidate day) {
    return day.names().size() == 1
        && day.style().contains("numeric")
        && habit.getOrDefault(day.style(), 0.0) >= USUAL;
  }

  /**
   * @param dated whether the line is a date as this note writes them, so that it is no range
   */
  private double doubt(DayCandidate day, boolean dated) {
    if (dated && day.names().size() > 1) {
      return day.doubt() + AGAINST_HABIT;
    }
    double fewest = day.style().contains(DayName.BEHIND_DOT) ? USUAL : rare;
    boolean against =
        day.names().size() == 1
            && !habit.isEmpty()
            && habit.getOrDefault(day.style(), 0.0) < fewest;
    return day.doubt() + (against ? AGAINST_HABIT : 0);
  }

  /** Where the same days can be read in this note's own way, that goes before. */
  private double unusual(DayCandidate day, List<DayCandidate> all) {
    boolean usual = habit.getOrDefault(day.style(), 0.0) >= USUAL;
    boolean otherUsual =
        all.stream()
            .filter(other -> other.first() == day.first() && other.last() == day.last())
            .anyMatch(other -> habit.getOrDefault(other.style(), 0.0) >= USUAL);
    return !usual && otherUsual ? UNUSUAL : 0;
  }

  private Path trace(double[] cost, int[][] from, int[][] chosen) {
    int at = 0;
    for (int state = 1; state < STATES; state++) {
      at = cost[state] < cost[at] ? state : at;
    }
    double total = cost[at];
    List<Optional<DayCandidate>> read =
        new ArrayList<>(Collections.nCopies(lines.size(), Optional.empty()));
    for (int i = lines.size() - 1; i >= 0; i--) {
      if (from[i] != null) {
        int c = chosen[i][at];
        read.set(i, c < 0 ? Optional.empty() : Optional.of(lines.get(i).get(c)));
        at = from[i][at];
      }
    }
    return new Path(total, List.copyOf(read));
  }
}
