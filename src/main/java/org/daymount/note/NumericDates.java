package org.daymount.note;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates all in numbers: {@code 2026-06-04}, {@code 4.6.}, {@code 6/4}. */
final class NumericDates {
  private static final Pattern ISO =
      Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?![\\d-])");
  private static final Pattern NUMERIC =
      Pattern.compile(
          "(\\d{1,2}) ?([/.-]) ?(\\d{1,2})(?:\\2(\\d{4}|\\d{2})|\\2(?!\\d))?(?![\\d/])(?!\\.\\d)");

  /**
   * @param days all that it may mean
   * @param isAll whether it cannot be anything else
   */
  record Read(List<DayName> days, boolean isAll) {}

  private final String line;
  private final Optional<DayOfWeek> weekday;
  private final Optional<Month> own;
  private final List<DayName> found = new ArrayList<>();

  private NumericDates(String line, Optional<DayOfWeek> weekday, Optional<Month> own) {
    this.line = line;
    this.weekday = weekday;
    this.own = own;
  }

  static Read at(String line, int from, Optional<DayOfWeek> weekday, Optional<Month> own) {
    NumericDates dates = new NumericDates(line, weekday, own);
    boolean isAll = dates.iso(from);
    if (!isAll) {
      dates.numeric(from);
    }
    return new Read(List.copyOf(dates.found), isAll);
  }

  /** ISO 8601. */
  private boolean iso(int from) {
    Matcher iso = ISO.matcher(line).region(from, line.length());
    if (!iso.lookingAt() || !isMonth(number(iso.group(2)))) {
      return false;
    }
    OptionalInt year = OptionalInt.of(number(iso.group(1)));
    add(number(iso.group(3)), number(iso.group(2)), year, iso.end(), "iso");
    return true;
  }

  private void numeric(int from) {
    Matcher date = NUMERIC.matcher(line).region(from, line.length());
    if (!date.lookingAt()) {
      return;
    }
    int first = number(date.group(1));
    int second = number(date.group(3));
    String mark = date.group(2);
    boolean dotted = mark.equals(".");
    OptionalInt year =
        date.group(4) == null
            ? OptionalInt.empty()
            : OptionalInt.of(number(date.group(4)) + (date.group(4).length() == 2 ? 2000 : 0));
    if (mark.equals("-") && year.isEmpty()) {
      return;
    }
    int ownNumber = own.map(Month::getValue).orElse(0);
    if (isMonth(second) && (second == ownNumber || (ownNumber == 0 && !dotted))) {
      add(first, second, year, date.end(), "numeric" + mark);
    }
    if (!dotted && first != second && isMonth(first) && (first == ownNumber || ownNumber == 0)) {
      add(second, first, year, date.end(), "numeric-month-first" + mark);
    }
  }

  private void add(int day, int month, OptionalInt year, int end, String style) {
    String whole = weekday.isPresent() ? "weekday " + style : style;
    found.add(new DayName(day, Optional.of(Month.of(month)), year, weekday, end, whole, false));
  }

  private static boolean isMonth(int number) {
    return number >= 1 && number <= 12;
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }
}
