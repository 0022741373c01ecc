package org.daymount.note;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.DayPage;
import org.daymount.album.NormalizedText;
import org.daymount.album.PageSpecParser;

/**
 * The writer's own letters for pages, as explained above the first day: {@code T = tall photo, J =
 * journaling card}. A day that begins with them, {@code 5 TJ}, has all of them; {@code TT} is two.
 */
final class PageKey {
  private static final Pattern MEANS =
      Pattern.compile(
          "(?<![\\p{L}\\d])([\\p{L}\\d]{1,2}) *= *([^=]+?)"
              + "(?=[,;/]? +[\\p{L}\\d]{1,2} *=|[ .,;]*$)");
  private static final Pattern CODE = Pattern.compile("[\\p{L}\\d]{1,4}(?=$|[ ,.:;-])");
  private static final Pattern BEHIND = Pattern.compile("[ .,:;-]*");
  private static final Set<String> WORDS = Set.of("I", "A"); // "I went"
  private static final int FEWEST = 2; // letters explained

  private final Map<String, String> meanings = new LinkedHashMap<>();
  private final Set<String> bases;

  /**
   * @param above the lines above the first day
   */
  PageKey(List<NoteLine> above, Set<String> bases) {
    this.bases = bases;
    for (NoteLine line : above) {
      Matcher means = MEANS.matcher(line.content());
      while (means.find()) {
        String said = NormalizedText.fold(means.group(2)).strip();
        PageSpecParser.Read read = PageSpecParser.read(said, 0, bases);
        boolean leftOut = read.any() && read.words().kind() == DayPage.Kind.LEFT_OUT;
        if (read.any() && (leftOut || read.end() == said.length())) {
          meanings.put(means.group(1), leftOut ? said.substring(0, read.end()) : said);
        }
      }
    }
  }

  /** The day with the page its letters stand for; the day itself where it begins with none. */
  DayEntry with(DayEntry day, NoteLine line) {
    Matcher code = CODE.matcher(line.content());
    code.region(line.folded().rawIndex(day.storyFrom()), line.content().length());
    if (meanings.size() < FEWEST || !day.words().saysNothing() || !code.lookingAt()) {
      return day;
    }
    int end = day.storyFrom();
    while (end < line.text().length() && line.folded().rawIndex(end) < code.end()) {
      end++;
    }
    int storyFrom = DayNameReader.end(BEHIND, line.text(), end);
    return said(code.group())
        .map(text -> PageSpecParser.read(text, 0, bases))
        .filter(PageSpecParser.Read::any)
        .map(read -> day.with(read.words(), day.headingEnds(), storyFrom))
        .orElse(day);
  }

  private Optional<String> said(String code) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    String rest = WORDS.contains(code) ? "?" : code;
    while (!rest.isEmpty()) {
      String left = rest;
      Optional<String> next =
          meanings.keySet().stream()
              .filter(left::startsWith)
              .reduce((one, other) -> other.length() > one.length() ? other : one);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      counts.merge(next.get(), 1, Integer::sum);
      rest = rest.substring(next.get().length());
    }
    List<String> said = new ArrayList<>();
    counts.forEach(
        (letter, count) -> said.add((count > 1 ? count + " " : "") + meanings.get(letter)));
    String text = String.join(", ", said);
    return PageSpecParser.read(text, 0, bases).end() == text.length()
        ? Optional.of(text)
        : Optional.empty();
  }
}
