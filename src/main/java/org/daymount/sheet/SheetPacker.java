package org.daymount.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.daymount.unit.PaperSize;
import org.daymount.unit.SizeText;

/**
 * Pieces onto the fewest sheets, by cuts that run from edge to edge.
 *
 * <p>All ways to cut one sheet are listed by piece size ({@link PatternFinder}), an integer
 * programme says how many sheets are needed ({@link CuttingStockSolver}), and the sheets are put in
 * the order of the days ({@link SheetSequence}). Where there are too many sizes to list all ways,
 * only those that help are made ({@link ColumnGeneration}, starting from {@link FirstFit}); {@link
 * Packing#provenFewest} says whether the result is certainly the fewest. The same pieces always
 * give the same sheets.
 */
public final class SheetPacker {
  private static final long MOST_COMBINATIONS = 3_000_000; // about a second
  private static final int MOST_NODES = 1_500; // a few seconds

  /**
   * @param pieces each no larger than the sheet, upright or turned; labels differ
   * @throws IllegalArgumentException if a piece is larger than the sheet
   */
  public Packing pack(List<Piece> pieces, SheetSettings settings) {
    pieces.forEach(piece -> requireFits(piece, settings.usable()));
    if (pieces.isEmpty()) {
      return new Packing(List.of(), true, "no sheets: there is nothing to cut");
    }
    Order order = Order.of(pieces);
    CuttingInstance wanted = order.kinds(settings.usable());
    Optional<List<Pattern>> all = PatternFinder.all(wanted, MOST_COMBINATIONS);
    if (all.isPresent()) {
      return byProgramme(order, wanted, all.get(), OptionalLong.empty(), settings);
    }
    ColumnGeneration some = ColumnGeneration.from(FirstFit.pack(wanted), wanted);
    return byProgramme(order, wanted, some.patterns(), OptionalLong.of(some.atLeast()), settings);
  }

  private static void requireFits(Piece piece, PaperSize sheet) {
    if (!piece.size().fitsEitherWayInto(sheet)) {
      throw new IllegalArgumentException(
          "piece %s of %s does not fit a %s sheet; split it first"
              .formatted(piece.label(), SizeText.text(piece.size()), SizeText.text(sheet)));
    }
  }

  /**
   * @param bound sheets that any plan needs; empty if the patterns are all there are, so that the
   *     programme's word is final
   */
  private static Packing byProgramme(
      Order order,
      CuttingInstance wanted,
      List<Pattern> patterns,
      OptionalLong bound,
      SheetSettings settings) {
    CuttingStockSolver cover =
        new CuttingStockSolver(patterns.stream().map(Pattern::counts).toList());
    CuttingStockSolver.Cover answer = cover.fewest(wanted.demand(), MOST_NODES);
    List<SheetSequence.Step> steps =
        new SheetSequence(patterns, cover, answer.prices()).inOrder(order.ranks(), answer.times());
    List<Sheet> sheets = order.fill(steps, settings);
    long atLeast = bound.orElse(answer.atLeast());
    boolean fewest = bound.isEmpty() && answer.fewest() || sheets.size() <= atLeast;
    return new Packing(sheets, fewest, how(sheets.size(), fewest, atLeast));
  }

  private static String how(int sheets, boolean fewest, long atLeast) {
    String count = sheets + (sheets == 1 ? " sheet" : " sheets");
    return fewest
        ? count + ", the fewest that straight cuts allow (proven)"
        : "%s; at least %d are needed, and whether fewer than %d would do was not proven"
            .formatted(count, atLeast, sheets);
  }

  /** The pieces in the order of the month, and grouped by kind. */
  private record Order(List<PieceKind> kinds, List<List<Piece>> byKind, List<int[]> ranks) {
    static Order of(List<Piece> pieces) {
      List<Piece> sorted =
          pieces.stream()
              .sorted(Comparator.comparingInt(Piece::order).thenComparing(Piece::label))
              .toList();
      Map<PieceKind, List<Integer>> places = new LinkedHashMap<>();
      for (int place = 0; place < sorted.size(); place++) {
        places
            .computeIfAbsent(PieceKind.of(sorted.get(place).size()), kind -> new ArrayList<>())
            .add(place);
      }
      List<List<Piece>> byKind = new ArrayList<>();
      List<int[]> ranks = new ArrayList<>();
      for (List<Integer> kind : places.values()) {
        byKind.add(kind.stream().map(sorted::get).toList());
        ranks.add(kind.stream().mapToInt(Integer::intValue).toArray());
      }
      return new Order(List.copyOf(places.keySet()), byKind, ranks);
    }

    CuttingInstance kinds(PaperSize sheet) {
      return new CuttingInstance(
          sheet.width().nanometres(),
          sheet.height().nanometres(),
          kinds,
          ranks.stream().mapToInt(places -> places.length).toArray());
    }

    List<Sheet> fill(List<SheetSequence.Step> steps, SheetSettings settings) {
      SheetFiller filler = new SheetFiller(settings);
      int[] done = new int[kinds.size()];
      List<Sheet> sheets = new ArrayList<>();
      for (SheetSequence.Step step : steps) {
        List<List<Piece>> next = new ArrayList<>();
        for (int kind = 0; kind < done.length; kind++) {
          int from = done[kind];
          done[kind] += step.taken()[kind];
          next.add(byKind.get(kind).subList(from, done[kind]));
        }
        sheets.add(filler.fill(step.pattern().tree(), next));
      }
      return sheets;
    }
  }
}
