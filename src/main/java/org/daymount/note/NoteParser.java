package org.daymount.note;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.daymount.album.NormalizedText;
import org.daymount.album.PageSpecParser;

/**
 * Reads a month note: the month at the top, then days, each with words for its page and a story
 * below. Nothing is dropped: what is not understood stays where it was typed, as story, and is
 * named with its line and column. The format is in docs/month-note.md.
 */
public final class NoteParser {
  private static final Pattern LINE = Pattern.compile("[^\\r\\n]*(?:\\r\\n|\\r|\\n|$)");
  private static final Pattern HEADER_LEAD = Pattern.compile("[ #*]*");
  private static final Pattern NUMERIC_MONTH =
      Pattern.compile("(?:(\\d{4})-(\\d{1,2})|(\\d{1,2})/(\\d{4}))(?![\\d/-])");
  private static final Pattern YEAR = Pattern.compile("[ ,]*(?:of |de )?(\\d{4})(?!\\d)[.:*]?");

  private static final Pattern NUMBERED = Pattern.compile(" *(\\p{L}*) *(\\d{1,2}):(?!\\d).*");
  private static final Pattern STOP = Pattern.compile("[ #*=-]*(?:stop|end)[ .!#*=-]*");

  private final List<Line> lines = new ArrayList<>();
  private final List<NoteRemark> remarks = new ArrayList<>();
  private final CalendarNames names;

  private final Set<String> bases;

  private NoteParser(String text, Set<String> bases, Locale... extra) {
    this.bases = bases.stream().map(NormalizedText::fold).collect(Collectors.toSet());
    names = new CalendarNames(extra);
    Matcher matcher = LINE.matcher(text);
    while (matcher.find() && matcher.start() < text.length()) {
      lines.add(new Line(lines.size() + 1, matcher.group()));
    }
  }

  /**
   * @param extra locales whose names of months and weekdays are understood beside the English ones
   */
  public static MonthNote parse(String text, Locale... extra) {
    return parse(text, Set.of(), extra);
  }

  /**
   * @param bases names of ready-made pages that the album knows
   * @param extra locales whose names of months and weekdays go before the others'
   */
  public static MonthNote parse(String text, Set<String> bases, Locale... extra) {
    return new NoteParser(text, bases, extra).parse();
  }

  private MonthNote parse() {
    Header header = header();
    List<Entry> entries = entries(header);
    int firstDay = entries.isEmpty() ? lines.size() : entries.get(0).index;
    StringBuilder preamble = new StringBuilder();
    lines.subList(0, firstDay).forEach(line -> preamble.append(line.raw));
    remarkOnPreamble(header, firstDay);
    List<NoteDay> days = new ArrayList<>();
    int stop = entries.isEmpty() ? lines.size() : stop(entries.get(entries.size() - 1).index);
    for (int i = 0; i < entries.size(); i++) {
      int next = i + 1 < entries.size() ? entries.get(i + 1).index : stop;
      days.add(noteDay(entries.get(i), next));
    }
    remarks.addAll(repeated(days, header.month));
    header.month.ifPresent(month -> remarks.addAll(dateRemarks(days, month)));
    remarks.sort(null);
    StringBuilder ending = new StringBuilder();
    lines.subList(stop, lines.size()).forEach(line -> ending.append(line.raw));
    return new MonthNote(header.month, days, remarks, preamble.toString(), ending.toString());
  }

  /** The line below the last day that ends the album, if nothing but blank lines follow it. */
  private int stop(int lastDay) {
    for (int i = lines.size() - 1; i > lastDay; i--) {
      String text = lines.get(i).folded.text();
      if (STOP.matcher(text).matches()) {
        return i;
      }
      if (!text.isBlank()) {
        break;
      }
    }
    return lines.size();
  }

  /** The first line with anything on it that is a month and a year; lines with # may go before. */
  private Header header() {
    for (int i = 0; i < lines.size(); i++) {
      String text = lines.get(i).folded.text();
      if (text.isBlank()) {
        continue;
      }
      Optional<YearMonth> month = monthOf(text);
      if (month.isPresent()) {
        return new Header(month, i);
      }
      if (!text.strip().startsWith("#")) {
        break;
      }
    }
    return new Header(Optional.empty(), -1);
  }

  private Optional<YearMonth> monthOf(String text) {
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
              return year.lookingAt()
                  ? Optional.of(YearMonth.of(Integer.parseInt(year.group(1)), found.value()))
                  : Optional.empty();
            });
  }

  private List<Entry> entries(Header header) {
    DayLineReader reader = new DayLineReader(names, header.month, assumedMonth(header), bases);
    List<List<DayCandidate>> candidates = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      boolean head = i == header.index;
      candidates.add(head ? List.of() : reader.read(lines.get(i).folded.text()));
    }
    List<Optional<DayCandidate>> read = DayOrder.decide(candidates);
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (read.get(i).isPresent()) {
        entries.add(new Entry(i, read.get(i).get()));
        remarkOnDay(lines.get(i), read.get(i).get());
      } else if (!entries.isEmpty()) {
        remarkOnStoryLine(lines.get(i), i, entries.get(entries.size() - 1));
        remarkOnNoSuchDay(lines.get(i));
        remarkOnDoubt(lines.get(i), candidates.get(i), entries.get(entries.size() - 1));
      }
    }
    remarkOnOrder(entries);
    return entries;
  }

  /** The month named alone on the first line, or the one most lines name as their day's. */
  private Optional<Month> assumedMonth(Header header) {
    if (header.month.isPresent()) {
      return Optional.empty();
    }
    Map<Month, Integer> seen = new EnumMap<>(Month.class);
    DayLineReader reader = new DayLineReader(names, Optional.empty(), Optional.empty(), bases);
    for (Line line : lines) {
      reader.read(line.folded.text()).stream()
          .flatMap(day -> day.names().get(0).month().stream())
          .distinct()
          .forEach(month -> seen.merge(month, 1, Integer::sum));
    }
    Optional<Month> alone =
        lines.stream()
            .map(line -> line.folded.text().strip())
            .filter(text -> !text.isEmpty())
            .findFirst()
            .flatMap(
                text ->
                    names
                        .monthAt(text, 0)
                        .filter(found -> found.end() == text.length())
                        .map(CalendarNames.Found::value));
    return alone.or(
        () -> seen.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey));
  }

  private void remarkOnDay(Line line, DayCandidate day) {
    day.guess().ifPresent(guess -> remark(line, 0, "'" + start(line) + "' is " + guess));
  }

  /** What might have been a day, and stays story all the same. */
  private void remarkOnDoubt(Line line, List<DayCandidate> candidates, Entry above) {
    candidates.stream()
        .filter(day -> day.inMonth() && day.first() > above.day.last() && day.strength() >= 0.5)
        .findFirst()
        .ifPresent(
            day ->
                remark(
                    line,
                    0,
                    "kept as story of day "
                        + above.day.last()
                        + "; if it starts day "
                        + day.first()
                        + ", put a colon after the number"));
  }

  private void remarkOnNoSuchDay(Line line) {
    Matcher number = NUMBERED.matcher(line.folded.text());
    if (number.matches()) {
      int day = Integer.parseInt(number.group(2));
      boolean named = number.group(1).isBlank() || names.monthAt(number.group(1), 0).isPresent();
      if (named && (day < 1 || day > 31)) {
        remark(line, 0, "there is no day " + day + " in a month; kept as story");
      }
    }
  }

  private void remarkOnOrder(List<Entry> entries) {
    long falling =
        IntStream.range(1, entries.size())
            .filter(i -> entries.get(i).day.first() < entries.get(i - 1).day.last())
            .count();
    if (falling * 2 > entries.size()) {
      return; // a note that is kept with the newest day on top
    }
    for (int i = 1; i < entries.size(); i++) {
      DayCandidate day = entries.get(i).day;
      int above = entries.get(i - 1).day.last();
      if (day.inMonth() && day.first() < above) {
        remark(
            lines.get(entries.get(i).index),
            0,
            "day "
                + day.first()
                + " stands below day "
                + above
                + "; if one of the two numbers belongs to a story, write it out or add a word");
      }
    }
  }

  private static String start(Line line) {
    String text = line.content.strip();
    return text.codePointCount(0, text.length()) <= 30
        ? text
        : text.substring(0, text.offsetByCodePoints(0, 30)) + "…";
  }

  private void remarkOnStoryLine(Line line, int index, Entry above) {
    String text = line.folded.text();
    boolean directlyBelow = index == above.index + 1;
    if (directlyBelow && isAllPageWords(text)) {
      remark(
          line,
          0,
          "'"
              + text.strip()
              + "' is kept as story; if it is meant for the page, put it on the line"
              + " of the day");
    }
    if (monthOf(text).isPresent() && text.strip().split(" +").length <= 2) {
      remark(line, 0, "a note holds one month, named at its top; this line is kept as story");
    }
  }

  private boolean isAllPageWords(String text) {
    PageSpecParser.Read read = PageSpecParser.read(text, 0, bases);
    return read.definite() && read.end() == text.length();
  }

  private void remarkOnPreamble(Header header, int firstDay) {
    for (int i = 0; i < firstDay; i++) {
      Line line = lines.get(i);
      String text = line.folded.text().strip();
      boolean named = remarks.stream().anyMatch(remark -> remark.line() == line.number);
      if (i == header.index || text.isEmpty() || text.startsWith("#") || named) {
        continue;
      }
      boolean monthAlone =
          names.monthAt(text, 0).filter(found -> found.end() == text.length()).isPresent();
      remark(
          line,
          0,
          monthAlone
              ? "the month needs a year, like June 2026; until then it is taken from the photos"
              : "this stands above the first day, so it belongs to none and is not printed; start"
                  + " the line with # to keep it as a note to yourself");
      return;
    }
  }

  private NoteDay noteDay(Entry entry, int next) {
    Line line = lines.get(entry.index);
    int cut = line.folded.rawIndex(entry.day.storyFrom());
    // All of the day line belongs to the heading when no story starts on it.
    int headingEnd = line.content.substring(cut).isBlank() ? line.raw.length() : cut;
    StringBuilder story = new StringBuilder(line.raw.substring(headingEnd));
    lines.subList(entry.index + 1, next).forEach(below -> story.append(below.raw));
    return new NoteDay(
        entry.day.names().get(0),
        entry.day.names().subList(1, entry.day.names().size()),
        entry.day.words(),
        line.number,
        line.raw.substring(0, headingEnd),
        story.toString());
  }

  private static List<NoteRemark> repeated(List<NoteDay> days, Optional<YearMonth> month) {
    Map<Object, Integer> seen = new HashMap<>();
    List<NoteRemark> repeated = new ArrayList<>();
    for (NoteDay day : days) {
      Object key =
          month
              .<Object>flatMap(known -> day.name().date(known))
              .orElse(day.name().day() + " " + day.name().month());
      Integer first = seen.putIfAbsent(key, day.line());
      if (first != null) {
        repeated.add(
            new NoteRemark(
                day.line(),
                1,
                "day "
                    + day.name().day()
                    + " is there twice (line "
                    + first
                    + "); the two are joined"));
      }
    }
    return repeated;
  }

  /** Days that the month does not have, or that fall on another weekday than was typed. */
  public static List<NoteRemark> dateRemarks(List<NoteDay> days, YearMonth month) {
    List<NoteRemark> found = new ArrayList<>();
    for (NoteDay day : days) {
      Optional<LocalDate> date = day.name().date(month);
      if (date.filter(known -> YearMonth.from(known).equals(month)).isEmpty()) {
        found.add(
            new NoteRemark(
                day.line(),
                1,
                "day "
                    + day.name()
                    + " is not in "
                    + name(month)
                    + "; it is kept in the note and not used"));
      } else if (day.name()
          .weekday()
          .filter(said -> said != date.get().getDayOfWeek())
          .isPresent()) {
        found.add(
            new NoteRemark(
                day.line(),
                1,
                date.get().getDayOfMonth()
                    + " "
                    + name(month)
                    + " is a "
                    + date.get().getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                    + ", not a "
                    + day.name().weekday().get().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                    + "; the number is taken"));
      }
    }
    return found;
  }

  public static String name(YearMonth month) {
    return month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + month.getYear();
  }

  private void remark(Line line, int foldedAt, String text) {
    int at = foldedAt;
    String folded = line.folded.text();
    while (at < folded.length() && folded.charAt(at) == ' ') {
      at++;
    }
    String before = line.raw.substring(0, line.folded.rawIndex(Math.min(at, folded.length())));
    String seen = before.replace("\uFEFF", "");
    remarks.add(new NoteRemark(line.number, seen.codePointCount(0, seen.length()) + 1, text));
  }

  private record Header(Optional<YearMonth> month, int index) {}

  private record Entry(int index, DayCandidate day) {}

  /** A line as typed, with and without its ending, and made plain for reading. */
  private static final class Line {
    private final int number;
    private final String raw;
    private final String content;
    private final NormalizedText folded;

    private Line(int number, String raw) {
      this.number = number;
      this.raw = raw;
      this.content = raw.replaceAll("[\\r\\n]+$", "");
      this.folded = NormalizedText.of(content);
    }
  }
}
