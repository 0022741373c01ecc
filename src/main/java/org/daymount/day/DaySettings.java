package org.daymount.day;

import java.time.YearMonth;
import java.util.Objects;
import java.util.Optional;

/**
 * @param month empty for the month with most photos
 */
public record DaySettings(DayStart dayStarts, Optional<YearMonth> month, DayNumbers days) {
  public static final DaySettings DEFAULT =
      new DaySettings(DayStart.FOUR, Optional.empty(), DayNumbers.ALL);

  public DaySettings {
    Objects.requireNonNull(dayStarts);
    Objects.requireNonNull(month);
    Objects.requireNonNull(days);
  }
}
