package org.daymount.note;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code 8 XI}: the note's own month in Roman numerals, behind the day. */
final class RomanMonths {
  private static final List<String> ROMANS =
      List.of("i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii");
  private static final Pattern ROMAN = Pattern.compile("\\.? ?([ivx]{1,4})(?![\\p{L}\\d])\\.?");

  private RomanMonths() {}

  /** Behind the numeral; {@code from} when there is none. */
  static int end(String line, int from, Optional<Month> own, CalendarNames names) {
    Matcher roman = ROMAN.matcher(line).region(from, line.length());
    boolean isOwn =
        roman.lookingAt()
            && own.filter(month -> ROMANS.get(month.getValue() - 1).equals(roman.group(1)))
                .isPresent();
    boolean alone = isOwn && (roman.group(1).length() > 1 || standsAlone(line, roman.end(), names));
    return alone ? roman.end() : from;
  }

  private static boolean standsAlone(String line, int end, CalendarNames names) {
    int next = DayNameReader.end(DayNameReader.BEFORE_WEEKDAY, line, end);
    return next == line.length()
        || ".:;-".indexOf(line.charAt(end)) >= 0
        || names.weekdayAt(line, next).isPresent();
  }
}
