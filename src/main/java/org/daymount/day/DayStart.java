package org.daymount.day;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import org.daymount.photo.Taken;

/**
 * The hour at which one day ends and the next begins: what is taken before it belongs to the
 * evening before. By default 04:00, as the diary day of the American Time Use Survey (Bureau of
 * Labor Statistics, OMB 1220-0175, Supporting Statement A: "4 a.m. to 4 a.m."). The arithmetic
 * knows no zone, so that hours skipped or repeated by summer time make no difference.
 */
public record DayStart(LocalTime at) {
  public static final DayStart FOUR = new DayStart(LocalTime.of(4, 0));
  public static final DayStart MIDNIGHT = new DayStart(LocalTime.MIDNIGHT);

  /**
   * @param text "04:00"
   * @throws IllegalArgumentException with a sentence for the person
   */
  public static DayStart parse(String text) {
    try {
      String padded = text.strip().matches("\\d:\\d\\d") ? "0" + text.strip() : text.strip();
      return new DayStart(LocalTime.parse(padded));
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException("\"" + text + "\" is no time of day like 04:00", e);
    }
  }

  /**
   * The day a photo belongs to. Where only the day is known, it is that day.
   *
   * @throws java.util.NoSuchElementException when the time is unknown
   */
  public LocalDate dayOf(Taken taken) {
    var local = taken.local().orElseThrow();
    return taken.hourKnown()
        ? local.minusNanos(at.toNanoOfDay()).toLocalDate()
        : local.toLocalDate();
  }
}
