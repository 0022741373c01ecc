package org.daymount.photo;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * When a photo was taken, by the camera's own wall clock: a local time without a zone, with its
 * fraction of a second. The offset is kept when the file has one; it never moves the wall clock.
 *
 * @param hourKnown false where only the day is known (a chat's file name); the time is then noon
 *     and says nothing about what came before or after
 */
public record Taken(
    Optional<LocalDateTime> local, Optional<ZoneOffset> offset, TakenFrom from, boolean hourKnown) {
  public static final Taken UNKNOWN =
      new Taken(Optional.empty(), Optional.empty(), TakenFrom.NONE, false);

  public Taken {
    if (local.isEmpty() != (from == TakenFrom.NONE)) {
      throw new IllegalArgumentException("a time needs an origin, and an origin a time: " + from);
    }
  }

  public Taken(Optional<LocalDateTime> local, Optional<ZoneOffset> offset, TakenFrom from) {
    this(local, offset, from, local.isPresent());
  }

  public static Taken at(LocalDateTime local, TakenFrom from) {
    return new Taken(Optional.of(local), Optional.empty(), from);
  }
}
