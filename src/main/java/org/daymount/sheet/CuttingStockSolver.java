package org.daymount.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;

/**
 * How often each pattern is used so that the fewest sheets give all pieces: the integer programme
 * of the cutting-stock problem (Gilmore and Gomory 1961).
 *
 * <p>The linear relaxation is solved first. Its prices, rounded to whole numbers, give a lower
 * bound in exact arithmetic; rounding its answer up usually meets that bound, and then there is
 * nothing left to search. Only otherwise is the integer programme solved.
 */
final class CuttingStockSolver {
  // Steps of a solver, not seconds, so that a slow machine finds the same plan as a fast one.
  private static final int MOST_STEPS = 20_000;
  private static final double PRICE_SCALE = 1e6; // prices as millionths of a sheet
  private static final double A_LITTLE = 1e-6; // the solver's own rounding

  private final List<int[]> patterns;

  /**
   * @param patterns pieces of each kind that one sheet gives
   */
  CuttingStockSolver(List<int[]> patterns) {
    this.patterns = List.copyOf(patterns);
  }

  /**
   * An answer.
   *
   * @param times how often each pattern is used
   * @param linear sheets in the linear relaxation, where part of a sheet may be used
   * @param prices a worth for each kind, in whole numbers
   * @param atLeast sheets that any use of these patterns needs, in exact arithmetic
   * @param fewest whether no use of these patterns needs fewer sheets
   */
  record Cover(int[] times, double linear, long[] prices, long atLeast, boolean fewest) {
    long sheets() {
      return total(times);
    }
  }

  /**
   * The least number of sheets for the demand; every kind must be in some pattern.
   *
   * @param mostNodes of the search tree; more than any single linear programme needs
   */
  Cover fewest(int[] demand, int mostNodes) {
    long[] prices = prices(demand);
    long atLeast = atLeast(prices, demand);
    Relaxed relaxed = relax(demand);
    int[] rounded = roundUp(relaxed, prices, demand);
    if (total(rounded) <= atLeast) {
      return new Cover(rounded, relaxed.sheets(), prices, atLeast, true);
    }
    Searched better = search(demand, atLeast, total(rounded) - 1, mostNodes);
    return new Cover(
        better.times().orElse(rounded), relaxed.sheets(), prices, atLeast, better.complete());
  }

  /**
   * A way to meet the demand with at most so many sheets, if one is found.
   *
   * @param prices of {@link #fewest}, to choose by
   */
  Optional<int[]> within(int[] demand, long sheets, long[] prices, int mostNodes) {
    int[] rounded = roundUp(relax(demand), prices, demand);
    return total(rounded) <= sheets
        ? Optional.of(rounded)
        : search(demand, 0, sheets, mostNodes).times();
  }

  /**
   * Sheets that the demand needs at least, whatever the prices: no sheet is worth more than the
   * dearest pattern, so all pieces together need at least their worth divided by that (Farley
   * 1990). Exact.
   */
  long atLeast(long[] prices, int[] demand) {
    long dearest = 0;
    for (int[] pattern : patterns) {
      dearest = Math.max(dearest, worth(prices, pattern));
    }
    return dearest == 0 ? 0 : ceilingOf(worth(prices, demand), dearest);
  }

  static long ceilingOf(long number, long by) {
    return -Math.floorDiv(-number, by);
  }

  static long worth(long[] prices, int[] counts) {
    long sum = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      sum = Math.addExact(sum, Math.multiplyExact(prices[kind], (long) counts[kind]));
    }
    return sum;
  }

  private record Relaxed(double[] times, double sheets) {}

  private Relaxed relax(int[] demand) {
    ExpressionsBasedModel model = model(demand, false, MOST_STEPS);
    Optimisation.Result result = model.minimise();
    double[] times = new double[patterns.size()];
    for (int i = 0; i < times.length; i++) {
      times[i] = Math.max(0, result.doubleValue(i));
    }
    return new Relaxed(times, result.getValue());
  }

  /** The dual programme: the dearest prices at which no pattern is worth more than one sheet. */
  long[] prices(int[] demand) {
    ExpressionsBasedModel model = new ExpressionsBasedModel(options(MOST_STEPS));
    List<Variable> prices = new ArrayList<>();
    for (int kind = 0; kind < demand.length; kind++) {
      prices.add(model.newVariable("price" + kind).lower(0).weight(demand[kind]));
    }
    for (int i = 0; i < patterns.size(); i++) {
      Expression sheet = model.newExpression("pattern" + i).upper(1);
      for (int kind = 0; kind < demand.length; kind++) {
        if (patterns.get(i)[kind] > 0) {
          sheet.set(prices.get(kind), patterns.get(i)[kind]);
        }
      }
    }
    Optimisation.Result result = model.maximise();
    long[] whole = new long[demand.length];
    for (int kind = 0; kind < whole.length; kind++) {
      whole[kind] = Math.round(Math.max(0, result.doubleValue(kind)) * PRICE_SCALE);
    }
    return whole;
  }

  /** Whole parts of the relaxed answer, then pattern after pattern by what it adds. */
  private int[] roundUp(Relaxed relaxed, long[] prices, int[] demand) {
    int[] times = new int[patterns.size()];
    int[] open = demand.clone();
    for (int i = 0; i < times.length; i++) {
      times[i] = (int) Math.floor(relaxed.times()[i] + A_LITTLE);
      for (int n = 0; n < times[i]; n++) {
        serve(open, patterns.get(i));
      }
    }
    while (total(open) > 0) {
      int best = mostUseful(prices, open);
      times[best]++;
      serve(open, patterns.get(best));
    }
    return times;
  }

  private int mostUseful(long[] prices, int[] open) {
    int best = -1;
    long most = 0;
    for (int i = 0; i < patterns.size(); i++) {
      long use = 0;
      for (int kind = 0; kind < open.length; kind++) {
        // The one makes pieces count that cost nothing because others fill the sheets.
        use += Math.min(open[kind], patterns.get(i)[kind]) * (prices[kind] + 1);
      }
      if (use > most) {
        most = use;
        best = i;
      }
    }
    if (best < 0) {
      throw new IllegalArgumentException("no pattern has the pieces that are still wanted");
    }
    return best;
  }

  private static void serve(int[] open, int[] pattern) {
    for (int kind = 0; kind < open.length; kind++) {
      open[kind] = Math.max(0, open[kind] - pattern[kind]);
    }
  }

  private record Searched(Optional<int[]> times, boolean complete) {}

  private Searched search(int[] demand, long atLeast, long atMost, int mostNodes) {
    ExpressionsBasedModel model = model(demand, true, mostNodes);
    Expression sheets = model.newExpression("sheets").lower(atLeast).upper(atMost);
    for (Variable times : model.getVariables()) {
      sheets.set(times, 1);
    }
    Optimisation.Result result = model.minimise();
    if (!result.getState().isFeasible()) {
      return new Searched(Optional.empty(), result.getState() == Optimisation.State.INFEASIBLE);
    }
    int[] times = new int[patterns.size()];
    int[] open = demand.clone();
    for (int i = 0; i < times.length; i++) {
      times[i] = (int) Math.round(result.doubleValue(i));
      for (int n = 0; n < times[i]; n++) {
        serve(open, patterns.get(i));
      }
    }
    boolean holds = total(open) == 0 && total(times) <= atMost;
    return new Searched(
        holds ? Optional.of(times) : Optional.empty(),
        holds && (result.getState().isOptimal() || total(times) == atLeast));
  }

  private ExpressionsBasedModel model(int[] demand, boolean whole, int mostSteps) {
    ExpressionsBasedModel model = new ExpressionsBasedModel(options(mostSteps));
    for (int i = 0; i < patterns.size(); i++) {
      Variable times = model.newVariable("pattern" + i).lower(0).weight(1);
      times.integer(whole);
    }
    for (int kind = 0; kind < demand.length; kind++) {
      Expression pieces = model.newExpression("kind" + kind).lower(demand[kind]);
      for (int i = 0; i < patterns.size(); i++) {
        if (patterns.get(i)[kind] > 0) {
          pieces.set(model.getVariable(i), patterns.get(i)[kind]);
        }
      }
    }
    return model;
  }

  private static Optimisation.Options options(int mostSteps) {
    Optimisation.Options options = new Optimisation.Options();
    options.iterations_abort = mostSteps;
    options.iterations_suffice = mostSteps;
    // One worker: several would race, and the first of equal answers would win.
    options.integer(IntegerStrategy.newConfigurable().withParallelism(() -> 1));
    return options;
  }

  static long total(int[] counts) {
    long sum = 0;
    for (int count : counts) {
      sum += count;
    }
    return sum;
  }
}
