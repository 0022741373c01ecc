package org.daymount.sheet;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Chooses the patterns sheet by sheet so that early days are cut from early sheets. A sheet that
 * holds the next pieces in order is taken if the pieces left over still need no more sheets than
 * the fewest; so the order costs no sheet.
 */
final class SheetSequence {
  private static final int MOST_LOOKED_AT = 12; // patterns tried for one sheet
  private static final int MOST_SOLVED = 60; // programmes solved for one month
  private static final int MOST_NODES = 60; // of one such programme

  private final List<Pattern> patterns;
  private final CuttingStockSolver cover;
  private final long[] prices;
  private final Set<IntBuffer> hopeless = new HashSet<>();
  private int solved;

  SheetSequence(List<Pattern> patterns, CuttingStockSolver cover, long[] prices) {
    this.patterns = patterns;
    this.cover = cover;
    this.prices = prices.clone();
  }

  /** One sheet: its pattern and how many pieces of each kind it takes, the next in order. */
  record Step(Pattern pattern, int[] taken) {}

  /**
   * @param ranks for each kind the places of its pieces in the order of the month, rising
   * @param times a plan with the fewest sheets: how often each pattern is used
   */
  List<Step> inOrder(List<int[]> ranks, int[] times) {
    int[] done = new int[ranks.size()];
    int[] plan = times.clone();
    List<Step> steps = new ArrayList<>();
    while (CuttingStockSolver.total(open(ranks, done)) > 0) {
      int[] open = open(ranks, done);
      Choice choice = choose(ranks, done, open, plan);
      int[] taken = taken(patterns.get(choice.pattern()), open);
      steps.add(new Step(patterns.get(choice.pattern()), taken));
      for (int kind = 0; kind < done.length; kind++) {
        done[kind] += taken[kind];
      }
      plan = choice.planAfter();
    }
    return steps;
  }

  private record Choice(int pattern, int[] planAfter) {}

  private Choice choose(List<int[]> ranks, int[] done, int[] open, int[] plan) {
    List<Integer> wanted = byOrder(ranks, done, open);
    long sheetsAfter = CuttingStockSolver.total(plan) - 1;
    for (int tried = 0; tried < wanted.size(); tried++) {
      int pattern = wanted.get(tried);
      if (plan[pattern] > 0) {
        int[] after = plan.clone();
        after[pattern]--;
        return new Choice(pattern, after);
      }
      if (tried < MOST_LOOKED_AT) {
        Optional<int[]> after =
            planFor(minus(open, taken(patterns.get(pattern), open)), sheetsAfter);
        if (after.isPresent()) {
          return new Choice(pattern, after.get());
        }
      }
    }
    throw new IllegalStateException("the plan has no sheet for the pieces left");
  }

  private Optional<int[]> planFor(int[] open, long sheets) {
    if (CuttingStockSolver.total(open) == 0) {
      return Optional.of(new int[patterns.size()]);
    }
    IntBuffer key = IntBuffer.wrap(open);
    if (cover.atLeast(prices, open) > sheets || hopeless.contains(key) || solved >= MOST_SOLVED) {
      return Optional.empty();
    }
    solved++;
    Optional<int[]> plan = cover.within(open, sheets, prices, MOST_NODES);
    if (plan.isEmpty()) {
      hopeless.add(key);
    }
    return plan;
  }

  /** Patterns that take something, the one with the earliest pieces first. */
  private List<Integer> byOrder(List<int[]> ranks, int[] done, int[] open) {
    List<int[]> places = new ArrayList<>();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < patterns.size(); i++) {
      places.add(places(ranks, done, taken(patterns.get(i), open)));
      if (places.get(i).length > 0) {
        order.add(i);
      }
    }
    order.sort((one, other) -> compareEarly(places.get(one), places.get(other)));
    return order;
  }

  private static int[] places(List<int[]> ranks, int[] done, int[] taken) {
    int[] places = new int[(int) CuttingStockSolver.total(taken)];
    int next = 0;
    for (int kind = 0; kind < taken.length; kind++) {
      for (int n = 0; n < taken[kind]; n++) {
        places[next++] = ranks.get(kind)[done[kind] + n];
      }
    }
    Arrays.sort(places);
    return places;
  }

  /** As words in a dictionary, but of two that begin alike the longer one first. */
  private static int compareEarly(int[] one, int[] other) {
    int differs = Arrays.mismatch(one, other);
    if (differs < 0) {
      return 0;
    }
    return differs < Math.min(one.length, other.length)
        ? Integer.compare(one[differs], other[differs])
        : Integer.compare(other.length, one.length);
  }

  private static int[] open(List<int[]> ranks, int[] done) {
    int[] open = new int[done.length];
    for (int kind = 0; kind < open.length; kind++) {
      open[kind] = ranks.get(kind).length - done[kind];
    }
    return open;
  }

  private static int[] taken(Pattern pattern, int[] open) {
    int[] taken = new int[open.length];
    for (int kind = 0; kind < taken.length; kind++) {
      taken[kind] = Math.min(open[kind], pattern.counts()[kind]);
    }
    return taken;
  }

  private static int[] minus(int[] from, int[] counts) {
    int[] rest = from.clone();
    for (int kind = 0; kind < rest.length; kind++) {
      rest[kind] -= counts[kind];
    }
    return rest;
  }
}
