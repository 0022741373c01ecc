package org.daymount.review;

import java.time.LocalDate;
import java.util.Optional;
import org.daymount.album.DayPage;
import org.daymount.choices.Choices;
import org.daymount.choices.DayChoice;
import org.daymount.choices.PhotoKey;
import org.daymount.choices.SpaceChoice;
import org.daymount.pick.DayPick;
import org.daymount.pick.SpacePick;
import org.daymount.pipeline.Selected;

/** Pages as they lie finished in the album: with their pictures, crops and stories. */
final class FinishedPages {
  private final Choices choices;
  private final Selected picked;

  /**
   * @param picked what the choices made of the month
   */
  FinishedPages(Choices choices, Selected picked) {
    this.choices = choices;
    this.picked = picked;
  }

  /**
   * Two days exchange all that is on their pages. The pictures are held from now on, also those
   * that were only proposed; a space without a picture moves as it is.
   */
  Choices exchanged(LocalDate one, LocalDate two) {
    if (one.equals(two)) {
      return choices;
    }
    Choices spaces = choices.withPagesSwapped(one, two);
    return withStory(
        withStory(
            spaces
                .withDay(one, finished(spaces.day(one), two))
                .withDay(two, finished(spaces.day(two), one)),
            two,
            one),
        one,
        two);
  }

  /**
   * @param bare the day with the other's spaces already
   */
  private DayChoice finished(DayChoice bare, LocalDate from) {
    DayChoice day = bare;
    for (int place : bare.spaces().keySet()) {
      day = day.withSpace(place, withPicture(bare.space(place), SpaceChoice.NONE));
    }
    DayPick pick = pick(from);
    for (int place = 0; place < pick.spaces().size(); place++) {
      day = day.withSpace(place, withPicture(day.space(place), held(from, place, pick)));
    }
    return day;
  }

  private Choices withStory(Choices changed, LocalDate from, LocalDate to) {
    return changed.withStory(
        to,
        Optional.of(pick(from).page().story().orElse("")),
        picked.noted(to).flatMap(DayPage::story));
  }

  private static SpaceChoice withPicture(SpaceChoice space, SpaceChoice picture) {
    return space
        .withPhoto(picture.photo())
        .withCrop(picture.crop())
        .withQuarterTurns(picture.quarterTurns());
  }

  /** What a person chose there; else the picture that was proposed. */
  private SpaceChoice held(LocalDate day, int place, DayPick pick) {
    SpaceChoice chosen = picked.obeyed().space(day, place);
    SpacePick space = pick.spaces().get(place);
    if (chosen.photo().isPresent() || space.hero().isEmpty()) {
      return chosen;
    }
    return chosen.withPhoto(Optional.of(PhotoKey.of(space.hero().get().photo())));
  }

  private DayPick pick(LocalDate day) {
    return picked.picks().stream()
        .filter(each -> each.page().day().equals(day))
        .findFirst()
        .orElseThrow();
  }
}
