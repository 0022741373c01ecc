package org.daymount.note;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A day as a note names it; what was not said comes from the month of the note.
 *
 * @param day of the month, 1 to 31
 */
public record PartialDate(
    int day, Optional<Month> month, OptionalInt year, Optional<DayOfWeek> weekday) {
  private static final int HALF_A_YEAR = 6; // months

  public PartialDate {
    if (day < 1 || day > 31) {
      throw new IllegalArgumentException("a day of the month is 1 to 31, was " + day);
    }
  }

  public static PartialDate of(int day) {
    return new PartialDate(day, Optional.empty(), OptionalInt.empty(), Optional.empty());
  }

  /** The date, or empty when the month has no such day. */
  public Optional<LocalDate> date(YearMonth noteMonth) {
    try {
      return Optional.of(
          LocalDate.of(year.orElse(nearYear(noteMonth)), month.orElse(noteMonth.getMonth()), day));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  /** January in December's note is the next year's, and December in January's the last one's. */
  private int nearYear(YearMonth noteMonth) {
    int ahead =
        month.map(Month::getValue).orElse(noteMonth.getMonthValue()) - noteMonth.getMonthValue();
    return noteMonth.getYear() + (ahead < -HALF_A_YEAR ? 1 : ahead > HALF_A_YEAR ? -1 : 0);
  }

  /** For messages: {@code Wed 3}, {@code 3 July}. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    weekday.ifPresent(
        named -> text.append(named.getDisplayName(TextStyle.SHORT, Locale.ENGLISH)).append(' '));
    text.append(day);
    month.ifPresent(
        named -> text.append(' ').append(named.getDisplayName(TextStyle.FULL, Locale.ENGLISH)));
    year.ifPresent(named -> text.append(' ').append(named));
    return text.toString();
  }
}
