package org.daymount.note;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A day as a line names it, while the line is being read.
 *
 * @param day of the month, not checked
 * @param end folded index behind it
 * @param style how it is written, so that a note's own habit can be told
 * @param slip whether a letter was typed for a digit
 */
record DayName(
    int day,
    Optional<Month> month,
    OptionalInt year,
    Optional<DayOfWeek> weekday,
    int end,
    String style,
    boolean slip) {
  /** A weekday without a number. */
  static final String WEEKDAY_ALONE = "weekday-alone";

  /** Of two letters, which are often other words too. */
  static final String SHORT_WEEKDAY_ALONE = "weekday-alone short";

  /** {@code 1 Wed}. */
  static final String WEEKDAY_BEHIND = "weekday-after";

  /** {@code 1. Wed}: often the first word of a story. */
  static final String BEHIND_DOT = WEEKDAY_BEHIND + " dot";

  /** The day behind the one above: {@code next day}. */
  static final String NEXT_DAY = "next-day";

  boolean isPossible() {
    return day >= 1 && day <= 31;
  }

  PartialDate date() {
    return new PartialDate(day, month, year, weekday);
  }

  /** Whether another weekday was said than the day has; never without a month. */
  boolean weekdayIsWrong(Optional<YearMonth> noteMonth) {
    if (weekday.isEmpty() || !isPossible()) {
      return false;
    }
    Optional<DayOfWeek> actual = noteMonth.flatMap(date()::date).map(LocalDate::getDayOfWeek);
    return !weekday.equals(actual);
  }

  DayName on(DayOfWeek said) {
    return new DayName(day, month, year, Optional.of(said), end, style, slip);
  }

  DayName reaching(int newEnd) {
    return new DayName(day, month, year, weekday, newEnd, style, slip);
  }

  /** Of another month or year than the note's. */
  boolean isForeign(DayNameReader note) {
    boolean otherMonth = month.isPresent() && note.own().isPresent() && !month.equals(note.own());
    boolean otherYear =
        year.isPresent()
            && note.month()
                .map(YearMonth::getYear)
                .filter(own -> own != year.getAsInt())
                .isPresent();
    return otherMonth || otherYear;
  }

  /** Whether both numbers may be the month's. */
  boolean isOpen() {
    return style.contains("numeric")
        && style.endsWith("/")
        && day <= 12
        && month.filter(named -> named.getValue() != day).isPresent();
  }
}
