package org.daymount.note;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the days that stand on one line one after the other: {@code 1: ferry 2: rain}, or a whole
 * note dictated without a break. Only days that go on from the line's first, one by one and written
 * in the same way, are taken for such.
 */
final class DaysOnOneLine {
  private static final Pattern COLON = Pattern.compile("(?<=[ ,;.|])(\\d{1,2})(:|\\))(?= |$)");
  private static final Pattern WORD = Pattern.compile("(?<= )[\\p{L}\\d]");

  /** Before the name of a day that is only spoken of. */
  private static final Pattern TO_IT =
      Pattern.compile(
          "(?<!\\p{L})(?:on|by|until|till|til|for|since|from|to|of|the|before|after|is|was) $");

  private static final int FEWEST_DICTATED = 3; // one name of a day within a story is no day
  private static final int SHORTEST_DICTATED = 30; // characters
  private static final int LONGEST = 8_000; // characters
  private static final int LONGEST_NAME = 120; // characters of a day's name and what follows it

  private final DayLineReader reader;

  DaysOnOneLine(DayLineReader reader) {
    this.reader = reader;
  }

  /** The line, or its parts. */
  List<NoteLine> parts(NoteLine line) {
    String text = line.text();
    boolean dictated = text.length() >= SHORTEST_DICTATED && text.length() <= LONGEST;
    if (!dictated && !COLON.matcher(text).find()) {
      return List.of(line);
    }
    Optional<DayCandidate> first =
        reader.read(text).stream()
            .filter(day -> day.names().size() == 1 && day.inMonth())
            .max(Comparator.comparingDouble(DayCandidate::strength));
    if (first.isEmpty()) {
      return List.of(line);
    }
    List<Integer> at = marked(text, first.get());
    if (at.isEmpty() && dictated) {
      at = dictated(text, first.get());
    }
    return at.isEmpty() ? List.of(line) : line.parts(at);
  }

  private static List<Integer> marked(String text, DayCandidate first) {
    List<Integer> at = new ArrayList<>();
    String mark =
        first.style().isEmpty() ? "" : first.style().substring(first.style().length() - 1);
    int day = first.last();
    Matcher next = COLON.matcher(text);
    while ((mark.equals(":") || mark.equals(")")) && next.find()) {
      if (next.group(2).equals(mark) && Integer.parseInt(next.group(1)) == day + 1) {
        day++;
        at.add(withBlanks(text, next.start()));
      }
    }
    return at;
  }

  private record Named(int day, int at) {}

  private List<Integer> dictated(String text, DayCandidate first) {
    boolean dated = first.names().get(0).month().isPresent();
    if (!dated && first.names().get(0).weekday().isEmpty()) {
      return List.of();
    }
    List<Named> named = named(text, first);
    List<Integer> days = dated ? rising(named, first.last()) : List.of();
    if (days.size() + 1 >= FEWEST_DICTATED) {
      return days;
    }
    List<Integer> oneByOne = new ArrayList<>();
    int day = first.last();
    for (Named each : named) {
      if (each.day() == day + 1) {
        day++;
        oneByOne.add(each.at());
      }
    }
    boolean alone = dated && first.style().contains("month-first");
    return oneByOne.size() + 1 >= FEWEST_DICTATED || alone ? oneByOne : List.of();
  }

  /** Where days are named on the line in the way of its first. */
  private List<Named> named(String text, DayCandidate first) {
    List<Named> named = new ArrayList<>();
    Matcher word = WORD.matcher(text);
    while (word.find()) {
      int at = word.start();
      if (!reader.mayName(text, at)) {
        continue;
      }
      String near = text.substring(at, Math.min(text.length(), at + LONGEST_NAME));
      List<DayCandidate> days =
          reader.read(near).stream()
              .filter(each -> each.names().size() == 1 && each.style().equals(first.style()))
              .toList();
      boolean spokenOf = TO_IT.matcher(text).region(Math.max(0, at - LONGEST_NAME), at).find();
      if (!spokenOf) {
        days.forEach(each -> named.add(new Named(each.first(), withBlanks(text, at))));
      }
    }
    return named;
  }

  /** The most days that rise from the first on, of which a story may name others too. */
  private static List<Integer> rising(List<Named> named, int first) {
    List<List<Named>> chains = new ArrayList<>();
    for (Named each : named) {
      List<Named> longest = List.of();
      for (List<Named> chain : chains) {
        Named last = chain.get(chain.size() - 1);
        boolean goesOn = last.day() < each.day() && last.at() < each.at();
        longest = goesOn && chain.size() > longest.size() ? chain : longest;
      }
      if (each.day() > first) {
        List<Named> chain = new ArrayList<>(longest);
        chain.add(each);
        chains.add(chain);
      }
    }
    return chains.stream()
        .reduce((best, next) -> next.size() > best.size() ? next : best)
        .map(chain -> chain.stream().map(Named::at).toList())
        .orElse(List.of());
  }

  /** Blanks belong to what follows, so that no story ends with them. */
  private static int withBlanks(String text, int at) {
    int from = at;
    while (from > 0 && text.charAt(from - 1) == ' ') {
      from--;
    }
    return from;
  }
}
