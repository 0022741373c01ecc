package org.daymount.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.daymount.sheet.Cut.Axis;

/**
 * The one way to cut a sheet whose pieces are worth most, each kind as often as one likes: the
 * unconstrained two-dimensional guillotine cutting problem, by dynamic programming over the
 * positions at which a cut can be worth making (Gilmore and Gomory 1966, Beasley 1985).
 *
 * @param value worth of all its pieces
 * @param pattern its pieces and cuts
 */
record BestPattern(long value, Pattern pattern) {
  private static final int MOST_POSITIONS = 800;
  private static final long MOST_STEPS = 80_000_000; // for one sheet; some tenths of a second

  /**
   * @param wanted the demand limits which cuts are tried, but not how often a kind is used
   * @param prices worth of a piece of each kind, zero or more
   * @return empty if there are too many sizes for this search, or nothing of worth fits
   */
  static Optional<BestPattern> of(CuttingInstance wanted, long[] prices) {
    Optional<CutPositions> across = wanted.acrossWidth(MOST_POSITIONS);
    Optional<CutPositions> down = wanted.downHeight(MOST_POSITIONS);
    if (across.isEmpty() || down.isEmpty() || steps(across.get(), down.get()) > MOST_STEPS) {
      return Optional.empty();
    }
    return new Search(wanted, prices, across.get(), down.get()).best();
  }

  /** A measure of the work that {@link #of} takes; zero if it refuses. */
  static long steps(CuttingInstance wanted) {
    Optional<CutPositions> across = wanted.acrossWidth(MOST_POSITIONS);
    Optional<CutPositions> down = wanted.downHeight(MOST_POSITIONS);
    return across.isEmpty() || down.isEmpty() ? 0 : steps(across.get(), down.get());
  }

  private static long steps(CutPositions across, CutPositions down) {
    return (long) across.count() * down.count() * (across.count() + down.count()) / 2;
  }

  /** Fills a table of the best value of every part, from the smallest part to the sheet. */
  private static final class Search {
    private static final int NOTHING = 0;

    private final CuttingInstance wanted;
    private final long[] prices;
    private final CutPositions across;
    private final CutPositions down;
    private final long[][] value;
    // What gives the value: 0 nothing, k + 1 a piece lying in way k of all ways,
    // -c a cut: across positions first, then down positions.
    private final int[][] how;
    private final List<Way> ways;

    private record Way(int kind, PieceKind.Lying lying) {}

    Search(CuttingInstance wanted, long[] prices, CutPositions across, CutPositions down) {
      this.wanted = wanted;
      this.prices = prices;
      this.across = across;
      this.down = down;
      this.value = new long[across.count()][down.count()];
      this.how = new int[across.count()][down.count()];
      this.ways =
          IntStream.range(0, wanted.kinds().size())
              .boxed()
              .flatMap(
                  kind ->
                      wanted.kinds().get(kind).ways().stream().map(lying -> new Way(kind, lying)))
              .toList();
    }

    Optional<BestPattern> best() {
      for (int right = 1; right < across.count(); right++) {
        for (int bottom = 1; bottom < down.count(); bottom++) {
          tryPieces(right, bottom);
          tryCutsAcross(right, bottom);
          tryCutsDown(right, bottom);
        }
      }
      int right = across.count() - 1;
      int bottom = down.count() - 1;
      if (value[right][bottom] == 0) {
        return Optional.empty();
      }
      int[] counts = new int[wanted.kinds().size()];
      GuillotineTree tree = tree(right, bottom, counts).orElseThrow();
      return Optional.of(new BestPattern(value[right][bottom], new Pattern(counts, tree)));
    }

    private void tryPieces(int right, int bottom) {
      for (int i = 0; i < ways.size(); i++) {
        Way way = ways.get(i);
        if (prices[way.kind()] > value[right][bottom]
            && way.lying().fits(across.at(right), down.at(bottom))) {
          value[right][bottom] = prices[way.kind()];
          how[right][bottom] = i + 1;
        }
      }
    }

    private void tryCutsAcross(int right, int bottom) {
      int rest = right;
      for (int cut = 1; cut < right; cut++) {
        long left = across.at(right) - across.at(cut);
        while (across.at(rest) > left) {
          rest--;
        }
        if (across.at(cut) > left) {
          return; // its mirror image has been tried
        }
        long both = value[cut][bottom] + value[rest][bottom];
        if (both > value[right][bottom]) {
          value[right][bottom] = both;
          how[right][bottom] = -cut;
        }
      }
    }

    private void tryCutsDown(int right, int bottom) {
      int rest = bottom;
      for (int cut = 1; cut < bottom; cut++) {
        long below = down.at(bottom) - down.at(cut);
        while (down.at(rest) > below) {
          rest--;
        }
        if (down.at(cut) > below) {
          return;
        }
        long both = value[right][cut] + value[right][rest];
        if (both > value[right][bottom]) {
          value[right][bottom] = both;
          how[right][bottom] = -(across.count() + cut);
        }
      }
    }

    private Optional<GuillotineTree> tree(int right, int bottom, int[] counts) {
      int made = how[right][bottom];
      if (made == NOTHING) {
        return Optional.empty();
      }
      if (made > 0) {
        Way way = ways.get(made - 1);
        counts[way.kind()]++;
        return Optional.of(new GuillotineTree.Slot(way.kind(), way.lying().turned()));
      }
      if (-made < across.count()) {
        int rest = across.last(across.at(right) - across.at(-made));
        return join(Axis.X, tree(-made, bottom, counts), tree(rest, bottom, counts));
      }
      int cut = -made - across.count();
      int rest = down.last(down.at(bottom) - down.at(cut));
      return join(Axis.Y, tree(right, cut, counts), tree(right, rest, counts));
    }

    private static Optional<GuillotineTree> join(
        Axis axis, Optional<GuillotineTree> first, Optional<GuillotineTree> second) {
      return first.isEmpty() || second.isEmpty()
          ? first.or(() -> second)
          : Optional.of(new GuillotineTree.Split(axis, first.get(), second.get()));
    }
  }
}
