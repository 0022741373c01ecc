package org.daymount.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSheet;
import org.daymount.page.Place;
import org.daymount.sheet.MatPlan;
import org.daymount.sheet.PlacedPiece;
import org.daymount.unit.PaperSize;

/** The guide to pages that are made before their pictures: cut the card, lay it on the pages. */
final class AheadGuide {
  private final Month month;
  private final List<MonthSheet> card;
  private final MatPlan papers;

  private AheadGuide(Month month, MatPlan papers) {
    this.month = month;
    this.papers = papers;
    this.card = MatCard.sheets(papers);
  }

  static Guide of(Month month, MatPlan papers) {
    AheadGuide ahead = new AheadGuide(month, papers);
    return new Guide(
        List.of(),
        ahead.card.stream().map(card -> Guide.steps(card, month.units())).toList(),
        BatchSteps.of(ahead.card, "card", month.units()),
        ahead.pages(),
        List.of(),
        ahead.shopping(),
        Guide.CAUTIONS,
        List.of(
            "Glue mats and papers down before the photos: the photos come last.",
            "The pages bind the photos: the month's run picks and crops for the places as made."));
  }

  private List<String> shopping() {
    List<String> lines = new ArrayList<>();
    papers
        .sheetSize()
        .ifPresent(
            size ->
                lines.add(
                    DayWords.counted(card.size(), "sheet")
                        + " of card or paper, "
                        + month.units().sized(size)
                        + ": "
                        + papers.packing().how()
                        + "."));
    papers
        .tooLargeBySize()
        .forEach(
            (size, count) ->
                lines.add(
                    "Larger than the card, so bought apart: "
                        + count
                        + " of "
                        + month.units().sized(size)
                        + "."));
    Map<String, Integer> counts = new TreeMap<>();
    card.forEach(
        sheet ->
            sheet.sheet().pieces().forEach(placed -> counts.merge(sort(placed), 1, Integer::sum)));
    counts.forEach((sort, count) -> lines.add(count + " × " + sort + ", cut from it."));
    lines.addAll(new ShoppingList(month).leaves());
    lines.add("Metal ruler, cutting mat, knife or trimmer; photo-safe glue.");
    return lines;
  }

  private String sort(PlacedPiece placed) {
    PaperSize size = placed.piece().size();
    return placed.piece().label().replaceFirst(" .*", "") + " of " + month.units().sized(size);
  }

  private List<Guide.PageSteps> pages() {
    return month.days().stream()
        .filter(day -> day.state() != MonthDay.State.LEFT_OUT)
        .map(
            day ->
                new Guide.PageSteps(
                    day.day(),
                    DayWords.weekday(day.day()) + ", " + DayWords.shortDay(day.day()),
                    steps(day)))
        .toList();
  }

  private List<String> steps(MonthDay day) {
    List<String> steps = new ArrayList<>();
    month
        .album()
        .page(day.day())
        .ifPresent(
            page -> {
              steps.add(page.base().orElse(month.units().kind(page.kind())) + ".");
              papersOf(day, steps);
              page.places().forEach(place -> step(day, place, steps));
            });
    return steps;
  }

  private void papersOf(MonthDay day, List<String> steps) {
    String number = Integer.toString(day.day().getDayOfMonth());
    for (MonthSheet sheet : card) {
      for (PlacedPiece placed : sheet.sheet().pieces()) {
        String label = placed.piece().label();
        if (label.matches("(?:paper|strip) " + number + "[b-z]?")) {
          steps.add(label + " (" + sheet.file() + ").");
        }
      }
    }
  }

  private void step(MonthDay day, Place place, List<String> steps) {
    if (place.what() == Place.What.MAT) {
      List<String> names = day.spaces().get(place.index().orElseThrow()).pieces();
      names.forEach(name -> steps.add(name + at(name) + ": " + from(place)));
    }
  }

  private String at(String label) {
    return card.stream()
        .filter(
            sheet -> sheet.sheet().pieces().stream().anyMatch(p -> p.piece().label().equals(label)))
        .findFirst()
        .map(sheet -> " (" + sheet.file() + ")")
        .orElse(" (bought apart)");
  }

  private String from(Place place) {
    return month.units().of(place.box().x())
        + " from the left, "
        + month.units().of(place.box().y())
        + " from the top.";
  }
}
