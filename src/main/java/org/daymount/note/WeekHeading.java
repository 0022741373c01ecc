package org.daymount.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** {@code Week of Oct 5} on a line of its own: the weekdays below it are that week's. */
final class WeekHeading {
  private static final Pattern START =
      Pattern.compile(
          "[ #*=_-]*(?:(?:the )?(?:week|wk)[ ,]*(?:of|from|starting|beginning|commencing)?|w/?c"
              + "|woche[ ,]*(?:vom|ab)|semaine[ ,]*du|semana[ ,]*del?|settimana[ ,]*del"
              + "|week[ ,]*van(?:af)?|tydzien[ ,]*od|vecka[ ,]*fran) +(?:the )?");
  private static final Pattern BEHIND = Pattern.compile("[ :.*=_#-]*(?:\\([^)]*\\)?|to .*|-.*)?$");
  private static final int DAYS = 7;

  private WeekHeading() {}

  /** The candidates without weekdays of other weeks than the heading above them says. */
  static List<List<DayCandidate>> within(
      List<NoteLine> lines, List<List<DayCandidate>> candidates, DayLineReader reader) {
    List<List<DayCandidate>> within = new ArrayList<>();
    int monday = 0;
    for (int i = 0; i < lines.size(); i++) {
      Optional<Integer> first = firstDay(lines.get(i).text(), reader);
      monday = first.orElse(monday);
      int from = monday;
      within.add(
          first.isPresent()
              ? List.of()
              : from == 0
                  ? candidates.get(i)
                  : candidates.get(i).stream().filter(day -> isOf(day, from)).toList());
    }
    return within;
  }

  private static boolean isOf(DayCandidate day, int from) {
    return !day.style().startsWith(DayName.WEEKDAY_ALONE)
        || day.first() >= from && day.first() < from + DAYS;
  }

  /** Whether the line is such a heading. */
  static Optional<Integer> firstDay(String line, DayLineReader reader) {
    int from = DayNameReader.end(START, line, 0);
    if (from == 0) {
      return Optional.empty();
    }
    return reader.read(line.substring(from)).stream()
        .filter(day -> day.inMonth() && day.isExplicit() && day.names().size() == 1)
        .filter(day -> BEHIND.matcher(line).region(from + day.nameEnd(), line.length()).lookingAt())
        .findFirst()
        .map(DayCandidate::first);
  }
}
