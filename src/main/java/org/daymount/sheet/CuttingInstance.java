package org.daymount.sheet;

import java.util.List;
import java.util.Optional;

/**
 * What the searches work on: a sheet and the kinds of pieces wanted from it, in whole units.
 *
 * @param width of the sheet
 * @param height of the sheet
 * @param demand how many pieces of each kind are wanted in all
 */
record CuttingInstance(long width, long height, List<PieceKind> kinds, int[] demand) {
  CuttingInstance {
    kinds = List.copyOf(kinds);
    demand = demand.clone();
    if (kinds.size() != demand.length) {
      throw new IllegalArgumentException(kinds.size() + " kinds, " + demand.length + " demands");
    }
  }

  /** Where cuts from top to bottom can be worth making, from the left edge. */
  Optional<CutPositions> acrossWidth(int most) {
    List<long[]> sides =
        kinds.stream()
            .map(kind -> kind.ways().stream().mapToLong(PieceKind.Lying::width).toArray())
            .toList();
    return CutPositions.along(sides, demand, width, most);
  }

  /** Where cuts from side to side can be worth making, from the top edge. */
  Optional<CutPositions> downHeight(int most) {
    List<long[]> sides =
        kinds.stream()
            .map(kind -> kind.ways().stream().mapToLong(PieceKind.Lying::height).toArray())
            .toList();
    return CutPositions.along(sides, demand, height, most);
  }
}
