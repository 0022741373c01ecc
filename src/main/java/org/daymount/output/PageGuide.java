package org.daymount.output;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.daymount.album.Space;
import org.daymount.card.StoryCard;
import org.daymount.crop.Crop;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSheet;
import org.daymount.month.MonthSpace;
import org.daymount.pick.Candidate;
import org.daymount.pick.SpacePick;
import org.daymount.unit.Length;

/** Which piece goes where, page by page. */
final class PageGuide {
  private final Month month;
  private final PieceNames names;

  /** By day: label of the piece and its card, in the order of the labels. */
  private final Map<LocalDate, Map<String, StoryCard>> cards = new TreeMap<>();

  PageGuide(Month month, PieceNames names) {
    this.month = month;
    this.names = names;
    for (MonthSheet sheet : month.sheets()) {
      sheet
          .content()
          .forEach(
              (label, content) ->
                  content
                      .card()
                      .ifPresent(
                          card ->
                              cards
                                  .computeIfAbsent(card.day(), any -> new TreeMap<>())
                                  .put(label, card)));
    }
  }

  List<Guide.PageSteps> pages() {
    return month.days().stream()
        .filter(day -> day.state() != MonthDay.State.LEFT_OUT)
        .map(this::page)
        .toList();
  }

  private Guide.PageSteps page(MonthDay day) {
    List<String> steps = new ArrayList<>();
    if (day.spaces().isEmpty()) {
      steps.add("No picture on this page.");
    }
    for (int i = 0; i < day.spaces().size(); i++) {
      steps.add("Space " + (i + 1) + ", " + space(day.spaces().get(i)));
    }
    cards
        .getOrDefault(day.day(), Map.of())
        .forEach(
            (label, card) ->
                steps.add(capital(PieceNames.card(card)) + ": " + names.withSheet(label) + "."));
    return new Guide.PageSteps(
        DayWords.weekday(day.day()) + ", " + DayWords.shortDay(day.day()), steps);
  }

  private String space(MonthSpace space) {
    SpacePick pick = space.pick();
    if (pick.hero().isEmpty()) {
      return Missing.wanted(pick) + ": still missing.";
    }
    Candidate hero = pick.hero().get();
    return DayWords.space(pick.space(), pick.direction())
        + ": "
        + pieces(space.pieces())
        + ", "
        + hero.looked().photo().file().lastName()
        + "."
        + mat(pick.space())
        + border(hero.crop());
  }

  private String pieces(List<String> labels) {
    List<String> found = labels.stream().map(names::withSheet).toList();
    return found.size() == 1
        ? found.get(0)
        : "put together from "
            + String.join(", ", found.subList(0, found.size() - 1))
            + " and "
            + found.get(found.size() - 1)
            + ", edge to edge";
  }

  private static String mat(Space space) {
    return space
        .reveal()
        .filter(Length::isPositive)
        .map(
            reveal ->
                " Centre it on a "
                    + space.name()
                    + " mat: "
                    + Measure.of(reveal)
                    + " of the mat shows on each side.")
        .orElse(space.onMat() ? " It covers its " + space.name() + " mat." : "");
  }

  private static String border(Crop crop) {
    return crop.fit() == Crop.Fit.BORDER
        ? " The white around the picture belongs to it: leave it on."
        : "";
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(java.util.Locale.ENGLISH) + text.substring(1);
  }
}
