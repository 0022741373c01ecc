package org.daymount.output;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.Locale;
import org.daymount.album.Space;
import org.daymount.unit.Orientation;
import org.daymount.unit.Units;

/** Dates and spaces in words, in English, whatever the computer speaks. */
final class DayWords {
  private DayWords() {}

  static String month(YearMonth month) {
    return month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + month.getYear();
  }

  static String weekday(LocalDate day) {
    return day.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  static String shortDay(LocalDate day) {
    return day.format(DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH));
  }

  /** {@code 4x6 landscape on mat}. */
  static String space(Space space, Orientation way, Units units) {
    return units.name(space.upright())
        + (way == Orientation.SQUARE ? "" : " " + way.word())
        + (space.onMat() ? " on mat" : "");
  }

  static String counted(int count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }
}
