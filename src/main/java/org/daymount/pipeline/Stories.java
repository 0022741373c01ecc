package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.album.DayPage;
import org.daymount.card.StoryCard;
import org.daymount.card.StoryTypesetter;
import org.daymount.card.TypesetStory;
import org.daymount.month.Warning;

/** The story cards of the month, and what had to be done to the words to set them. */
record Stories(Map<LocalDate, TypesetStory> byDay) {

  static Stories set(List<DayPage> pages, CardSizes sizes) {
    Map<LocalDate, TypesetStory> byDay = new TreeMap<>();
    StoryTypesetter setter = new StoryTypesetter();
    for (DayPage page : pages) {
      sizes
          .of(page)
          .ifPresent(size -> byDay.put(page.day(), setter.set(page.day(), page.story(), size)));
    }
    return new Stories(byDay);
  }

  List<StoryCard> cards(LocalDate day) {
    return byDay.containsKey(day) ? byDay.get(day).cards() : List.of();
  }

  List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    byDay.forEach(
        (day, set) ->
            set.notes()
                .forEach(
                    text ->
                        warnings.add(
                            new Warning("story", Optional.empty(), Optional.of(day), text))));
    return warnings;
  }
}
