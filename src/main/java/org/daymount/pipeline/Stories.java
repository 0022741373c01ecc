package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.album.DayPage;
import org.daymount.card.CardStyle;
import org.daymount.card.StoryCard;
import org.daymount.card.StoryTypesetter;
import org.daymount.card.TypesetStory;
import org.daymount.page.PagePlanner;
import org.daymount.problem.Warning;
import org.daymount.unit.PaperSize;

/** The story cards of the month, and what had to be done to the words to set them. */
record Stories(Map<LocalDate, TypesetStory> byDay) {

  static final Stories NONE = new Stories(Map.of());

  /** Where a card is as large as its place, the pages are laid out without cards first. */
  static Stories of(Request request, Selected picked) {
    CardSizes sizes = CardSizes.of(request);
    if (request.cardStyle().fitted()) {
      PagePlanner.Plan bare =
          new PagePlanner(request.pages())
              .plan(PageContents.of(picked.picks(), NONE, request.pages().album()));
      sizes = CardSizes.fitted(request, bare.layout());
    }
    return set(picked.album().pages(), sizes, request.cardStyle());
  }

  static Stories set(List<DayPage> pages, CardSizes sizes, CardStyle style) {
    Map<LocalDate, TypesetStory> byDay = new TreeMap<>();
    StoryTypesetter setter = new StoryTypesetter();
    for (DayPage page : pages) {
      sizes
          .of(page)
          .flatMap(size -> set(page, size, style, setter))
          .ifPresent(set -> byDay.put(page.day(), set));
    }
    return new Stories(byDay);
  }

  /** Empty where the place that is left is too small for type: the story is written by hand. */
  private static Optional<TypesetStory> set(
      DayPage page, PaperSize size, CardStyle style, StoryTypesetter setter) {
    try {
      return Optional.of(setter.set(page.day(), page.story(), size, style));
    } catch (IllegalArgumentException tooSmall) {
      if (style.fitted()) {
        return Optional.empty();
      }
      throw tooSmall;
    }
  }

  List<StoryCard> cards(LocalDate day) {
    return byDay.containsKey(day) ? byDay.get(day).cards() : List.of();
  }

  List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    byDay.forEach(
        (day, set) ->
            set.notes().forEach(text -> warnings.add(Warning.on(day, Warning.Kind.STORY, text))));
    return warnings;
  }
}
