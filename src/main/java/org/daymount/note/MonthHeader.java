package org.daymount.note;

import java.time.Month;
import java.time.YearMonth;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The month at a note's top.
 *
 * @param index of its line; -1 when there is none
 */
record MonthHeader(Optional<YearMonth> month, int index) {
  private static final Pattern HEADER_LEAD = Pattern.compile("[ #*]*");
  private static final Pattern NUMERIC_MONTH =
      Pattern.compile("(?:(\\d{4})-(\\d{1,2})|(\\d{1,2})/(\\d{4}))(?![\\d/-])");
  private static final Pattern YEAR =
      Pattern.compile("[ ,]*(?:of |de )?(?:(\\d{4})|'(\\d{2}))(?!\\d)[.:*]?");
  private static final Pattern TITLE = Pattern.compile(" *(?:$|[-:,(*][^\\d]*$)");
  private static final int CENTURY = 2000;

  private static final Pattern FIRST_DAY = Pattern.compile(".{0,16}?(?<!\\d)0?1(?!\\d)");

  /** The first line with anything on it that is a month and a year; lines with # may go before. */
  static MonthHeader of(List<NoteLine> lines, CalendarNames names, Optional<YearMonth> planned) {
    for (int i = 0; i < lines.size(); i++) {
      String text = lines.get(i).text();
      if (text.isBlank()) {
        continue;
      }
      int below = i + 1;
      Optional<YearMonth> month =
          monthOf(text, names)
              .or(
                  () ->
                      planned.filter(
                          known -> isShort(known, text, names) && daysBegin(lines, below)));
      if (month.isPresent()) {
        return new MonthHeader(month, i);
      }
      if (!text.strip().startsWith("#")) {
        break;
      }
    }
    return new MonthHeader(Optional.empty(), -1);
  }

  private static boolean daysBegin(List<NoteLine> lines, int from) {
    return lines.stream()
        .skip(from)
        .map(NoteLine::text)
        .filter(text -> !text.isBlank())
        .findFirst()
        .filter(text -> FIRST_DAY.matcher(text).lookingAt())
        .isPresent();
  }

  /** {@code Feb 26 - the flat and me}, above days that begin anew: the year in two digits. */
  private static boolean isShort(YearMonth month, String text, CalendarNames names) {
    Matcher lead = HEADER_LEAD.matcher(text);
    int at = lead.lookingAt() ? lead.end() : 0;
    return names
        .monthAt(text, at)
        .filter(found -> found.value() == month.getMonth())
        .map(found -> text.substring(found.end()))
        .filter(rest -> rest.matches(" '?" + month.getYear() % 100 + "(?: *[-:,(].*|)"))
        .isPresent();
  }

  /** The month and year that the text begins with. */
  static Optional<YearMonth> monthOf(String text, CalendarNames names) {
    Matcher lead = HEADER_LEAD.matcher(text);
    int at = lead.lookingAt() ? lead.end() : 0;
    Matcher numeric = NUMERIC_MONTH.matcher(text).region(at, text.length());
    if (numeric.lookingAt()) {
      boolean yearFirst = numeric.group(1) != null;
      int year = Integer.parseInt(numeric.group(yearFirst ? 1 : 4));
      int month = Integer.parseInt(numeric.group(yearFirst ? 2 : 3));
      return month >= 1 && month <= 12 ? Optional.of(YearMonth.of(year, month)) : Optional.empty();
    }
    return names
        .monthAt(text, at)
        .flatMap(
            found -> {
              Matcher year = YEAR.matcher(text).region(found.end(), text.length());
              OptionalInt said =
                  year.lookingAt()
                      ? OptionalInt.of(year(year))
                      : SpelledNumbers.yearAt(text, Math.min(found.end() + 1, text.length()));
              return said.isPresent()
                  ? Optional.of(YearMonth.of(said.getAsInt(), found.value()))
                  : Optional.empty();
            });
  }

  /** {@code 2027} or {@code '27}. */
  private static int year(Matcher said) {
    return said.group(1) != null
        ? Integer.parseInt(said.group(1))
        : CENTURY + Integer.parseInt(said.group(2));
  }

  /** A line that is a month without a year, with a title behind it or none. */
  static Optional<Month> alone(String text, CalendarNames names) {
    return names
        .monthAt(text, 0)
        .filter(found -> TITLE.matcher(text).region(found.end(), text.length()).lookingAt())
        .map(CalendarNames.Found::value);
  }

  /**
   * The month named alone on the first line, or the one most lines name as their day's.
   *
   * @param planned is taken if any line names it
   */
  static Optional<Month> assumed(
      List<NoteLine> lines, CalendarNames names, Optional<YearMonth> planned) {
    DayLineReader reader = new DayLineReader(names, Optional.empty(), Optional.empty(), Set.of());
    Map<Month, Integer> said = new EnumMap<>(Month.class);
    Map<Month, Integer> stamped = new EnumMap<>(Month.class);
    for (NoteLine line : lines) {
      List<DayCandidate> days = reader.read(line.text());
      boolean stamp = !days.isEmpty() && days.get(0).isStamp();
      days.stream()
          .flatMap(day -> day.names().get(0).month().stream())
          .distinct()
          .forEach(month -> (stamp ? stamped : said).merge(month, 1, Integer::sum));
    }
    Map<Month, Integer> seen = said.isEmpty() ? stamped : said;
    Optional<Month> alone =
        lines.stream()
            .map(line -> line.text().strip())
            .filter(text -> !text.isEmpty())
            .findFirst()
            .flatMap(text -> alone(text, names));
    Optional<Month> wanted =
        planned
            .map(YearMonth::getMonth)
            .filter(month -> seen.containsKey(month) || isNamed(month, lines, names));
    return alone
        .or(() -> wanted)
        .or(
            () ->
                seen.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey));
  }

  /** In short too, {@code 3 apr}, which could be a word of another month's story. */
  private static boolean isNamed(Month month, List<NoteLine> lines, CalendarNames names) {
    DayNameReader reader = new DayNameReader(names, Optional.empty(), Optional.of(month));
    return lines.stream()
        .map(NoteLine::text)
        .flatMap(text -> reader.at(text, DayLineReader.chatEnd(text)).stream())
        .anyMatch(day -> day.style().contains("month-after"));
  }
}
