package org.daymount.note;

import java.time.DayOfWeek;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Days that a line names without a number: weekdays, a weekend, the next day. Each is every such
 * day of the month; the order of the days says which.
 */
record UnnumberedDays(DayNameReader names, DayRangeReader ranges, DayWeigher weigher) {
  private static final Pattern TO =
      Pattern.compile(
          " *(?:-|/|&|\\+|,|(?:to|thru|through|until|till?|bis|au|jusqu'au|al|hasta(?: el)?"
              + "|fino a|a|ate|tot(?: en met)?|t/m|do|and|und|et|y|e|en|i"
              + "|och)(?!\\p{L})) *(?:(?:the|el|il|le|o) )?");
  private static final Pattern BEFORE_DATES = Pattern.compile("[ ,.:(]*");
  private static final Pattern WEEKEND =
      Pattern.compile(
          "(?:(?:the|this|am|le|el|il|het|o|all) )?(?:week-?end|wochenende|fin de semana"
              + "|finde|fine settimana|fim de semana|helg(?:en)?|cale weekend)(?![\\p{L}\\d])");

  /** {@code next day}, {@code the day after that}. */
  private static final Pattern NEXT_DAY =
      Pattern.compile(
          "(?:(?:and |und |et |y )?(?:the )?(?:next day|following day|day after(?: that)?)|(?:am )?nachste[rn]? tag"
              + "|tags darauf|(?:le )?lendemain|(?:al|el) dia siguiente|(?:il )?giorno dopo"
              + "|(?:de )?volgende dag|(?:no )?dia seguinte|nastepnego dnia|(?:nasta dag|dagen efter))"
              + "(?![\\p{L}\\d])");

  /**
   * @param lead behind what stands before the line's words
   * @param at behind the article, too
   */
  List<DayCandidate> read(String line, int lead, int at, String chat) {
    List<DayCandidate> candidates = new ArrayList<>(weekdayAlone(line, at, chat));
    candidates.addAll(weekend(line, lead, chat));
    candidates.addAll(nextDay(line, lead, chat));
    return candidates;
  }

  /** {@code Monday - we arrived}: any Monday of the month. */
  private List<DayCandidate> weekdayAlone(String line, int from, String chat) {
    Optional<CalendarNames.Found<DayOfWeek>> weekday = names.weekdayAt(line, from);
    List<DayCandidate> candidates = new ArrayList<>();
    if (weekday.isEmpty() || names.month().isEmpty()) {
      return candidates;
    }
    CalendarNames.Found<DayOfWeek> first = weekday.get();
    Optional<CalendarNames.Found<DayOfWeek>> last =
        names.weekdayAt(line, DayNameReader.end(TO, line, first.end()));
    last.filter(to -> to.value() != first.value() && to.end() - first.end() > 3)
        .ifPresent(
            to -> {
              candidates.addAll(datesBehind(line, to.end(), first.value(), chat));
              candidates.addAll(eachWeek(line, first.value(), to.value(), from, to.end(), chat));
            });
    candidates.addAll(eachWeek(line, first.value(), first.value(), from, first.end(), chat));
    return candidates;
  }

  /** {@code Sat - Mon 5/23-5/25}: the dates of the weekdays before them. */
  private List<DayCandidate> datesBehind(String line, int from, DayOfWeek weekday, String chat) {
    return names.possibleAt(line, DayNameReader.end(BEFORE_DATES, line, from)).stream()
        .flatMap(name -> ranges.from(line, name).stream())
        .map(
            days -> {
              List<DayName> named = new ArrayList<>(days);
              named.set(0, days.get(0).on(weekday));
              return named;
            })
        .flatMap(days -> weigher.weigh(line, days, DayWeigher.Lead.PLAIN, chat, -1).stream())
        .toList();
  }

  /** Any day but the first; the order of the days says which. */
  private List<DayCandidate> nextDay(String line, int from, String chat) {
    int end = DayNameReader.end(NEXT_DAY, line, from);
    if (end == from) {
      return List.of();
    }
    DayName any =
        new DayName(
            2,
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            end,
            DayName.NEXT_DAY,
            false);
    return weigher.weigh(line, List.of(any), DayWeigher.Lead.PLAIN, chat, -1).stream()
        .flatMap(day -> IntStream.rangeClosed(2, 31).mapToObj(day::on))
        .toList();
  }

  /** {@code weekend: camping}. */
  private List<DayCandidate> weekend(String line, int from, String chat) {
    int end = DayNameReader.end(WEEKEND, line, from);
    return end == from || names.month().isEmpty()
        ? List.of()
        : eachWeek(line, DayOfWeek.SATURDAY, DayOfWeek.SUNDAY, from, end, chat);
  }

  /** From a weekday to another, in all weeks of the month. */
  private List<DayCandidate> eachWeek(
      String line, DayOfWeek from, DayOfWeek to, int start, int end, String chat) {
    List<DayCandidate> candidates = new ArrayList<>();
    YearMonth month = names.month().get();
    int more = Math.floorMod(to.getValue() - from.getValue(), 7);
    for (int day = 1; day + more <= month.lengthOfMonth(); day++) {
      if (month.atDay(day).getDayOfWeek() == from) {
        List<DayName> days = new ArrayList<>();
        for (int each = day; each <= day + more; each++) {
          days.add(
              new DayName(
                  each,
                  Optional.empty(),
                  OptionalInt.empty(),
                  Optional.of(month.atDay(each).getDayOfWeek()),
                  end,
                  end - start < 3 ? DayName.SHORT_WEEKDAY_ALONE : DayName.WEEKDAY_ALONE,
                  false));
        }
        weigher.weigh(line, days, DayWeigher.Lead.PLAIN, chat, -1).ifPresent(candidates::add);
      }
    }
    return candidates;
  }
}
