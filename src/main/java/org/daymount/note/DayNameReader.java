package org.daymount.note;

import java.time.DayOfWeek;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads a day where one may stand in a line: all the readings there are. */
final class DayNameReader {
  private static final Pattern GAP =
      Pattern.compile("[ ,.:*_]*(?:on )?(?:(?:the|den|der|le|el|il|de|-) +)?");
  private static final Pattern DAY_WORD =
      Pattern.compile("(?:day|tag|jour|dia|giorno|dag|dzien)[ .#]*(?=\\d|\\p{L})");
  private static final Pattern NUMBER =
      Pattern.compile(
          "(\\d[ol\\d]?|[lio]\\d|[li][lio])(st|nd|rd|th|:?er|:?e|:a|de|º|ª|°|日|号|일)?(?![\\d\\p{L}])");
  private static final Pattern MONTH_GAP = Pattern.compile("\\.? *(?:of |de |di |d'|-)?");
  private static final Pattern YEAR = Pattern.compile("[ ,]*(?:de )?(20\\d\\d|19\\d\\d)(?!\\d)");
  private static final Pattern CLOCK =
      Pattern.compile(
          "\\d{1,2}(?:[:.h]\\d{2}(?!\\d| *[x*])| *(?:am|pm|a\\.m|p\\.m|uhr|h"
              + "|o'clock)(?![\\p{L}]))");
  private static final Pattern LETTERS =
      Pattern.compile("(?!we )(\\p{L}{1,5})\\.? ?(?=\\d{1,2}(?!\\d))");
  static final Pattern BEFORE_WEEKDAY = Pattern.compile("\\.?[ ,(-]*");
  private static final Pattern BRACKET = Pattern.compile(" *[(\\[] *");
  private static final Pattern CLOSED = Pattern.compile(" *[)\\]]");

  /** From here on an ordinal alone is hardly anything but a day. */
  private static final int FIRST_SPELLED = 4;

  private final CalendarNames names;
  private final Optional<YearMonth> month;
  private final Optional<Month> own;
  private final WeekdayBehind behind;

  /**
   * @param month of the note
   * @param own the month that most of the note's dates lie in, when the note does not say
   */
  DayNameReader(CalendarNames names, Optional<YearMonth> month, Optional<Month> own) {
    this.names = names;
    this.month = month;
    this.own = month.map(YearMonth::getMonth).or(() -> own);
    this.behind = new WeekdayBehind(names, month);
  }

  Optional<Month> own() {
    return own;
  }

  Optional<YearMonth> month() {
    return month;
  }

  Optional<CalendarNames.Found<DayOfWeek>> weekdayAt(String line, int from) {
    return names.weekdayAt(line, from);
  }

  /** Whether a month, a weekday or a number in words stands there. */
  boolean isNamedAt(String line, int at) {
    return names.monthAt(line, at).isPresent()
        || names.weekdayAt(line, at).isPresent()
        || SpelledNumbers.ordinalAt(line, at).isPresent();
  }

  /** Behind the weekdays of several days that stand behind their dates. */
  int weekdaysEnd(String line, int from) {
    return names
        .weekdayAt(line, end(BEFORE_WEEKDAY, line, from))
        .filter(first -> first.end() - from > 2)
        .flatMap(first -> names.weekdayAt(line, end(BEFORE_WEEKDAY, line, first.end())))
        .map(CalendarNames.Found::end)
        .map(behind -> end(CLOSED, line, behind))
        .orElse(from);
  }

  static int end(Pattern pattern, String line, int at) {
    Matcher matcher = pattern.matcher(line).region(Math.min(at, line.length()), line.length());
    return matcher.lookingAt() ? matcher.end() : at;
  }

  /** All the days that the line may name there, the likeliest first. */
  List<DayName> at(String line, int from) {
    return new Reading(line).names(from);
  }

  /** Of those the ones that some month has. */
  List<DayName> possibleAt(String line, int from) {
    return at(line, from).stream().filter(DayName::isPossible).toList();
  }

  /** One line. */
  private final class Reading {
    private final String line;
    private final List<DayName> found = new ArrayList<>();

    private Reading(String line) {
      this.line = line;
    }

    private List<DayName> names(int from) {
      read(from);
      return found.stream()
          .map(this::withDateBehind)
          .flatMap(name -> name.weekday().isPresent() ? Stream.of(name) : behind.of(line, name))
          .toList();
    }

    /** {@code Day 1 (Sat 11 July)}: the first day of something else, and the date. */
    private DayName withDateBehind(DayName name) {
      int open = end(BRACKET, line, name.end());
      boolean counted = name.style().equals("day") || name.style().isEmpty();
      if (!counted || open == name.end()) {
        return name;
      }
      return new Reading(line)
          .names(open).stream()
              .filter(
                  date -> date.month().isPresent() && date.isPossible() && date.day() != name.day())
              .findFirst()
              .map(date -> date.reaching(end(CLOSED, line, date.end())))
              .orElse(name);
    }

    private void read(int from) {
      Optional<CalendarNames.Found<DayOfWeek>> weekday = names.weekdayAt(line, from);
      if (weekday.isPresent()) {
        dates(end(GAP, line, weekday.get().end()), Optional.of(weekday.get().value()));
        boolean isShort = weekday.get().end() - from < 3;
        found.removeIf(name -> isShort && month.isPresent() && name.weekdayIsWrong(month));
      }
      if (found.isEmpty()) {
        letters(from);
      }
      if (found.isEmpty()) {
        dates(from, Optional.empty());
      }
    }

    /** {@code M1}, {@code Th 4/1}: letters that begin the name of that very weekday. */
    private void letters(int from) {
      Matcher letters = LETTERS.matcher(line).region(from, line.length());
      if (month.isEmpty() || !letters.lookingAt()) {
        return;
      }
      found.addAll(NumericDates.at(line, letters.end(), Optional.empty(), own).days());
      if (found.isEmpty()) {
        numbers(letters.end(), Optional.empty(), Optional.empty(), "letter ");
      }
      found.removeIf(
          name ->
              !name.isPossible()
                  || name.slip()
                  || name.date()
                      .date(month.get())
                      .filter(date -> names.begins(letters.group(1), date.getDayOfWeek()))
                      .isEmpty());
    }

    private void dates(int from, Optional<DayOfWeek> weekday) {
      String style = weekday.isPresent() ? "weekday " : "";
      NumericDates.Read numeric = NumericDates.at(line, from, weekday, own);
      found.addAll(numeric.days());
      if (numeric.isAll()) {
        return;
      }
      Optional<CalendarNames.Found<Month>> before = names.monthAt(line, from);
      if (before.isPresent()) {
        int at = end(GAP, line, before.get().end());
        numbers(at, weekday, Optional.of(before.get().value()), style + "month-first");
      } else {
        int dayWord = end(DAY_WORD, line, from);
        numbers(dayWord, weekday, Optional.empty(), style + (dayWord > from ? "day" : ""));
      }
    }

    private void numbers(
        int from, Optional<DayOfWeek> weekday, Optional<Month> named, String style) {
      boolean bare = weekday.isEmpty() && named.isEmpty();
      Matcher number = NUMBER.matcher(line).region(from, line.length());
      if (number.lookingAt()
          && !(bare && CLOCK.matcher(line).region(from, line.length()).lookingAt())) {
        String typed = number.group(1);
        boolean slip = !typed.matches("\\d+");
        int day = number(typed.replace('o', '0').replace('l', '1').replace('i', '1'));
        found.add(completed(day, weekday, named, number.end(), style, slip));
        return;
      }
      boolean announced = !bare || line.startsWith("the ", Math.max(0, from - 4));
      boolean counted = style.endsWith("day") && !style.endsWith("weekday") || named.isPresent();
      Optional<SpelledNumbers.Found> spelled = SpelledNumbers.ordinalAt(line, from);
      if (spelled.isEmpty() && counted) {
        spelled = SpelledNumbers.cardinalAt(line, from);
      }
      spelled
          .map(word -> completed(word.value(), weekday, named, word.end(), style, false))
          .filter( // "first of July"; "first we went" is no day
              name ->
                  announced || counted || name.month().isPresent() || name.day() >= FIRST_SPELLED)
          .ifPresent(found::add);
    }

    /** With the month, the year and the weekday that may stand behind the number. */
    private DayName completed(
        int day,
        Optional<DayOfWeek> weekday,
        Optional<Month> named,
        int numberEnd,
        String numberStyle,
        boolean slip) {
      int end = numberEnd;
      String style = numberStyle;
      Optional<Month> said = named;
      if (said.isEmpty()) {
        Optional<CalendarNames.Found<Month>> after = names.monthAt(line, end(MONTH_GAP, line, end));
        if (after.isPresent()
            && (weekday.isPresent()
                || after.get().value().equals(own.orElse(null))
                || after.get().end() - end > 4)) {
          said = Optional.of(after.get().value());
          end = after.get().end();
          style = style + "month-after";
        }
      }
      int roman = said.isEmpty() ? RomanMonths.end(line, end, own, names) : end;
      if (roman > end) {
        said = own;
        end = roman;
        style = style + "month-after";
      }
      OptionalInt year = OptionalInt.empty();
      Matcher yearly = YEAR.matcher(line).region(end, line.length());
      if (said.isPresent() && yearly.lookingAt()) {
        year = OptionalInt.of(number(yearly.group(1)));
        end = yearly.end();
      }
      return new DayName(day, said, year, weekday, end, style, slip);
    }
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }
}
