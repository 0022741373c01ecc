package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The packer's searches against results that others have published. */
class PublishedCasesTest {
  private static final int NO_LIMIT = Integer.MAX_VALUE;

  /** One line of gcut.txt, where its source is named. */
  record CuttingCase(String name, long best, long bestTurned, List<long[]> pieces) {
    static CuttingCase parse(String line) {
      String[] headAndPieces = line.split(": ");
      String[] head = headAndPieces[0].split(" ");
      List<long[]> pieces =
          Arrays.stream(headAndPieces[1].split(" "))
              .map(size -> Arrays.stream(size.split("x")).mapToLong(Long::parseLong).toArray())
              .toList();
      return new CuttingCase(head[0], Long.parseLong(head[1]), Long.parseLong(head[2]), pieces);
    }

    BestPattern solve(boolean mayTurn) {
      List<PieceKind> kinds =
          pieces.stream().map(size -> new PieceKind(size[0], size[1], mayTurn)).toList();
      int[] demand = new int[kinds.size()];
      Arrays.fill(demand, NO_LIMIT);
      long[] areas = kinds.stream().mapToLong(PieceKind::area).toArray();
      return BestPattern.of(new CuttingInstance(250, 250, kinds, demand), areas).orElseThrow();
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<CuttingCase> beasley() throws IOException {
    try (InputStream file = PublishedCasesTest.class.getResourceAsStream("gcut.txt")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8)
          .lines().filter(line -> !line.startsWith("#")).map(CuttingCase::parse).toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("beasley")
  void theBestPatternIsWorthWhatThePapersSay(CuttingCase published) {
    BestPattern found = published.solve(false);
    assertEquals(published.best(), found.value());
    assertFits(found, published, false);
  }

  @ParameterizedTest
  @MethodSource("beasley")
  void theBestPatternWithTurnsIsWorthWhatThePapersSay(CuttingCase published) {
    BestPattern found = published.solve(true);
    assertEquals(published.bestTurned(), found.value());
    assertFits(found, published, true);
  }

  // R. Fourer, D. M. Gay and B. W. Kernighan, "AMPL: A Modeling Language for Mathematical
  // Programming", 2nd edition, chapter 15: raw rolls of 110 in; 46.25 rolls in the linear
  // relaxation, 47 whole ones.
  private static final CuttingInstance PAPER_ROLLS =
      new CuttingInstance(
          110,
          1,
          Stream.of(20, 45, 50, 55, 75).map(width -> new PieceKind(width, 1, false)).toList(),
          new int[] {48, 35, 24, 10, 8});

  @Test
  void thePaperRollsOfTheAmplBookNeedFortySevenWhenAllPatternsAreListed() {
    List<Pattern> patterns = PatternFinder.all(PAPER_ROLLS, 100_000).orElseThrow();
    assertRolls(patterns);
  }

  @Test
  void thePaperRollsOfTheAmplBookNeedFortySevenWhenPatternsAreMadeAsNeeded() {
    ColumnGeneration patterns = ColumnGeneration.from(FirstFit.pack(PAPER_ROLLS), PAPER_ROLLS);
    assertEquals(47, patterns.atLeast());
    assertRolls(patterns.patterns());
  }

  private static void assertRolls(List<Pattern> patterns) {
    CuttingStockSolver.Cover cover =
        new CuttingStockSolver(patterns.stream().map(Pattern::counts).toList())
            .fewest(PAPER_ROLLS.demand(), 1_500);
    assertEquals(46.25, cover.linear(), 1e-9);
    assertEquals(47, cover.atLeast());
    assertEquals(47, cover.sheets());
    assertTrue(cover.fewest());
  }

  /** The tree behind the value: its pieces add up to it and lie within the stock. */
  private static void assertFits(BestPattern found, CuttingCase published, boolean mayTurn) {
    long area = 0;
    for (int kind = 0; kind < published.pieces().size(); kind++) {
      long[] size = published.pieces().get(kind);
      area += size[0] * size[1] * found.pattern().counts()[kind];
    }
    assertEquals(found.value(), area);
    long[] extent = extent(found.pattern().tree(), published, mayTurn);
    assertTrue(extent[0] <= 250 && extent[1] <= 250, Arrays.toString(extent));
  }

  private static long[] extent(GuillotineTree tree, CuttingCase published, boolean mayTurn) {
    if (tree instanceof GuillotineTree.Slot slot) {
      assertTrue(mayTurn || !slot.turned());
      long[] size = published.pieces().get(slot.kind());
      return slot.turned() ? new long[] {size[1], size[0]} : size;
    }
    GuillotineTree.Split split = (GuillotineTree.Split) tree;
    long[] one = extent(split.first(), published, mayTurn);
    long[] other = extent(split.second(), published, mayTurn);
    return split.axis() == Cut.Axis.X
        ? new long[] {one[0] + other[0], Math.max(one[1], other[1])}
        : new long[] {Math.max(one[0], other[0]), one[1] + other[1]};
  }
}
