package org.daymount.album;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How many spaces are meant, as it stands before or behind what they are like. */
final class SpaceCounts {
  /** What may stand behind a number and a comma: {@code one, upright}. */
  private static final String WAY =
      "(?:(?:one|two|[12]) )?(?:tall|wide|upright|portrait|landscape|lying|vertical|horizontal|hochkant|quer|small"
          + "|large|big|on a mat)(?!\\p{L})";

  private static final Pattern COUNT_BEFORE =
      Pattern.compile(
          "(?:(\\d{1,2})(?:,(?= "
              + WAY
              + "))? *(?:x(?! *-)|(?= |[pl](?![\\p{L}\\d])|[\\x{1F4F7}\\x{1F4F8}])) *"
              + "|x ?(\\d{1,2}) +|(?:an? )?(pair|couple) (?:of )?|(\\p{L}+)(?:,(?= "
              + WAY
              + "))? +(?:(?:keer|mal|fois|veces|volte|vezes|razy|ganger) +)?)(?=.)");
  private static final Pattern TIMES =
      Pattern.compile(
          "x *(\\d{1,2})(?![\\p{L}\\d./])|(\\d{1,2}|[a-z]+) of (?:them|those" + "|these)\\)?");
  private static final Pattern TIMES_ALONE =
      Pattern.compile("(?:x *(\\d{1,2})|(\\d{1,2}) ?x)(?= *$)");

  private static final Found NONE = new Found(0, 0);

  /**
   * @param value 0 when no number stands there
   * @param end behind it
   */
  record Found(int value, int end) {}

  private SpaceCounts() {}

  /** {@code two }, {@code 2x }, {@code a pair of }. */
  static Found before(String text, int at) {
    Matcher count = COUNT_BEFORE.matcher(text).region(at, text.length());
    return count.lookingAt() ? new Found(countOf(count), count.end()) : NONE;
  }

  /** {@code x2}, {@code two of them}, behind what is meant. */
  static Found times(String text, int at) {
    return either(TIMES.matcher(text).region(at, text.length()));
  }

  /** {@code x2} and nothing else. */
  static Found timesAlone(String text, int at) {
    return either(TIMES_ALONE.matcher(text).region(at, text.length()));
  }

  private static Found either(Matcher times) {
    return times.lookingAt()
        ? new Found(number(times.group(1) != null ? times.group(1) : times.group(2)), times.end())
        : NONE;
  }

  private static int countOf(Matcher count) {
    if (count.group(3) != null) {
      return 2; // a pair, a couple
    }
    return number(
        count.group(1) != null
            ? count.group(1)
            : count.group(2) != null ? count.group(2) : count.group(4));
  }

  static int number(String said) {
    return said.matches("\\d+") ? Integer.parseInt(said) : PageCounts.of(said);
  }
}
