package org.daymount.album;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What one day's page side is to hold.
 *
 * @param spaces in the order of the page; empty unless {@code kind} is {@link Kind#PICTURES}
 * @param story the day's text as the person wrote it, lines joined by '\n'
 */
public record DayPage(LocalDate day, Kind kind, List<Space> spaces, Optional<String> story) {
  /** Whether the day has pictures, a page without one, or no page at all. */
  public enum Kind {
    PICTURES,
    NO_PHOTO,
    LEFT_OUT
  }

  public DayPage {
    spaces = List.copyOf(spaces);
    if (spaces.isEmpty() == (kind == Kind.PICTURES)) {
      throw new IllegalArgumentException(day + ": " + kind + " with " + spaces.size() + " spaces");
    }
  }
}
