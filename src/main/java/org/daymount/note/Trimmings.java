package org.daymount.note;

import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * What stands among a story's lines and is no story: the stamps of a chat, empty boxes to tick, and
 * at the note's end that it ends or who sent it.
 */
final class Trimmings {
  private static final Pattern EMPTY_BOX = Pattern.compile("[ *•-]*\\[[ x]?\\] *");

  /** A heading above the next day, or a line drawn. */
  private static final Pattern HEADING =
      Pattern.compile(
          "[ #*=_-]*(?:(?:week|wk|woche|kw|semaine|semana|settimana|tydzien|vecka)(?: (?:of"
              + "|vom|du|van|del))?[ .#]{0,3}(?:\\d|\\p{L}{3,9}\\.? \\d|one|two|three|four"
              + "|five).{0,24})|[ #*=_~.-]{3,}");

  private Trimmings() {}

  /**
   * @param next index behind the day's last line
   * @param last whether it is the note's last day
   */
  static DayEntry off(DayEntry day, List<NoteLine> lines, int next, boolean last) {
    DayEntry off = day;
    for (int i = day.headingEnds() + 1; i < next; i++) {
      NoteLine line = lines.get(i);
      int chat = DayLineReader.chatEnd(line.text());
      if (EMPTY_BOX.matcher(line.text()).matches()) {
        off = off.without(i, 0, line.raw().length());
      } else if (chat > 0) {
        off = off.without(i, 0, line.folded().rawIndex(chat));
      }
    }
    if (last) {
      DayEntry ended = withoutBelowEnd(off, lines, next);
      if (ended != off) {
        return ended;
      }
      off = withoutAtEnd(off, lines, next, NoteEnd::isNoStory);
    }
    return withoutAtEnd(off, lines, next, line -> HEADING.matcher(line.text()).matches());
  }

  /** {@code The end} or {@code to buy:}, and below it what the writer has yet to do. */
  private static DayEntry withoutBelowEnd(DayEntry day, List<NoteLine> lines, int next) {
    DayEntry off = day;
    boolean closed = false;
    for (int i = day.headingEnds() + 1; i < next; i++) {
      closed |= NoteEnd.closesAt(lines, i, next) || NoteEnd.startsList(lines, i, next);
      off = closed ? off.without(i, 0, lines.get(i).raw().length()) : off;
    }
    return off;
  }

  /** The last lines as far as all of them that are not blank are such. */
  private static DayEntry withoutAtEnd(
      DayEntry day, List<NoteLine> lines, int next, Predicate<NoteLine> isNoStory) {
    DayEntry off = day;
    for (int i = next - 1; i > day.headingEnds(); i--) {
      NoteLine line = lines.get(i);
      if (isNoStory.test(line)) {
        off = off.without(i, 0, line.raw().length());
      } else if (!line.text().isBlank()) {
        return off;
      }
    }
    return off;
  }
}
