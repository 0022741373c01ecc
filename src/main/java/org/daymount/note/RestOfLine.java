package org.daymount.note;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How a line goes on behind what may be a day.
 *
 * @param line folded
 * @param from where the rest begins
 */
record RestOfLine(String line, int from) {
  private static final Pattern UNIT =
      Pattern.compile(
          "(?:years?|yrs?|weeks?|months?|days?|hours?|hrs?|minutes?|mins?|am|pm|km|m|cm|kg"
              + "|g|ml|l|miles?|feet|ft|degrees?|percent|euros?|dollars?|pounds?|cups?|tbsp|tsp"
              + "|times?|people|kids|of|or|to \\d|out of|more|less|jahre?|stunden|uhr|ans|heures?"
              + "|anos?|horas?|anni|ore|jaar|uur|lat|godzin|ar|timmar|grams?|litres?|%|°|€|\\$|£"
              + "|x)(?![\\p{L}\\d])|[%°€$£']");
  private static final Pattern THING =
      Pattern.compile("\\p{Ll}{3,}s (?:for|came|in|of|from|on|and|were|at)");

  /** Nobody counts these: "3 we went", not "3 boats". */
  private static final Pattern NOT_COUNTED =
      Pattern.compile(
          "(?:i|we|he|she|they|it|you|the|my|our|his|her|their|this|that|there|ich|wir|er|sie|es|die|das"
              + "|je|nous|on|il|elle|le|la|les|nos|el|los|las|lo|gli|ik|wij|we|het|vi|jag|det)"
              + "(?!\\p{L})");

  /** What a number may count: nobody can tell "4 boats" from the fourth, with its boats. */
  private static final Pattern PLURAL = Pattern.compile("\\p{L}{3,}s(?![\\p{L}'])");

  boolean isUnit() {
    return begins(UNIT);
  }

  boolean isThings() {
    return begins(THING);
  }

  boolean isNotCounted() {
    return begins(NOT_COUNTED);
  }

  boolean isPlural() {
    return begins(PLURAL);
  }

  private boolean begins(Pattern pattern) {
    return pattern.matcher(line).region(from, line.length()).lookingAt();
  }

  /**
   * A word or two behind words for the page may be a slip of one of them.
   *
   * @param end behind the words for the page
   */
  static Optional<String> leftOver(String line, int end) {
    String left = line.substring(end).strip();
    boolean startsWithMark = !left.isEmpty() && !Character.isLetterOrDigit(left.charAt(0));
    boolean after = end > 0 && ",;".indexOf(line.charAt(Math.max(0, end - 2))) >= 0;
    return left.isEmpty() || startsWithMark || after || left.split(" +").length > 2
        ? Optional.empty()
        : Optional.of(DayCandidate.LEFT_OVER + "'" + left + "', which begins the story");
  }

  /** Whether words that end there are set off from what follows. */
  static boolean isAtMark(String line, int at) {
    return at >= line.length()
        || "-.,;:!()[]|".indexOf(line.charAt(at)) >= 0
        || "-.,;:!|".indexOf(line.charAt(Math.max(0, at - 1))) >= 0
        || (at >= 2 && ",;)".indexOf(line.charAt(at - 2)) >= 0);
  }
}
