package org.daymount.note;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.PageSpec;
import org.daymount.note.PageWordsInStory.Found;

/**
 * What of a line is taken off a story's card with the words for the page that stand in it.
 *
 * @param line folded
 * @param storyFrom where the story begins
 */
record PhraseCut(String line, int storyFrom) {
  /** {@code Page, two photos}, as it is dictated. */
  private static final Pattern LABEL =
      Pattern.compile(
          "(?<=[.!?;] |^)(?:and |for )?(?:the )?(?:page|pg|pge|seite|pagina|strona|sida) *[-,:=]* *$"
              + "|^(?:do|make|print) (?:that|this|it)(?: one)?(?: an?)? *$");

  /** What stands between the story and the words. */
  enum Joint {
    LINE,
    BRACKET,
    DASH,
    STOP,
    COMMA,
    NONE;

    static Joint at(char mark) {
      return switch (mark) {
        case '(', '[', '"' -> Joint.BRACKET;
        case ',' -> Joint.COMMA;
        case '.', '!', '?', ';', ':', ')', ']' -> Joint.STOP;
        default -> Joint.DASH; // or a bullet, an arrow, a little picture
      };
    }
  }

  /** Off goes the mark too, unless it ends the sentence before. */
  Found toTheEnd(int from, Joint joint, int markFrom) {
    boolean stays = joint == Joint.STOP && line.charAt(markFrom) != ':' || closesQuote(markFrom);
    int cutFrom = withoutBlanks(joint == Joint.LINE ? 0 : stays ? markFrom + 1 : markFrom);
    return new Found(PageSpec.NONE, from, cutFrom, line.length(), true);
  }

  private boolean closesQuote(int at) {
    return line.charAt(at) == '"'
        && line.substring(storyFrom, at).chars().filter(c -> c == '"').count() % 2 == 1;
  }

  /** A phrase in the middle goes with one of the marks around it. */
  Found within(int from, int end, Joint joint, int markFrom) {
    int to = end;
    while (to < line.length() && " *_".indexOf(line.charAt(to)) >= 0) {
      to++;
    }
    boolean closes = to < line.length() && ")]\"".indexOf(line.charAt(to)) >= 0;
    if (joint == Joint.BRACKET) {
      int cutFrom = closes ? withoutBlanks(markFrom) : to;
      return new Found(PageSpec.NONE, from, cutFrom, closes ? to + 1 : to, true);
    }
    if (joint == Joint.COMMA || joint == Joint.DASH) {
      return new Found(PageSpec.NONE, from, withoutBlanks(markFrom), end, true);
    }
    if (to >= line.length() || ".!?:;|)-".indexOf(line.charAt(to)) < 0) {
      return new Found(PageSpec.NONE, from, to, to, true); // the sentence goes on
    }
    int behind = Math.min(line.length(), to + 1);
    if (joint == Joint.LINE) {
      while (behind < line.length() && line.charAt(behind) == ' ') {
        behind++;
      }
      return new Found(PageSpec.NONE, from, from, behind, true);
    }
    return new Found(PageSpec.NONE, from, markFrom + 1, behind, true);
  }

  /** Where the blanks before a place begin. */
  int withoutBlanks(int at) {
    int from = at;
    while (from > storyFrom && line.charAt(from - 1) == ' ') {
      from--;
    }
    return from;
  }

  /** Off goes what announces the words, too. */
  Found withoutLabel(Found found) {
    Matcher label = LABEL.matcher(line);
    if (found.cutFrom() <= storyFrom || !label.region(storyFrom, found.cutFrom()).find()) {
      return found;
    }
    boolean stop = line.startsWith(".", found.cutTo());
    int cutTo = found.cutTo() + (stop ? 1 : 0);
    return found.isCut()
        ? new Found(found.words(), found.from(), withoutBlanks(label.start()), cutTo, true)
        : found;
  }
}
