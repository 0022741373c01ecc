package org.daymount.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.album.Space;
import org.daymount.crop.Crop;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSpace;
import org.daymount.page.AlbumPage;
import org.daymount.page.Place;
import org.daymount.pick.ScoredCandidate;
import org.daymount.pick.SpacePick;
import org.daymount.unit.Length;

/** Which piece goes where, page by page. */
final class PageGuide {
  private final Month month;
  private final PieceNames names;

  PageGuide(Month month, PieceNames names) {
    this.month = month;
    this.names = names;
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
      steps.add(space(day.spaces().get(i)) + onSide(day, i));
    }
    names
        .cardsOf(day.day())
        .forEach(
            (label, card) ->
                steps.add(names.withSheet(label) + ": " + PieceNames.card(card) + "."));
    storyByHand(day).ifPresent(steps::add);
    return new Guide.PageSteps(
        day.day(), DayWords.weekday(day.day()) + ", " + DayWords.shortDay(day.day()), steps);
  }

  /** Where a story that no card carries goes. */
  private Optional<String> storyByHand(MonthDay day) {
    Optional<AlbumPage> page = month.album().page(day.day());
    boolean isTold = day.story().filter(story -> !story.isBlank()).isPresent();
    if (!isTold || page.isEmpty()) {
      return Optional.empty();
    }
    List<Place> stories =
        page.get().places().stream().filter(place -> place.what() == Place.What.STORY).toList();
    if (stories.isEmpty()) {
      return Optional.of("No place is left on this page for the story.");
    }
    return stories.get(0).index().isEmpty()
        ? Optional.of("The story: by hand, in the place kept for it.")
        : Optional.empty();
  }

  private String space(MonthSpace space) {
    SpacePick pick = space.pick();
    if (pick.hero().isEmpty()) {
      return capital(Missing.wanted(pick, month.units())) + ": still missing.";
    }
    ScoredCandidate hero = pick.hero().get();
    return pieces(space.pieces())
        + ": "
        + DayWords.space(pick.space(), pick.direction(), month.units())
        + "."
        + mat(pick.space())
        + border(hero.crop());
  }

  private String pieces(List<String> labels) {
    List<String> found = labels.stream().map(names::withSheet).toList();
    return found.size() == 1
        ? found.get(0)
        : String.join(", ", found.subList(0, found.size() - 1))
            + " and "
            + found.get(found.size() - 1)
            + " put together, edge to edge";
  }

  private String mat(Space space) {
    return space
        .reveal()
        .filter(Length::isPositive)
        .map(
            reveal ->
                " Centre it on a "
                    + month.units().name(space.upright())
                    + " mat: "
                    + month.units().of(reveal)
                    + " of the mat shows on each side.")
        .orElse(
            space.onMat() ? " It covers its " + month.units().name(space.upright()) + " mat." : "");
  }

  private String onSide(MonthDay day, int space) {
    boolean turned =
        month.album().page(day.day()).stream()
            .flatMap(page -> page.places().stream())
            .anyMatch(
                place ->
                    place.what() == Place.What.PHOTO
                        && place.index().equals(Optional.of(space))
                        && place.turned());
    return turned ? " It lies on its side, its top to the right." : "";
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
