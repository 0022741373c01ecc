package org.daymount.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Patterns for a month with too many sizes to list all ways to cut a sheet: only those that the
 * linear relaxation asks for (column generation, Gilmore and Gomory 1961 and 1965). The prices at
 * the end bound the number of sheets for every cutting plan, listed or not.
 *
 * @param patterns enough to cut every piece
 * @param atLeast sheets that any plan needs, in exact arithmetic
 */
record ColumnGeneration(List<Pattern> patterns, long atLeast) {
  private static final int MOST_ROUNDS = 120;
  private static final long MOST_STEPS = 600_000_000; // of all searches; a few seconds

  ColumnGeneration {
    patterns = List.copyOf(patterns);
  }

  /**
   * @param start patterns that together give every kind
   */
  static ColumnGeneration from(List<Pattern> start, CuttingInstance wanted) {
    List<Pattern> patterns = new ArrayList<>();
    for (Pattern pattern : start) {
      addIfNew(patterns, pattern);
    }
    long atLeast = byArea(wanted);
    long stepsLeft = MOST_STEPS;
    for (int round = 0; round < MOST_ROUNDS && stepsLeft > 0; round++) {
      CuttingStockSolver cover =
          new CuttingStockSolver(patterns.stream().map(Pattern::counts).toList());
      long[] prices = cover.prices(wanted.demand());
      Optional<BestPattern> best = BestPattern.of(wanted, prices);
      if (best.isEmpty()) {
        break;
      }
      stepsLeft -= BestPattern.steps(wanted);
      atLeast =
          Math.max(
              atLeast,
              CuttingStockSolver.ceilingOf(
                  CuttingStockSolver.worth(prices, wanted.demand()), best.get().value()));
      if (!addIfNew(patterns, best.get().pattern())) {
        break; // the relaxation has all it can use
      }
    }
    return new ColumnGeneration(patterns, atLeast);
  }

  private static boolean addIfNew(List<Pattern> patterns, Pattern pattern) {
    if (patterns.stream().anyMatch(known -> known.covers(pattern.counts()))) {
      return false;
    }
    patterns.add(pattern);
    return true;
  }

  /** The bound for a sheet that could be filled without waste. */
  private static long byArea(CuttingInstance wanted) {
    double area = 0;
    for (int kind = 0; kind < wanted.demand().length; kind++) {
      area += (double) wanted.kinds().get(kind).area() * wanted.demand()[kind];
    }
    // A hair less, so that rounding can only make the bound weaker.
    return (long) Math.ceil(area / ((double) wanted.width() * wanted.height()) - 1e-9);
  }
}
