package org.daymount.choices;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What a person may say of one photo, wherever it lies, each made into new choices. */
public final class PhotoEdits {
  private final Choices choices;
  private final PhotoKey photo;

  public PhotoEdits(Choices choices, PhotoKey photo) {
    this.choices = choices;
    this.photo = photo;
  }

  /**
   * Whether the photo is to be used, or, without a word, as the program finds. One that is left out
   * leaves the spaces it was chosen for.
   */
  public Choices used(Optional<Boolean> used) {
    Choices changed = with(before().withUsed(used));
    return used.equals(Optional.of(false)) ? withoutIn(changed) : changed;
  }

  /**
   * The day that the photo was taken, or, without one, as its own date says.
   *
   * @param time where it is known
   */
  public Choices given(Optional<LocalDate> day, Optional<LocalTime> time) {
    return with(before().withTaken(day, time));
  }

  /** The photo put into a space; one that had been left out is so no more. */
  public Choices chosenFor(LocalDate day, int place) {
    SpaceChoice space = choices.space(day, place);
    SpaceChoice chosen =
        space.photo().equals(Optional.of(photo))
            ? space
            : space.emptied().withPhoto(Optional.of(photo));
    boolean leftOut = choices.used(photo.sha256()).equals(Optional.of(false));
    Choices free = leftOut ? used(Optional.empty()) : choices;
    return free.withDay(day, free.day(day).withSpace(place, chosen));
  }

  private PhotoChoice before() {
    return choices
        .photos()
        .getOrDefault(photo.sha256(), new PhotoChoice(photo, Optional.empty(), Optional.empty()));
  }

  private Choices with(PhotoChoice changed) {
    boolean saysNothing =
        changed.used().isEmpty()
            && changed.day().isEmpty()
            && changed.other().equals(UnknownFields.NONE);
    if (!saysNothing) {
      return choices.withPhoto(changed);
    }
    Map<String, PhotoChoice> left = new TreeMap<>(choices.photos());
    left.remove(photo.sha256());
    return new Choices(choices.days(), left, choices.other());
  }

  private Choices withoutIn(Choices choices) {
    Choices changed = choices;
    for (LocalDate date : choices.days().keySet()) {
      for (Map.Entry<Integer, SpaceChoice> space : choices.day(date).spaces().entrySet()) {
        if (space.getValue().holds(photo)) {
          changed =
              changed.withDay(
                  date, changed.day(date).withSpace(space.getKey(), space.getValue().emptied()));
        }
      }
    }
    return changed;
  }
}
