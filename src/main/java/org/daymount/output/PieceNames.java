package org.daymount.output;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.daymount.card.StoryCard;
import org.daymount.month.Month;
import org.daymount.month.MonthSheet;
import org.daymount.sheet.PieceContent;
import org.daymount.sheet.PlacedPiece;
import org.daymount.unit.Units;

/** What pieces are and on which sheet they are found. */
final class PieceNames {
  private final Units units;
  private final Map<String, String> sheetOf = new HashMap<>();

  /** By day: label of the piece and its card, in the order of the labels. */
  private final Map<LocalDate, Map<String, StoryCard>> cards = new TreeMap<>();

  PieceNames(Month month) {
    units = month.units();
    for (MonthSheet sheet : month.sheets()) {
      for (PlacedPiece placed : sheet.sheet().pieces()) {
        sheetOf.put(placed.piece().label(), SheetsPdf.name(sheet));
      }
      sheet.content().forEach((label, content) -> content.card().ifPresent(c -> add(label, c)));
    }
  }

  private void add(String label, StoryCard card) {
    cards.computeIfAbsent(card.day(), any -> new TreeMap<>()).put(label, card);
  }

  /** The day's story cards by their labels, in order. */
  Map<String, StoryCard> cardsOf(LocalDate day) {
    return cards.getOrDefault(day, Map.of());
  }

  /** Labels of the day's story cards, in order. */
  List<String> cards(LocalDate day) {
    return List.copyOf(cardsOf(day).keySet());
  }

  /** {@code 02a (sheet-01)}. */
  String withSheet(String label) {
    return label + " (" + sheetOf.getOrDefault(label, "on no sheet") + ")";
  }

  /** {@code 02a: 2 June, space 1, 3 x 4 in (7.6 x 10.2 cm)}. */
  String sentence(MonthSheet sheet, PlacedPiece placed) {
    PieceContent content = sheet.content().get(placed.piece().label());
    return placed.piece().label()
        + ": "
        + DayWords.shortDay(content.day())
        + ", "
        + content.card().map(PieceNames::card).orElseGet(() -> space(content))
        + ", "
        + units.of(placed.piece().size())
        + (placed.turned() ? ", lying on its side" : "");
  }

  private static String space(PieceContent content) {
    PieceContent.Picture picture = content.picture().orElseThrow();
    boolean isWhole = picture.part().size().equals(picture.crop().piece());
    return "space " + (content.space() + 1) + (isWhole ? "" : " (a part of it)");
  }

  static String card(StoryCard card) {
    return (card.isRuled() ? "ruled card" : "story card")
        + (card.count() > 1 ? " " + card.number() + " of " + card.count() : "");
  }
}
