package org.daymount.note;

import java.time.DayOfWeek;
import java.time.YearMonth;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The weekday that may stand behind a date: {@code 4 (Thu)}.
 *
 * @param month of the note
 */
record WeekdayBehind(CalendarNames names, Optional<YearMonth> month) {

  /** With the weekday behind it, and without, where that may begin the story. */
  Stream<DayName> of(String line, DayName name) {
    int next = DayNameReader.end(DayNameReader.BEFORE_WEEKDAY, line, name.end());
    Optional<CalendarNames.Found<DayOfWeek>> behind = names.weekdayAt(line, next);
    if (behind.isEmpty() || next == name.end() || behind.get().end() - next < 2) {
      return Stream.of(name);
    }
    int end = behind.get().end();
    int closed = end < line.length() && line.charAt(end) == ')' ? end + 1 : end;
    DayName with =
        new DayName(
            name.day(),
            name.month(),
            name.year(),
            Optional.of(behind.get().value()),
            closed,
            name.style()
                + (line.charAt(name.end()) == '.' ? DayName.BEHIND_DOT : DayName.WEEKDAY_BEHIND),
            name.slip());
    if (!with.isPossible() || with.weekdayIsWrong(month)) {
      return Stream.of(name);
    }
    boolean sentence =
        closed == end
            && " .".indexOf(line.charAt(name.end())) >= 0
            && end + 1 < line.length()
            && line.charAt(end) == ' '
            && Character.isLetter(line.charAt(end + 1));
    return sentence ? Stream.of(with, name) : Stream.of(with);
  }
}
