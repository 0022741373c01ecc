package org.daymount.note;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;

/** All the ways in which a line may start a day; {@link DayOrder} chooses among them. */
final class DayLineReader {
  private static final Pattern CHAT =
      Pattern.compile(
          " *\\[?(?:(\\d{1,4}[/.-]\\d{1,2}[/.-]\\d{2,4}),? +\\d{1,2}[:.]\\d{2}(?::\\d{2})?(?: ?[ap]\\.?m\\.?)?"
              + "|\\d{1,2}:\\d{2}(?::\\d{2})?(?: ?[ap]m)?, +(\\d{1,4}[/.-]\\d{1,2}[/.-]\\d{2,4}))\\]?"
              + " *-? *[^:]{1,40}: ");
  private static final Pattern LEAD =
      Pattern.compile("(?:\\[[ x]?\\] *|[^\\p{L}\\p{N}\\s\"'+$€£~.,:;?!%&]+? *| )*+");
  private static final Pattern ARTICLE =
      Pattern.compile("(?:(?:on )?(?:the|am|der|den|le|el|il|o|de) +)?(?=\\d|\\p{L})");
  private static final Pattern GAP =
      Pattern.compile("[ ,.:*_]*(?:(?:the|den|der|le|el|il|de|-) +)?");
  private static final Pattern DAY_WORD =
      Pattern.compile("(?:day|tag|jour|dia|giorno|dag|dzien)[ .#]*(?=\\d)");
  private static final Pattern ISO =
      Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?![\\d-])");
  private static final Pattern NUMERIC =
      Pattern.compile(
          "(\\d{1,2}) ?([/.-]) ?(\\d{1,2})(?:\\2(\\d{4}|\\d{2})|\\2(?!\\d))?(?![\\d/])(?!\\.\\d)");
  private static final Pattern NUMBER =
      Pattern.compile(
          "(\\d[ol\\d]?|[lio]\\d)(st|nd|rd|th|:?er|:?e|:a|de|º|ª|°|日|号|일)?(?![\\d\\p{L}])");
  private static final Pattern MONTH_GAP = Pattern.compile("\\.? *(?:of |de |di |d'|-)?");
  private static final Pattern YEAR = Pattern.compile("[ ,]*(?:de )?(20\\d\\d|19\\d\\d)(?!\\d)");
  private static final Pattern SEPARATOR =
      Pattern.compile(
          " *(-|/|,|&|\\+|(?:to|until|till|through|bis|a|al|au|tot|t/m|do|and|und|et|y|e|en|i|och)"
              + "(?!\\p{L})) *(?:and +)?(?=[\\d(]|\\p{L}{2,10}\\.? \\d)");
  private static final Pattern CLOCK =
      Pattern.compile(
          "\\d{1,2}(?:[:.h]\\d{2}(?!\\d| *[x*])| *(?:am|pm|a\\.m|p\\.m|uhr|h|o'clock)(?![\\p{L}]))");
  private static final Pattern MARK =
      Pattern.compile(
          "[ *_]*(?:(?:[)=→/|>,]|[-.](?!\\d)|:(?!\\d\\d(?! *[x*\\d])))+|\\]|[*_]+)[ *_]*");
  private static final Pattern UNIT =
      Pattern.compile(
          "(?:years?|yrs?|weeks?|months?|days?|hours?|hrs?|minutes?|mins?|am|pm|km|m|cm|kg|g|ml|l|miles?"
              + "|feet|ft|degrees?|percent|euros?|dollars?|pounds?|cups?|tbsp|tsp|times?|people|kids|of"
              + "|or|to \\d|out of|more|less|jahre?|stunden|uhr|ans|heures?|anos?|horas?|anni|ore|jaar|uur|lat"
              + "|godzin|ar|timmar|grams?|litres?|%|°|€|\\$|£|x)(?![\\p{L}\\d])|[%°€$£']");
  private static final Pattern THING =
      Pattern.compile("\\p{Ll}{3,}s (?:for|came|in|of|from|on|and|were|at)");
  private static final List<String> ORDINALS =
      List.of(
          "first",
          "second",
          "third",
          "fourth",
          "fifth",
          "sixth",
          "seventh",
          "eighth",
          "ninth",
          "tenth",
          "eleventh",
          "twelfth",
          "thirteenth",
          "fourteenth",
          "fifteenth",
          "sixteenth",
          "seventeenth",
          "eighteenth",
          "nineteenth",
          "twentieth",
          "twenty first",
          "twenty second",
          "twenty third",
          "twenty fourth",
          "twenty fifth",
          "twenty sixth",
          "twenty seventh",
          "twenty eighth",
          "twenty ninth",
          "thirtieth",
          "thirty first");

  private final CalendarNames names;
  private final Optional<YearMonth> month;
  private final Optional<Month> assumed;
  private final Set<String> bases;

  /**
   * @param month as the note's top says
   * @param assumed the month that most of the note's dates lie in, when the top does not say
   */
  DayLineReader(
      CalendarNames names, Optional<YearMonth> month, Optional<Month> assumed, Set<String> bases) {
    this.names = names;
    this.month = month;
    this.assumed = assumed;
    this.bases = bases;
  }

  List<DayCandidate> read(String line) {
    List<DayCandidate> found = new ArrayList<>();
    Matcher chat = CHAT.matcher(line);
    if (chat.lookingAt()) {
      new Reading(line, chat.end(), "chat ").collect(found);
      if (found.isEmpty()) {
        new Reading(line, chat.start(chat.group(1) != null ? 1 : 2), "stamp ", chat.end())
            .collect(found);
      }
      return found;
    }
    new Reading(line, 0, "").collect(found);
    return found;
  }

  private Optional<Month> ownMonth() {
    return month.map(YearMonth::getMonth).or(() -> assumed);
  }

  private static int end(Pattern pattern, String line, int at) {
    Matcher matcher = pattern.matcher(line).region(Math.min(at, line.length()), line.length());
    return matcher.lookingAt() ? matcher.end() : at;
  }

  private record Part(
      int day,
      Optional<Month> month,
      OptionalInt year,
      Optional<DayOfWeek> weekday,
      int end,
      String style,
      boolean slip) {
    PartialDate name() {
      return new PartialDate(day, month, year, weekday);
    }
  }

  /** One line, read from one place on. */
  private final class Reading {
    private final String line;
    private final int start;
    private final String prefix;
    private final int restFrom; // behind a chat's stamp; -1 elsewhere

    private Reading(String line, int start, String prefix) {
      this(line, start, prefix, -1);
    }

    private Reading(String line, int start, String prefix, int restFrom) {
      this.line = line;
      this.start = start;
      this.prefix = prefix;
      this.restFrom = restFrom;
    }

    private void collect(List<DayCandidate> found) {
      int lead = restFrom >= 0 ? start : end(LEAD, line, start);
      int at = end(ARTICLE, line, lead);
      boolean minus = lead > 0 && line.charAt(lead - 1) == '-' && at == lead;
      for (Part part : parts(at)) {
        if (part.day < 1 || part.day > 31) {
          continue;
        }
        several(part).ifPresent(days -> add(found, days, minus));
        add(found, List.of(part), minus); // of two as good the first is taken
      }
      weekdayAlone(at, found);
    }

    private List<Part> parts(int from) {
      List<Part> parts = new ArrayList<>();
      Optional<CalendarNames.Found<DayOfWeek>> weekday = names.weekdayAt(line, from);
      if (weekday.isPresent()) {
        parts(end(GAP, line, weekday.get().end()), Optional.of(weekday.get().value()), parts);
        parts.removeIf(
            part ->
                month.isPresent() && weekdayIsWrong(part) && shortName(from, weekday.get().end()));
      }
      if (parts.isEmpty()) {
        parts(from, Optional.empty(), parts);
      }
      return parts;
    }

    private boolean shortName(int from, int end) {
      return end - from < 3;
    }

    private boolean weekdayIsWrong(Part part) {
      Optional<DayOfWeek> actual = month.flatMap(part.name()::date).map(LocalDate::getDayOfWeek);
      return part.weekday.isPresent() && !part.weekday.equals(actual);
    }

    private void parts(int from, Optional<DayOfWeek> weekday, List<Part> parts) {
      String style = weekday.isPresent() ? "weekday " : "";
      Matcher iso = ISO.matcher(line).region(from, line.length());
      if (iso.lookingAt() && isMonth(number(iso.group(2)))) {
        OptionalInt year = OptionalInt.of(number(iso.group(1)));
        parts.add(
            new Part(
                number(iso.group(3)),
                Optional.of(Month.of(number(iso.group(2)))),
                year,
                weekday,
                iso.end(),
                style + "iso",
                false));
        return;
      }
      numeric(from, weekday, style, parts);
      int dayWord = end(DAY_WORD, line, from);
      Optional<CalendarNames.Found<Month>> before = names.monthAt(line, from);
      if (before.isPresent()) {
        int at = end(GAP, line, before.get().end());
        numbers(at, weekday, Optional.of(before.get().value()), style + "month-first", parts);
      } else {
        numbers(dayWord, weekday, Optional.empty(), style + (dayWord > from ? "day" : ""), parts);
      }
    }

    private void numeric(int from, Optional<DayOfWeek> weekday, String style, List<Part> parts) {
      Matcher date = NUMERIC.matcher(line).region(from, line.length());
      if (!date.lookingAt()) {
        return;
      }
      int first = number(date.group(1));
      int second = number(date.group(3));
      String mark = date.group(2);
      boolean dotted = mark.equals(".");
      OptionalInt year =
          date.group(4) == null
              ? OptionalInt.empty()
              : OptionalInt.of(number(date.group(4)) + (date.group(4).length() == 2 ? 2000 : 0));
      if (mark.equals("-") && year.isEmpty()) {
        return;
      }
      int own = ownMonth().map(Month::getValue).orElse(0);
      if (isMonth(second) && (second == own || (own == 0 && !dotted))) {
        parts.add(
            new Part(
                first,
                Optional.of(Month.of(second)),
                year,
                weekday,
                date.end(),
                style + "numeric" + mark,
                false));
      }
      if (!dotted && first != second && isMonth(first) && (first == own || own == 0)) {
        parts.add(
            new Part(
                second,
                Optional.of(Month.of(first)),
                year,
                weekday,
                date.end(),
                style + "numeric-month-first" + mark,
                false));
      }
    }

    private void numbers(
        int from,
        Optional<DayOfWeek> weekday,
        Optional<Month> named,
        String style,
        List<Part> parts) {
      Matcher number = NUMBER.matcher(line).region(from, line.length());
      int end;
      int day;
      boolean slip = false;
      if (number.lookingAt()
          && !(weekday.isEmpty()
              && named.isEmpty()
              && CLOCK.matcher(line).region(from, line.length()).lookingAt())) {
        String typed = number.group(1);
        slip = !typed.matches("\\d+");
        day = number(typed.replace('o', '0').replace('l', '1').replace('i', '1'));
        end = number.end();
      } else {
        day = spelled(from);
        if (day == 0
            || (weekday.isEmpty()
                && named.isEmpty()
                && !line.startsWith("the ", from - 4 < 0 ? 0 : from - 4))) {
          return;
        }
        end = from + ORDINALS.get(day - 1).length();
      }
      Optional<Month> month = named;
      if (month.isEmpty()) {
        Optional<CalendarNames.Found<Month>> after = names.monthAt(line, end(MONTH_GAP, line, end));
        if (after.isPresent()
            && (after.get().value().equals(ownMonth().orElse(null))
                || after.get().end() - end > 4)) {
          month = Optional.of(after.get().value());
          end = after.get().end();
          style = style + "month-after";
        }
      }
      OptionalInt year = OptionalInt.empty();
      Matcher yearly = YEAR.matcher(line).region(end, line.length());
      if (month.isPresent() && yearly.lookingAt()) {
        year = OptionalInt.of(number(yearly.group(1)));
        end = yearly.end();
      }
      Optional<DayOfWeek> said = weekday;
      if (said.isEmpty()) {
        int next = end(Pattern.compile("[ ,(-]*"), line, end);
        Optional<CalendarNames.Found<DayOfWeek>> trailing = names.weekdayAt(line, next);
        if (trailing.isPresent() && next > end && trailing.get().end() - next > 1) {
          Part part = new Part(day, month, year, Optional.of(trailing.get().value()), 0, "", false);
          if (day >= 1 && day <= 31 && !weekdayIsWrong(part)) {
            said = Optional.of(trailing.get().value());
            end = end(Pattern.compile("\\)"), line, trailing.get().end());
            style = style + "weekday-after";
          }
        }
      }
      parts.add(new Part(day, month, year, said, end, style, slip));
    }

    private int spelled(int from) {
      int best = 0;
      for (int i = 0; i < ORDINALS.size(); i++) {
        String word = ORDINALS.get(i);
        int end = from + word.length();
        boolean there =
            line.startsWith(word, from)
                && (end == line.length() || !Character.isLetter(line.charAt(end)));
        best = there ? i + 1 : best;
      }
      return best;
    }

    /** A range or a list of days: {@code 12-13}, {@code 5, 6 and 7}. */
    private Optional<List<Part>> several(Part first) {
      if (first.style.contains("numeric") || restFrom >= 0) {
        return Optional.empty();
      }
      List<Part> days = new ArrayList<>(List.of(first));
      int at = first.end;
      while (days.size() < 31) {
        Matcher mark = SEPARATOR.matcher(line).region(at, line.length());
        if (!mark.lookingAt()) {
          break;
        }
        List<Part> next = parts(mark.end());
        Part last = days.get(days.size() - 1);
        if (next.isEmpty()
            || next.get(next.size() - 1).day <= last.day
            || next.get(next.size() - 1).day > 31) {
          break;
        }
        Part to = next.get(next.size() - 1);
        if (end(Pattern.compile(" *[x*] *\\d| *by \\d"), line, to.end) > to.end) {
          break; // "3, 4x6"
        }
        boolean list =
            List.of(",", "&", "+", "and", "und", "et", "y", "e", "en", "i", "och")
                .contains(mark.group(1));
        if (mark.group(1).equals("/") && to.day != last.day + 1) {
          break;
        }
        for (int day = list ? to.day : last.day + 1; day <= to.day; day++) {
          days.add(
              new Part(
                  day,
                  to.month,
                  to.year,
                  day == to.day ? to.weekday : Optional.empty(),
                  to.end,
                  first.style + "several",
                  first.slip));
        }
        at = to.end;
      }
      return days.size() > 1 ? Optional.of(days) : Optional.empty();
    }

    private void weekdayAlone(int from, List<DayCandidate> found) {
      Optional<CalendarNames.Found<DayOfWeek>> weekday = names.weekdayAt(line, from);
      if (!found.isEmpty()
          || weekday.isEmpty()
          || month.isEmpty()
          || weekday.get().end() - from < 3) {
        return;
      }
      for (int day = 1; day <= month.get().lengthOfMonth(); day++) {
        if (month.get().atDay(day).getDayOfWeek() == weekday.get().value()) {
          Part part =
              new Part(
                  day,
                  Optional.empty(),
                  OptionalInt.empty(),
                  Optional.of(weekday.get().value()),
                  weekday.get().end(),
                  "weekday-alone",
                  false);
          add(found, List.of(part), false);
        }
      }
    }

    private void add(List<DayCandidate> found, List<Part> days, boolean minus) {
      Part first = days.get(0);
      Part last = days.get(days.size() - 1);
      boolean explicit =
          first.month.isPresent() || first.weekday.isPresent() || first.style.contains("day");
      int end = restFrom >= 0 ? restFrom : last.end;
      boolean fraction =
          end + 1 < line.length()
              && "/-".indexOf(line.charAt(end)) >= 0
              && Character.isDigit(line.charAt(end + 1));
      if (days.size() == 1 && fraction && restFrom < 0) {
        return;
      }
      int markEnd = end(MARK, line, end);
      boolean marked = markEnd > end || restFrom >= 0;
      int rest = end(Pattern.compile(" *"), line, markEnd);
      if (!marked
          && rest == end
          && rest < line.length()
          && Character.isLetterOrDigit(line.charAt(rest))) {
        return;
      }
      boolean ends = rest == line.length();
      PageSpecParser.Read read = PageSpecParser.read(line, rest, bases);
      boolean words = read.any() && (read.definite() || atMark(read.end())) && !tallShips(read);
      boolean foreignMonth =
          last.month.isPresent() && ownMonth().isPresent() && !last.month.equals(ownMonth());
      boolean foreignYear =
          last.year.isPresent()
              && month.filter(own -> own.getYear() != last.year.getAsInt()).isPresent();
      if ((foreignMonth || foreignYear) && !(marked || ends)) {
        return;
      }
      double doubt = 0;
      double strength;
      boolean decimal = first.style.endsWith("numeric.") && line.charAt(first.end - 1) != '.';
      if (decimal && UNIT.matcher(line).region(rest, line.length()).lookingAt()) {
        return; // "3.6 km walked"
      }
      if (explicit) {
        boolean plain = marked || ends || (words && read.definite());
        strength = plain ? 12 : 5;
        doubt += first.weekday.isPresent() && weekdayIsWrong(first) ? 1 : 0;
      } else if (ends) {
        strength = 4;
      } else if (marked) {
        boolean dot = line.substring(end, markEnd).strip().equals(".");
        strength = dot ? 1.5 : line.charAt(end) == ':' ? 3.5 : 2.5;
      } else {
        strength = Character.isLowerCase(line.charAt(rest)) ? 0.9 : 0.6;
        if (line.startsWith("x", rest) && !words) {
          return;
        }
        doubt += UNIT.matcher(line).region(rest, line.length()).lookingAt() ? 4 : 0;
        doubt += THING.matcher(line).region(rest, line.length()).lookingAt() ? 1 : 0;
      }
      if (first.style.equals("weekday-alone")) {
        strength = marked || ends || words ? 2 : 0;
        doubt += marked || ends || words ? 0 : 1.5;
      }
      strength += words && read.definite() ? 3 : words ? 1.5 : 0;
      doubt += minus && !words ? 3 : 0;
      doubt += first.slip && !words && !marked && !ends ? 1 : 0;
      doubt += days.size() > 1 && !words ? (marked ? 1 : 1.2) : 0;
      boolean slashed = days.size() > 1 && line.substring(first.end, last.end).contains("/");
      doubt += slashed && words ? 0.5 : 0;
      String style =
          prefix
              + first.style
              + (days.size() > 1 ? "" : marked ? line.substring(end, markEnd).strip() : "");
      Optional<String> guess =
          first.slip
              ? Optional.of("taken as day " + first.day)
              : days.size() > 1 && !words
                  ? Optional.of(
                      "taken for days "
                          + first.day
                          + " to "
                          + last.day
                          + ", which share its page and story")
                  : openDate(first)
                      ? Optional.of(
                          "taken as day " + first.day + ", because that lies in the note's month")
                      : leftOver(words, read);
      found.add(
          new DayCandidate(
              days.stream().map(Part::name).toList(),
              style,
              strength,
              doubt,
              !foreignMonth && !foreignYear,
              !prefix.isEmpty(),
              words ? read.words() : PageSpec.NONE,
              storyFrom(words, read, rest, markEnd),
              guess));
    }

    private int storyFrom(boolean words, PageSpecParser.Read read, int rest, int markEnd) {
      if (!words) {
        return Math.min(rest, line.length());
      }
      return end(MARK, line, read.end());
    }

    /** Both numbers may be the month's. */
    private boolean openDate(Part part) {
      return part.style.contains("numeric")
          && part.style.endsWith("/")
          && part.day <= 12
          && part.month.filter(month -> month.getValue() != part.day).isPresent();
    }

    /** A word or two behind words for the page may be a slip of one of them. */
    private Optional<String> leftOver(boolean words, PageSpecParser.Read read) {
      String rest = words ? line.substring(read.end()).strip() : "";
      boolean marked = !rest.isEmpty() && !Character.isLetterOrDigit(rest.charAt(0));
      boolean after =
          words && read.end() > 0 && ",;".indexOf(line.charAt(Math.max(0, read.end() - 2))) >= 0;
      return rest.isEmpty() || marked || after || rest.split(" +").length > 2
          ? Optional.empty()
          : Optional.of("read up to '" + rest + "', which begins the story");
    }

    private boolean atMark(int at) {
      return at >= line.length()
          || "-.,;:!()[]|".indexOf(line.charAt(at)) >= 0
          || "-.,;:!".indexOf(line.charAt(Math.max(0, at - 1))) >= 0
          || (at >= 2 && ",;)".indexOf(line.charAt(at - 2)) >= 0);
    }

    /** "1 tall ships" is a sentence. */
    private boolean tallShips(PageSpecParser.Read read) {
      return !read.definite() && !atMark(read.end());
    }
  }

  private static boolean isMonth(int number) {
    return number >= 1 && number <= 12;
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }
}
