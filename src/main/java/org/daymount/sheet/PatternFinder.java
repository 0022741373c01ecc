package org.daymount.sheet;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.sheet.Cut.Axis;

/**
 * All the ways worth knowing to cut up one sheet by edge-to-edge cuts: every count of pieces that
 * no other way beats in all kinds at once. Works from small parts of the sheet to large ones.
 */
final class PatternFinder {
  private static final int MOST_POSITIONS = 250;
  private static final int MOST_WAYS_FOR_A_PART = 1_200;

  private final CuttingInstance wanted;
  private final CutPositions across;
  private final CutPositions down;
  private final Map<Integer, List<Pattern>> known = new HashMap<>();
  private long combinationsLeft;

  private PatternFinder(CuttingInstance wanted, CutPositions across, CutPositions down, long most) {
    this.wanted = wanted;
    this.across = across;
    this.down = down;
    this.combinationsLeft = most;
  }

  /**
   * @param mostCombinations how many pairs of parts to look at before giving up
   * @return empty if there are too many ways to list; an empty list if no piece fits the sheet
   */
  static Optional<List<Pattern>> all(CuttingInstance wanted, long mostCombinations) {
    Optional<CutPositions> across = wanted.acrossWidth(MOST_POSITIONS);
    Optional<CutPositions> down = wanted.downHeight(MOST_POSITIONS);
    if (across.isEmpty() || down.isEmpty()) {
      return Optional.empty();
    }
    PatternFinder finder = new PatternFinder(wanted, across.get(), down.get(), mostCombinations);
    try {
      return Optional.of(finder.part(across.get().count() - 1, down.get().count() - 1));
    } catch (TooManyWays stop) {
      return Optional.empty();
    }
  }

  private List<Pattern> part(int right, int bottom) {
    int key = right * down.count() + bottom;
    List<Pattern> ways = known.get(key);
    if (ways == null) {
      ways = unbeaten(waysToCut(right, bottom));
      known.put(key, ways);
    }
    return ways;
  }

  private Map<IntBuffer, GuillotineTree> waysToCut(int right, int bottom) {
    Map<IntBuffer, GuillotineTree> found = new LinkedHashMap<>();
    addSinglePieces(found, across.at(right), down.at(bottom));
    // The smaller side of a cut is always tried as the first one: swapping the sides of a cut
    // changes nothing but the order.
    for (int cut = 1; cut < right && across.at(cut) <= across.at(right) - across.at(cut); cut++) {
      int rest = across.last(across.at(right) - across.at(cut));
      addPairs(found, Axis.X, part(cut, bottom), part(rest, bottom));
    }
    for (int cut = 1; cut < bottom && down.at(cut) <= down.at(bottom) - down.at(cut); cut++) {
      int rest = down.last(down.at(bottom) - down.at(cut));
      addPairs(found, Axis.Y, part(right, cut), part(right, rest));
    }
    return found;
  }

  private void addSinglePieces(Map<IntBuffer, GuillotineTree> found, long width, long height) {
    for (int kind = 0; kind < wanted.kinds().size(); kind++) {
      for (PieceKind.Lying way : wanted.kinds().get(kind).ways()) {
        if (wanted.demand()[kind] > 0 && way.fits(width, height)) {
          int[] counts = new int[wanted.kinds().size()];
          counts[kind] = 1;
          found.putIfAbsent(IntBuffer.wrap(counts), new GuillotineTree.Slot(kind, way.turned()));
        }
      }
    }
  }

  private void addPairs(
      Map<IntBuffer, GuillotineTree> found, Axis axis, List<Pattern> first, List<Pattern> second) {
    combinationsLeft -= (long) first.size() * second.size();
    if (combinationsLeft < 0) {
      throw new TooManyWays();
    }
    int[] demand = wanted.demand();
    for (Pattern one : first) {
      for (Pattern other : second) {
        int[] counts = new int[demand.length];
        for (int kind = 0; kind < counts.length; kind++) {
          counts[kind] = Math.min(demand[kind], one.counts()[kind] + other.counts()[kind]);
        }
        IntBuffer key = IntBuffer.wrap(counts);
        if (!found.containsKey(key)) {
          found.put(key, new GuillotineTree.Split(axis, one.tree(), other.tree()));
        }
      }
    }
  }

  private static List<Pattern> unbeaten(Map<IntBuffer, GuillotineTree> found) {
    List<Pattern> byMost = new ArrayList<>();
    found.forEach((counts, tree) -> byMost.add(new Pattern(counts.array(), tree)));
    byMost.sort(Comparator.comparingInt((Pattern way) -> -pieces(way)));
    List<Pattern> kept = new ArrayList<>();
    for (Pattern way : byMost) {
      if (kept.stream().noneMatch(better -> better.covers(way.counts()))) {
        kept.add(way);
        if (kept.size() > MOST_WAYS_FOR_A_PART) {
          throw new TooManyWays();
        }
      }
    }
    return List.copyOf(kept);
  }

  private static int pieces(Pattern way) {
    int sum = 0;
    for (int count : way.counts()) {
      sum += count;
    }
    return sum;
  }

  /** Leaves the search; never seen outside. */
  private static final class TooManyWays extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TooManyWays() {
      super("too many ways to cut a sheet", null, false, false);
    }
  }
}
