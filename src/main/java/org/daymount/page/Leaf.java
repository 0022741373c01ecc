package org.daymount.page;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One page protector. A pocket leaf has the same pockets on both sides.
 *
 * @param number from 1
 * @param kind a {@link PageKind#name}
 */
public record Leaf(int number, String kind, Optional<LocalDate> front, Optional<LocalDate> back) {
  /** A leaf's sides: the front lies on the right when the album is open, the back on the left. */
  public enum Side {
    FRONT,
    BACK;

    /** The word used in month.json. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
