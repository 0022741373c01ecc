package org.daymount.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The only distances from an edge at which a cut can be worth making: sums of piece sides. Pieces
 * can always be pushed to the top left without losing a cutting plan (normal patterns: Herz 1972,
 * Christofides and Whitlock 1977), so no other cut has to be tried.
 */
final class CutPositions {
  private final long[] positions;

  private CutPositions(long[] positions) {
    this.positions = positions;
  }

  /**
   * @param sides for each kind the sides that can lie along this edge
   * @param demand how many pieces of each kind there are
   * @param limit the edge's length
   * @param most positions that the caller can work with
   * @return empty if there would be more than {@code most}
   */
  static Optional<CutPositions> along(List<long[]> sides, int[] demand, long limit, int most) {
    TreeSet<Long> sums = new TreeSet<>();
    sums.add(0L);
    for (int kind = 0; kind < demand.length; kind++) {
      TreeSet<Long> newest = new TreeSet<>(sums);
      for (int piece = 0; piece < demand[kind] && !newest.isEmpty(); piece++) {
        TreeSet<Long> next = new TreeSet<>();
        for (long sum : newest) {
          for (long side : sides.get(kind)) {
            if (side <= limit - sum) {
              next.add(sum + side);
            }
          }
        }
        next.removeIf(sum -> !sums.add(sum));
        if (sums.size() > most) {
          return Optional.empty();
        }
        newest = next;
      }
    }
    return Optional.of(new CutPositions(sums.stream().mapToLong(Long::longValue).toArray()));
  }

  int count() {
    return positions.length;
  }

  long at(int index) {
    return positions[index];
  }

  /** Index of the last position that is not beyond {@code length}. */
  int last(long length) {
    int found = Arrays.binarySearch(positions, length);
    return found >= 0 ? found : -found - 2;
  }
}
