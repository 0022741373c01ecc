package org.daymount.month;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One day of the album. */
public record MonthDay(
    LocalDate day, State state, Optional<String> story, List<MonthSpace> spaces) {
  /** How far the day's page is served. */
  public enum State {
    FILLED,
    PARTLY,
    EMPTY,
    LEFT_OUT;

    /** The word used in month.json. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public MonthDay {
    spaces = List.copyOf(spaces);
  }
}
