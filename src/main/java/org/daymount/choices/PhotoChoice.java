package org.daymount.choices;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;

/**
 * What a person said about one photo, wherever it ends up.
 *
 * @param used true: take it even if the tool left it out; false: never take it; empty: not said
 * @param day the day it was taken, whatever the photo itself says
 * @param time on that day's clock, where it is known
 */
public record PhotoChoice(
    PhotoKey photo,
    Optional<Boolean> used,
    Optional<LocalDate> day,
    Optional<LocalTime> time,
    UnknownFields other) {
  public PhotoChoice {
    if (time.isPresent() && day.isEmpty()) {
      throw new IllegalArgumentException("a time needs its day");
    }
  }

  public PhotoChoice(PhotoKey photo, Optional<Boolean> used, Optional<LocalDate> day) {
    this(photo, used, day, Optional.empty(), UnknownFields.NONE);
  }

  /** When the photo was taken, as the person said. */
  Optional<Taken> taken() {
    return day.map(
        date ->
            new Taken(
                Optional.of(date.atTime(time.orElse(LocalTime.NOON))),
                Optional.empty(),
                TakenFrom.PERSON,
                time.isPresent()));
  }

  PhotoChoice withUsed(Optional<Boolean> changed) {
    return new PhotoChoice(photo, changed, day, time, other);
  }

  PhotoChoice withTaken(Optional<LocalDate> changed, Optional<LocalTime> at) {
    return new PhotoChoice(photo, used, changed, at, other);
  }
}
