package org.daymount.ingest;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The date in a file's name, in the forms that phones, chats and screenshot keys give it (common
 * practice, no source). Runs of digits that only happen to look like a date are not taken: a
 * compact date needs an hour behind it, or to stand at the front or between a chat's dashes.
 */
final class NameDate {
  /**
   * @param utc whether the time is that of Greenwich and no wall clock's
   */
  record Found(WallTime time, boolean utc) {}

  /**
   * Names whose time is UTC: of 16 originals with a name like PXL_20260603_142530123 the name was
   * the camera's own time less its offset (measured; docs/dates.md).
   */
  private static final Pattern UTC = Pattern.compile("(?i)PXL_\\d{8}_\\d{6}.*");

  private static final String DAY = "(\\d{4})(\\d{2})(\\d{2})";
  private static final String SPELLED_DAY = "(\\d{4})([-._])(\\d{2})\\2(\\d{2})";

  /** 20260603_142530, PXL_20260603_142530123, IMG20260603142530. */
  private static final Pattern COMPACT =
      Pattern.compile("(?<!\\d)" + DAY + "[_T -]?(\\d{2})(\\d{2})(\\d{2})(\\d{3})?(?!\\d)");

  /** 2026-06-03 14.25.30, 2026-06-03-142530, 2026-06-03 at 2.25.30 PM. */
  private static final Pattern SPELLED =
      Pattern.compile(
          "(?<!\\d)"
              + SPELLED_DAY
              + "(?:[ _T-]|,? at )(\\d{1,2})[-._:h]?(\\d{2})[-._:m]?(\\d{2})"
              + "(?:[-._](\\d{3}))?(?!\\d)(?:\\h*([AaPp])\\.?[Mm]\\b)?");

  /** IMG-20260603-WA0002, and 20260603 at the front of a name. */
  private static final Pattern COMPACT_DAY =
      Pattern.compile("(?:^|[A-Za-z]-)" + DAY + "(?:-[A-Za-z].*|[ _][^\\d].*|$)");

  private static final Pattern SPELLED_DAY_ALONE =
      Pattern.compile("(?<!\\d)" + SPELLED_DAY + "(?!\\d)");

  private static final int LONGEST = 255;

  private NameDate() {}

  /**
   * @param name the last part of a file's name, with or without its ending
   */
  static Optional<Found> in(String name) {
    String base = FileKind.base(name.length() > LONGEST ? name.substring(0, LONGEST) : name);
    return wallTime(base)
        .map(time -> new Found(time, time.hourKnown() && UTC.matcher(base).matches()));
  }

  private static Optional<WallTime> wallTime(String base) {
    for (Optional<WallTime> found :
        List.of(compact(base), spelled(base), compactDay(base), spelledDay(base))) {
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private static Optional<WallTime> compact(String base) {
    Matcher m = COMPACT.matcher(base);
    return m.find()
        ? of(day(m, 1, 2, 3), time(m.group(4), m.group(5), m.group(6), m.group(7), null))
        : Optional.empty();
  }

  private static Optional<WallTime> spelled(String base) {
    Matcher m = SPELLED.matcher(base);
    return m.find()
        ? of(day(m, 1, 3, 4), time(m.group(5), m.group(6), m.group(7), m.group(8), m.group(9)))
        : Optional.empty();
  }

  private static Optional<WallTime> compactDay(String base) {
    Matcher m = COMPACT_DAY.matcher(base);
    return m.find() ? day(m, 1, 2, 3).map(WallTime::day) : Optional.empty();
  }

  private static Optional<WallTime> spelledDay(String base) {
    Matcher m = SPELLED_DAY_ALONE.matcher(base);
    return m.find() ? day(m, 1, 3, 4).map(WallTime::day) : Optional.empty();
  }

  private static Optional<WallTime> of(Optional<LocalDate> day, Optional<LocalTime> time) {
    return day.flatMap(d -> time.map(t -> WallTime.at(d.atTime(t))));
  }

  private static Optional<LocalDate> day(Matcher m, int year, int month, int day) {
    try {
      return Optional.of(
          LocalDate.of(
              Integer.parseInt(m.group(year)),
              Integer.parseInt(m.group(month)),
              Integer.parseInt(m.group(day))));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<LocalTime> time(
      String hours, String minutes, String seconds, String millis, String half) {
    try {
      int hour = Integer.parseInt(hours);
      if (half != null) { // 12 AM is 0, 12 PM is 12
        hour = hour % 12 + (half.equalsIgnoreCase("p") ? 12 : 0);
      }
      LocalTime time = LocalTime.of(hour, Integer.parseInt(minutes), Integer.parseInt(seconds));
      return Optional.of(time.plusNanos(WallTime.nanos(millis)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
