package org.daymount.day;

import java.util.BitSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which days of a month are wanted: "1-30", "3,5-9". Immutable. */
public final class DayNumbers {
  public static final DayNumbers ALL = parse("1-31");

  private static final int LAST = 31;

  private final BitSet days;

  private DayNumbers(BitSet days) {
    this.days = days;
  }

  /**
   * @throws IllegalArgumentException with a sentence for the person
   */
  public static DayNumbers parse(String text) {
    Pattern part = Pattern.compile("\\s*(\\d{1,2})\\s*(?:[-–]\\s*(\\d{1,2})\\s*)?");
    BitSet days = new BitSet();
    for (String piece : text.split(",", -1)) {
      Matcher matcher = part.matcher(piece);
      if (!matcher.matches()) {
        throw new IllegalArgumentException("\"" + text + "\" are no days like 1-30 or 3,5-9");
      }
      int from = Integer.parseInt(matcher.group(1));
      int to = matcher.group(2) == null ? from : Integer.parseInt(matcher.group(2));
      if (from < 1 || to > LAST || from > to) {
        throw new IllegalArgumentException(
            "\"" + text + "\": days run from 1 to 31, the lower one first");
      }
      days.set(from, to + 1);
    }
    return new DayNumbers(days);
  }

  public boolean contains(int dayOfMonth) {
    return days.get(dayOfMonth);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DayNumbers that && days.equals(that.days);
  }

  @Override
  public int hashCode() {
    return days.hashCode();
  }

  @Override
  public String toString() {
    return days.toString();
  }
}
