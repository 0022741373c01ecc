package org.daymount.note;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.DayPage;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;

/**
 * Words for the page at the end of a day's line, behind its story: {@code First day of the
 * holidays. 4x6}, {@code painted the hall (two photos)}, {@code rain, no pics}. They count for the
 * page and stay in the story, because a sentence may mean them otherwise.
 */
final class WordsBehindStory {
  /** Where the last thing said may begin: behind a mark, or a word. */
  private static final Pattern START = Pattern.compile("([.!?;,:|(\\[-]|(?<=\\S)(?= ))[ -]*");

  private static final Pattern CLOSING = Pattern.compile("[ .:;,)\\]!*-]*");

  /** Without a mark before them only these are no sentence's. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "\\d+ ?(?:x|by|\\*) ?\\d.*|(?:(?:two|three|four|\\d) (?:x )?)\\d+ ?x ?\\d+.*"
              + "|(?:no|kein|keine|sin|sans|pas de|senza|geen|sem|bez|inga|ingen|inget) \\p{L}+\\W*");

  /**
   * @param words for the page
   * @param from folded index at which they begin
   */
  record Found(PageSpec words, int from) {}

  private static final int LONGEST = 60; // characters; more is no words for a page

  private WordsBehindStory() {}

  /**
   * @param line folded
   * @param storyFrom where its story begins
   */
  static Optional<Found> in(String line, int storyFrom, Set<String> bases) {
    int first = Math.max(storyFrom, line.length() - LONGEST);
    Matcher start = START.matcher(line).region(first, line.length());
    while (start.find()) {
      int from = start.end();
      if (from > storyFrom && from < line.length()) {
        PageSpecParser.Read read = PageSpecParser.read(line, from, bases);
        boolean whole = read.any() && DayNameReader.end(CLOSING, line, read.end()) == line.length();
        boolean behindOneWord = line.substring(storyFrom, from).strip().indexOf(' ') < 0;
        boolean meant = isMeant(line.substring(from), start.group(1), read);
        // "twenty 4x6" asks for too many, not for one
        if (whole && meant && !(behindOneWord && start.group(1).isEmpty())) {
          return Optional.of(new Found(read.words(), from));
        }
      }
    }
    return Optional.empty();
  }

  /** One word alone, or a day left out, is asked for only in brackets: "it rained. Nothing." */
  private static boolean isMeant(String said, String mark, PageSpecParser.Read read) {
    boolean bracket = mark.equals("(") || mark.equals("[");
    if (bracket) {
      return true;
    }
    if (read.words().kind() == DayPage.Kind.LEFT_OUT) {
      return false;
    }
    boolean several = said.strip().contains(" ") || said.matches(".*\\d.*");
    return several && (!mark.isEmpty() || PLAIN.matcher(said).matches());
  }
}
