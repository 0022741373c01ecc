package org.daymount.output;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates as they stand in sentences. */
final class Words {
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE, d MMMM", Locale.ENGLISH);

  private Words() {}

  static String month(YearMonth month) {
    return MONTH.format(month);
  }

  static String day(LocalDate day) {
    return DAY.format(day);
  }
}
