package org.daymount.note;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;
import org.daymount.unit.SizeText;

/**
 * Tells day lines from lines of story. A line is a day line only if, after the day, there is
 * nothing, a colon, or words for the page; "3 eggs for breakfast" is story.
 */
final class DayLineReader {
  private static final Pattern BULLET =
      Pattern.compile(" *(?:[-#*>•·]{1,3} +)?(?:the +(?=\\d{1,2}(?:st|nd|rd|th)))?");
  private static final Pattern GAP = Pattern.compile("[ ,]*");
  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})(?![\\d-])");
  private static final Pattern NUMERIC =
      Pattern.compile("(\\d{1,2})([/.])(\\d{1,2})(?:\\2(\\d{4})|\\2(?!\\d))?(?![\\d/])(?!\\.\\d)");
  private static final Pattern DAY_WORD = Pattern.compile("day +(?=\\d)");
  private static final Pattern NUMBER =
      Pattern.compile("(\\d{1,2})(?:st|nd|rd|th|日|号|일)?(?![\\d\\p{L}])");
  private static final Pattern OF = Pattern.compile(" *(?:of )? *");
  private static final Pattern YEAR = Pattern.compile("[ ,]*(20\\d\\d|19\\d\\d)(?!\\d)");
  private static final Pattern AFTER_NUMBER = Pattern.compile("[.)](?!\\d)");
  private static final Pattern SEVERAL =
      Pattern.compile(" *(\\d{1,2})[.]? *(?:-|to|until|and|&) *(\\d{1,2})[.]?(?=[ :]|$)(?! *[x*])");
  private static final Pattern STARTS_WITH_NUMBER = Pattern.compile(" *(\\d{1,2})(?![\\d:/])");

  private final CalendarNames names;
  private final Optional<YearMonth> noteMonth;

  DayLineReader(CalendarNames names, Optional<YearMonth> noteMonth) {
    this.names = names;
    this.noteMonth = noteMonth;
  }

  /**
   * @param previous number of the day line above; 0 at the start
   */
  DayLine read(String line, int previous) {
    Optional<DayLine> several = severalDays(line);
    if (several.isPresent()) {
      return several.get();
    }
    Reading reading = new Reading(line);
    if (!reading.readDay()) {
      return reading.spots.isEmpty() ? undated(line) : DayLine.story(reading.spots);
    }
    return reading.readRest(previous);
  }

  private static Optional<DayLine> severalDays(String line) {
    Matcher several = SEVERAL.matcher(line);
    if (!several.lookingAt()
        || Integer.parseInt(several.group(1)) >= Integer.parseInt(several.group(2))) {
      return Optional.empty();
    }
    PageSpecParser.Read read = PageSpecParser.read(line, afterColon(line, several.end()));
    if (!read.any() || read.end() < line.length()) {
      return Optional.empty();
    }
    String text =
        "'" + line.strip() + "' is meant for several days; give each its own line. Kept as story";
    return Optional.of(DayLine.story(List.of(new DayLine.Spot(0, text))));
  }

  private static DayLine undated(String line) {
    Matcher number = STARTS_WITH_NUMBER.matcher(line);
    return number.lookingAt()
        ? DayLine.perhaps(Integer.parseInt(number.group(1)))
        : DayLine.story(List.of());
  }

  private static int afterColon(String line, int at) {
    return at < line.length() && line.charAt(at) == ':' ? at + 1 : at;
  }

  /** One line while it is being read. */
  private final class Reading {
    private final String line;
    private final List<DayLine.Spot> spots = new ArrayList<>();
    private int at;
    private boolean explicit; // more than a bare number names the day
    private OptionalInt day = OptionalInt.empty();
    private Optional<Month> month = Optional.empty();
    private OptionalInt year = OptionalInt.empty();
    private Optional<DayOfWeek> weekday = Optional.empty();
    private Optional<Month> perhapsMonth = Optional.empty(); // what else the weekday might mean

    private Reading(String line) {
      this.line = line;
    }

    private boolean readDay() {
      skip(BULLET);
      int start = at;
      readWeekday();
      if (!readDate()) {
        return false;
      }
      skip(AFTER_NUMBER);
      if (month.isPresent() && year.isEmpty()) {
        take(YEAR).ifPresent(found -> year = OptionalInt.of(Integer.parseInt(found.group(1))));
      }
      if (weekday.isEmpty()) {
        readTrailingWeekday();
      }
      if (day.getAsInt() >= 1 && day.getAsInt() <= 31) {
        return true;
      }
      int next = skipped(GAP, at);
      boolean ends = next == line.length();
      boolean colon = !ends && line.charAt(next) == ':' && !isClockTime(next);
      if (colon || (ends && explicit)) {
        spots.add(
            new DayLine.Spot(
                start, "there is no day " + day.getAsInt() + " in a month; kept as story"));
      }
      return false;
    }

    private void readWeekday() {
      Optional<CalendarNames.Found<DayOfWeek>> found = names.weekdayAt(line, at);
      if (found.isPresent()) {
        perhapsMonth = names.monthAt(line, at).map(CalendarNames.Found::value);
        weekday = Optional.of(found.get().value());
        explicit = true;
        at = skipped(GAP, found.get().end());
      }
    }

    /** A short name may stand for a weekday and a month: "mar" for mardi and marzo. */
    private void settleWeekday() {
      Optional<YearMonth> meant =
          noteMonth.filter(known -> perhapsMonth.filter(known.getMonth()::equals).isPresent());
      if (meant.isPresent() && month.isEmpty()) {
        Optional<DayOfWeek> actual =
            PartialDate.of(day.getAsInt()).date(meant.get()).map(LocalDate::getDayOfWeek);
        if (!weekday.equals(actual)) {
          month = perhapsMonth;
          weekday = Optional.empty();
        }
      }
    }

    private void readTrailingWeekday() {
      int next = skipped(GAP, at);
      boolean bracket = next < line.length() && line.charAt(next) == '(';
      Optional<CalendarNames.Found<DayOfWeek>> found =
          names.weekdayAt(line, bracket ? next + 1 : next);
      if (found.isEmpty()) {
        return;
      }
      int end = found.get().end();
      if (bracket && (end >= line.length() || line.charAt(end) != ')')) {
        return;
      }
      weekday = Optional.of(found.get().value());
      explicit = true;
      at = bracket ? end + 1 : end;
    }

    private boolean readDate() {
      if (readIso() || readNumeric()) {
        return true;
      }
      if (!spots.isEmpty()) {
        return false;
      }
      if (skip(DAY_WORD)) {
        explicit = true;
        return readNumber();
      }
      Optional<CalendarNames.Found<Month>> first = names.monthAt(line, at);
      if (first.isPresent()) {
        int back = at;
        at = skipped(GAP, first.get().end());
        month = Optional.of(first.get().value());
        explicit = true;
        if (readNumber()) {
          return true;
        }
        at = back;
        month = Optional.empty();
        return false;
      }
      if (!readNumber()) {
        return false;
      }
      int dot = at < line.length() && line.charAt(at) == '.' ? at + 1 : at;
      names
          .monthAt(line, skipped(OF, dot))
          .ifPresent(
              found -> {
                month = Optional.of(found.value());
                explicit = true;
                at = found.end();
              });
      return true;
    }

    private boolean readNumber() {
      Optional<Matcher> number = take(NUMBER);
      number.ifPresent(found -> day = OptionalInt.of(Integer.parseInt(found.group(1))));
      return number.isPresent();
    }

    private boolean readIso() {
      Optional<Matcher> iso = take(ISO);
      if (iso.isEmpty()) {
        return false;
      }
      int number = Integer.parseInt(iso.get().group(2));
      if (number < 1 || number > 12) {
        at = iso.get().start();
        return false;
      }
      year = OptionalInt.of(Integer.parseInt(iso.get().group(1)));
      month = Optional.of(Month.of(number));
      day = OptionalInt.of(Integer.parseInt(iso.get().group(3)));
      explicit = true;
      return true;
    }

    /** {@code 3/6}: day and month, or month and day; the reading in the note's month is taken. */
    private boolean readNumeric() {
      int start = at;
      Optional<Matcher> found = take(NUMERIC);
      if (found.isEmpty()) {
        return false;
      }
      int first = Integer.parseInt(found.get().group(1));
      int second = Integer.parseInt(found.get().group(3));
      boolean dotted = found.get().group(2).equals("."); // written so where the day comes first
      boolean dayFirst = isDate(first, second);
      boolean monthFirst = !dotted && isDate(second, first);
      int own = noteMonth.map(YearMonth::getMonthValue).orElse(0);
      boolean both = dayFirst && monthFirst && first != second;
      boolean takeDayFirst = dayFirst && (!both || second == own);
      if ((!dayFirst && !monthFirst) || (both && second != own && first != own)) {
        at = start;
        if (both && (endsOrColonAt(found.get().end()))) {
          spots.add(
              new DayLine.Spot(
                  start,
                  "'"
                      + found.get().group().strip()
                      + "' may be read two ways; write the month's name. Kept as story"));
        }
        return false;
      }
      if (dotted && second != own) {
        at = start; // far more often a number with a fraction than another month's day
        return false;
      }
      day = OptionalInt.of(takeDayFirst ? first : second);
      month = Optional.of(Month.of(takeDayFirst ? second : first));
      if (found.get().group(4) != null) {
        year = OptionalInt.of(Integer.parseInt(found.get().group(4)));
      }
      if (both) {
        spots.add(
            new DayLine.Spot(
                start,
                "'"
                    + found.get().group().strip()
                    + "' may be read two ways; taken as day "
                    + day.getAsInt()
                    + " because that lies in the note's month"));
      }
      return true;
    }

    private boolean endsOrColonAt(int position) {
      int next = skipped(GAP, position);
      return next == line.length() || line.charAt(next) == ':';
    }

    private static boolean isDate(int day, int month) {
      return day >= 1 && day <= 31 && month >= 1 && month <= 12;
    }

    private DayLine readRest(int previous) {
      int next = skipped(Pattern.compile(" *"), at);
      if (next == line.length()) {
        return day(PageSpec.NONE, next);
      }
      char mark = line.charAt(next);
      boolean dash = mark == '-' && gapBefore(next) && (explicit || isPageWords(next + 1));
      if (mark == ':' || dash) {
        return isClockTime(next) ? DayLine.story(List.of()) : afterMark(next + 1);
      }
      PageSpecParser.Read read = PageSpecParser.read(line, next);
      if (read.any() && (read.end() == line.length() || storyMark(read))) {
        return day(read.words(), storyStart(read.end()));
      }
      if (!read.any() || !read.definite()) {
        return explicit ? DayLine.story(List.of()) : undated(line);
      }
      String unknown = line.substring(read.end()).strip();
      if (explicit || day.getAsInt() > previous) {
        spots.add(
            new DayLine.Spot(
                read.end(),
                "'" + unknown + "' is not understood as words for the page; kept as story"));
        return day(read.words(), read.end());
      }
      return DayLine.story(
          List.of(
              new DayLine.Spot(
                  read.end(),
                  "'"
                      + unknown
                      + "' is not understood as words for the page, so the line is kept as story;"
                      + " if it starts a day, put a colon after the day")));
    }

    private boolean isPageWords(int from) {
      PageSpecParser.Read read = PageSpecParser.read(line, from);
      return read.any() && read.definite() && read.end() == line.length();
    }

    private boolean gapBefore(int position) {
      return line.charAt(position - 1) == ' ' && spaceOrEnd(position + 1);
    }

    private boolean spaceOrEnd(int position) {
      return position >= line.length() || line.charAt(position) == ' ';
    }

    /** {@code 12:30 ferry} is a time of day. */
    private boolean isClockTime(int colon) {
      return !explicit
          && colon + 1 < line.length()
          && Character.isDigit(line.charAt(colon + 1))
          && SizeText.sizeAt(line, colon + 1).isEmpty();
    }

    private DayLine afterMark(int from) {
      PageSpecParser.Read read = PageSpecParser.read(line, from);
      if (read.any() && (read.end() == line.length() || storyMark(read))) {
        return day(read.words(), storyStart(read.end()));
      }
      if (read.any() && read.definite()) {
        spots.add(
            new DayLine.Spot(
                read.end(),
                "'"
                    + line.substring(read.end()).strip()
                    + "' is not understood as words for the page; all after the day is kept as"
                    + " story"));
      }
      return day(PageSpec.NONE, from);
    }

    /** Whether the words for the page end in a mark after which the story may start. */
    private boolean storyMark(PageSpecParser.Read read) {
      int end = read.end();
      return switch (line.charAt(end)) {
        case ':' -> true;
        case '.', '!' -> read.definite() && spaceOrEnd(end + 1);
        case '-' -> read.definite() && gapBefore(end);
        default -> false;
      };
    }

    private int storyStart(int end) {
      return Math.min(end + 1, line.length());
    }

    private DayLine day(PageSpec words, int storyFrom) {
      settleWeekday();
      return new DayLine(
          Optional.of(
              new DayLine.Day(new PartialDate(day.getAsInt(), month, year, weekday), words)),
          storyFrom,
          Optional.empty(),
          List.copyOf(spots));
    }

    private boolean skip(Pattern pattern) {
      return take(pattern).isPresent();
    }

    private int skipped(Pattern pattern, int from) {
      Matcher matcher = pattern.matcher(line).region(Math.min(from, line.length()), line.length());
      return matcher.lookingAt() ? matcher.end() : from;
    }

    private Optional<Matcher> take(Pattern pattern) {
      Matcher matcher = pattern.matcher(line).region(at, line.length());
      if (!matcher.lookingAt()) {
        return Optional.empty();
      }
      at = matcher.end();
      return Optional.of(matcher);
    }
  }
}
