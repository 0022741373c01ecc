package org.daymount.note;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.daymount.album.PageSpecParser;

/** Words for a day's page on the lines below it, before its story. */
record WordsBelow(List<NoteLine> lines, Set<String> bases, NoteRemarks remarks) {
  private static final Pattern BULLETS = Pattern.compile("[ (*•·>-]*(?:\\[[ x]?\\] *)?");
  private static final Pattern MARKS = Pattern.compile("[ .:)=→/|>,*_-]*");

  /** Words for the page on the lines below a day with nothing else, or only such, on its own. */
  DayEntry with(DayEntry day, int next) {
    NoteLine own = lines.get(day.index());
    String said = own.text().substring(day.day().nameEnd());
    boolean bare = day.words().saysNothing();
    if (!own.text().substring(day.storyFrom()).isBlank()) {
      return day;
    }
    DayEntry with = day;
    StringBuilder text = new StringBuilder(bare ? "" : withoutMarks(said));
    int below = notBlank(day.index() + 1, next);
    while (below < next) {
      NoteLine line = lines.get(below);
      int from = DayNameReader.end(BULLETS, line.text(), DayLineReader.chatEnd(line.text()));
      Optional<DayEntry> more = withLine(with, text.toString(), below, from, bare);
      if (more.isEmpty()) {
        return with;
      }
      if (bare) {
        remarks.onWordsBelow(line, day.day());
      }
      if (PageSpecParser.read(line.text(), from, bases).sizeGuessed()) {
        remarks.onNamedSizes(line);
      }
      with = more.get();
      if (with.storyFrom() < line.text().length()) {
        return with;
      }
      text.append(text.length() == 0 ? "" : ", ").append(line.text().substring(from));
      bare = false;
      below = notBlank(below + 1, next);
    }
    return with;
  }

  private int notBlank(int from, int next) {
    int at = from;
    while (at < next && lines.get(at).text().isBlank()) {
      at++;
    }
    return at;
  }

  private static String withoutMarks(String text) {
    return text.substring(DayNameReader.end(MARKS, text, 0));
  }

  /**
   * @param said words for the page so far; all of the line must go with them
   * @param first whether there are none, so that a story may begin behind them
   */
  private Optional<DayEntry> withLine(
      DayEntry day, String said, int line, int from, boolean first) {
    String text = lines.get(line).text();
    if (first) {
      PageSpecParser.Read words = PageSpecParser.read(text, from, bases);
      int storyFrom = DayNameReader.end(DayPages.AFTER_WORDS, text, words.end());
      boolean whole = words.any() && storyFrom == text.length();
      boolean begins =
          words.definite() && storyFrom > words.end() && !text.startsWith(" ", words.end());
      return whole || begins
          ? Optional.of(day.with(words.words(), line, storyFrom))
          : Optional.empty();
    }
    String joined = said + ", " + text.substring(from);
    PageSpecParser.Read own = PageSpecParser.read(text, from, bases);
    PageSpecParser.Read all = PageSpecParser.read(joined, 0, bases);
    boolean goesOn =
        own.any()
            && own.definite()
            && DayNameReader.end(DayPages.AFTER_WORDS, text, own.end()) == text.length()
            && DayNameReader.end(DayPages.AFTER_WORDS, joined, all.end()) == joined.length();
    return goesOn ? Optional.of(day.with(all.words(), line, text.length())) : Optional.empty();
  }
}
