package org.daymount.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days and years as they come out of dictation, in English. */
final class SpelledNumbers {
  /** A number found at the start of a text, and where it ends. */
  record Found(int value, int end) {}

  private static final List<String> UNITS =
      List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine");
  private static final List<String> TEENS =
      List.of(
          "ten",
          "eleven",
          "twelve",
          "thirteen",
          "fourteen",
          "fifteen",
          "sixteen",
          "seventeen",
          "eighteen",
          "nineteen");
  private static final List<String> ORDINAL_UNITS =
      List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth");
  private static final List<String> ORDINAL_TEENS =
      List.of(
          "tenth",
          "eleventh",
          "twelfth",
          "thirteenth",
          "fourteenth",
          "fifteenth",
          "sixteenth",
          "seventeenth",
          "eighteenth",
          "nineteenth");
  private static final List<String> CARDINALS = upTo31(UNITS, TEENS, "twenty", "thirty");
  private static final List<String> ORDINALS =
      upTo31(ORDINAL_UNITS, ORDINAL_TEENS, "twentieth", "thirtieth");
  private static final Pattern YEAR =
      Pattern.compile("(?:twenty|two thousand(?: and)?) (twenty|thirty)(?:[ -](\\w+))?(?!\\p{L})");

  private SpelledNumbers() {}

  private static List<String> upTo31(
      List<String> units, List<String> teens, String twenty, String thirty) {
    List<String> words = new ArrayList<>(units);
    words.addAll(teens);
    words.add(twenty);
    units.forEach(unit -> words.add("twenty " + unit));
    words.add(thirty);
    words.add("thirty " + units.get(0));
    return List.copyOf(words);
  }

  /** {@code first}, {@code twenty-third}. */
  static Optional<Found> ordinalAt(String line, int from) {
    return longest(ORDINALS, line, from);
  }

  /** {@code one}, {@code twenty three}. */
  static Optional<Found> cardinalAt(String line, int from) {
    return longest(CARDINALS, line, from);
  }

  private static Optional<Found> longest(List<String> words, String line, int from) {
    Optional<Found> best = Optional.empty();
    for (int i = 0; i < words.size(); i++) {
      int end = from + words.get(i).length();
      boolean there =
          end <= line.length()
              && line.substring(from, end).replace('-', ' ').equals(words.get(i))
              && (end == line.length() || !Character.isLetter(line.charAt(end)));
      if (there && best.filter(found -> found.end() > end).isEmpty()) {
        best = Optional.of(new Found(i + 1, end));
      }
    }
    return best;
  }

  /** {@code twenty twenty six}. */
  static OptionalInt yearAt(String text, int from) {
    Matcher year = YEAR.matcher(text).region(from, text.length());
    if (!year.lookingAt()) {
      return OptionalInt.empty();
    }
    int unit = year.group(2) == null ? 0 : UNITS.indexOf(year.group(2)) + 1;
    return OptionalInt.of(2000 + (year.group(1).equals("twenty") ? 20 : 30) + unit);
  }
}
