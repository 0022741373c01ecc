package org.daymount.choices;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a person said about one photo, wherever it ends up.
 *
 * @param used true: take it even if the tool left it out; false: never take it; empty: not said
 * @param day the day it belongs to, for a photo without a trusted date
 */
public record PhotoChoice(
    PhotoKey photo, Optional<Boolean> used, Optional<LocalDate> day, UnknownFields other) {
  public PhotoChoice(PhotoKey photo, Optional<Boolean> used, Optional<LocalDate> day) {
    this(photo, used, day, UnknownFields.NONE);
  }
}
