package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Sums of sides (Herz 1972); the examples are added up by hand. */
class CutPositionsTest {
  private static final int PLENTY = 100;

  @Test
  void positionsAreTheSumsOfTheSidesOfThePiecesThereAre() {
    // two of 3 and one of 5
    assertEquals(List.of(0L, 3L, 5L, 6L, 8L, 11L), sums(List.of(side(3), side(5)), 13, 2, 1));
  }

  @Test
  void aPieceThatMayTurnGivesEitherOfItsSides() {
    assertEquals(List.of(0L, 2L, 4L, 5L, 7L, 10L), sums(List.of(new long[] {2, 5}), 13, 2));
  }

  @Test
  void aPositionMayLieOnTheFarEdgeButNotBeyond() {
    assertEquals(List.of(0L, 3L, 5L, 6L, 8L, 11L), sums(List.of(side(3), side(5)), 11, 2, 1));
    assertEquals(List.of(0L, 3L, 5L, 6L, 8L), sums(List.of(side(3), side(5)), 10, 2, 1));
  }

  @Test
  void moreThanTheCallerCanWorkWithAreNone() {
    List<long[]> sides = List.of(side(3), side(5));
    int[] demand = {2, 1};
    assertEquals(6, CutPositions.along(sides, demand, 13, 6).orElseThrow().count());
    assertEquals(Optional.empty(), CutPositions.along(sides, demand, 13, 5));
  }

  @Test
  void theLastPositionWithinALengthIsFound() {
    CutPositions positions =
        CutPositions.along(List.of(side(3), side(5)), new int[] {2, 1}, 13, PLENTY).orElseThrow();
    assertEquals(0, positions.last(0));
    assertEquals(0, positions.last(2));
    assertEquals(3, positions.last(6));
    assertEquals(3, positions.last(7));
    assertEquals(5, positions.last(1000));
  }

  @Test
  void millionsOfOneSizeNeedNoMoreWorkThanTheSheetHolds() {
    long[] both = {1, 1};
    Optional<CutPositions> along =
        CutPositions.along(List.of(both), new int[] {Integer.MAX_VALUE}, 50, PLENTY);
    assertTrue(along.isPresent());
    assertEquals(51, along.get().count());
  }

  private static List<Long> sums(List<long[]> sides, long limit, int... demand) {
    CutPositions found = CutPositions.along(sides, demand, limit, PLENTY).orElseThrow();
    return IntStream.range(0, found.count()).mapToObj(found::at).toList();
  }

  private static long[] side(long length) {
    return new long[] {length};
  }
}
