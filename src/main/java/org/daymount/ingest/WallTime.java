package org.daymount.ingest;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date, and where it is known an hour, as a tag or a name spells it.
 *
 * @param local noon where the hour is not known
 */
record WallTime(LocalDateTime local, boolean hourKnown, Optional<ZoneOffset> offset) {
  private static final int LONGEST = 80; // a date needs 35 characters; tags may hold megabytes

  /**
   * EXIF's own form "2026:06:03 14:25:30" (CIPA DC-008, 4.6.5 D), and what writers make of it:
   * other separators, a T, a fraction, an offset, no seconds, no time at all (XMP, PNG; RFC 3339).
   */
  private static final Pattern WRITTEN =
      Pattern.compile(
          "(\\d{4})[:/.-](\\d{1,2})[:/.-](\\d{1,2})"
              + "(?:[ T]+(\\d{1,2}):(\\d{2})(?::(\\d{2})(?:[.,](\\d{1,12}))?)?"
              + "\\s*(Z|[+-]\\d{2}:?\\d{2})?)?");

  private static final Pattern OFFSET = Pattern.compile("([+-])(\\d{2}):?(\\d{2})");

  static WallTime day(LocalDate day) {
    return new WallTime(day.atTime(LocalTime.NOON), false, Optional.empty());
  }

  static WallTime at(LocalDateTime local) {
    return new WallTime(local, true, Optional.empty());
  }

  /** Empty for anything blank, zero, malformed or not in the calendar. */
  static Optional<WallTime> parse(String text) {
    if (text == null || text.length() > 4 * LONGEST) {
      return Optional.empty();
    }
    Matcher written = WRITTEN.matcher(withoutPadding(text));
    if (!written.matches()) {
      return Optional.empty();
    }
    try {
      LocalDate day = LocalDate.of(number(written, 1), number(written, 2), number(written, 3));
      if (written.group(4) == null) {
        return Optional.of(day(day));
      }
      int second = written.group(6) == null ? 0 : number(written, 6);
      LocalTime time = LocalTime.of(number(written, 4), number(written, 5), second);
      LocalDateTime local = day.atTime(time).plusNanos(nanos(written.group(7)));
      return Optional.of(new WallTime(local, true, offset(written.group(8))));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static String withoutPadding(String text) {
    int end = text.indexOf('\0');
    return (end < 0 ? text : text.substring(0, end)).strip();
  }

  private static int number(Matcher matcher, int group) {
    return Integer.parseInt(matcher.group(group));
  }

  /** "+02:00"; blank means unknown. */
  static Optional<ZoneOffset> offset(String text) {
    if (text == null || text.length() > LONGEST) {
      return Optional.empty();
    }
    String bare = withoutPadding(text);
    if (bare.equals("Z")) {
      return Optional.of(ZoneOffset.UTC);
    }
    Matcher matcher = OFFSET.matcher(bare);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    try {
      int sign = matcher.group(1).equals("-") ? -1 : 1;
      return Optional.of(
          ZoneOffset.ofHoursMinutes(sign * number(matcher, 2), sign * number(matcher, 3)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /**
   * A fraction of a second as SubSecTime writes it: the digits after the point, so that "007419" is
   * 7.419 ms. Blank and other text is no fraction.
   */
  static long nanos(String digits) {
    if (digits == null || digits.length() > LONGEST) {
      return 0;
    }
    String bare = withoutPadding(digits);
    if (bare.isEmpty() || !bare.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return 0;
    }
    return Long.parseLong((bare + "000000000").substring(0, 9));
  }

  WallTime withFraction(String subSeconds) {
    return local.getNano() != 0 || !hourKnown
        ? this
        : new WallTime(local.plusNanos(nanos(subSeconds)), true, offset);
  }

  WallTime withOffset(Optional<ZoneOffset> known) {
    return new WallTime(local, hourKnown, known.or(() -> offset));
  }
}
