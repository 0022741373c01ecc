package org.daymount.note;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.daymount.album.NormalizedText;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;

/**
 * Reads a month note: the month at the top, then days, each with words for its page and a story
 * below. Nothing is dropped: what is not understood stays where it was typed, as story, and is
 * named with its line and column. The format is in docs/month-note.md.
 */
public final class NoteParser {
  private static final Pattern STOP = Pattern.compile("[ #*=-]*(?:stop|end)[ .!#*=-]*");

  /** Last words that sound like an end. */
  private static final Pattern CLOSING =
      Pattern.compile(
          "(?:.*[.!?,;:-] *)?(?:and )?(?:the end|(?:i'?m |we'?re )?stopping here|(?:the )?last page"
              + "|that'?s (?:it|all)(?: for now| folks)?|thats (?:it|all)|ende|schluss|fin|fine|einde"
              + "|fim|koniec|slut)[ .!)]*");

  private static final Pattern BULLETS = Pattern.compile("[ (*•·>-]*(?:\\[[ x]?\\] *)?");
  private static final Pattern AFTER_WORDS = Pattern.compile("[ .:;,)!*-]*");

  private final CalendarNames names;
  private final Set<String> bases;
  private final Optional<YearMonth> planned;
  private List<NoteLine> lines;
  private NoteRemarks remarks;

  private NoteParser(String text, Set<String> bases, Optional<YearMonth> planned, Locale... extra) {
    this.planned = planned;
    this.bases = bases.stream().map(NormalizedText::fold).collect(Collectors.toSet());
    this.names = new CalendarNames(List.of(extra));
    this.lines = NoteLine.of(text);
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
    return parse(text, bases, Optional.empty(), extra);
  }

  /**
   * @param planned the month the album is for: weekdays are counted by it where the note does not
   *     name its month
   */
  public static MonthNote parse(
      String text, Set<String> bases, Optional<YearMonth> planned, Locale... extra) {
    return new NoteParser(text, bases, planned, extra).parse();
  }

  private MonthNote parse() {
    MonthHeader header = MonthHeader.of(lines, names);
    DayLineReader reader = reader(header);
    lines = inParts(header, reader);
    remarks = new NoteRemarks(lines, names);
    List<Entry> entries = entries(header, reader);
    int firstDay = entries.isEmpty() ? lines.size() : entries.get(0).index();
    int stop = entries.isEmpty() ? lines.size() : stop(entries.get(entries.size() - 1).index());
    List<NoteDay> days = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      int next = i + 1 < entries.size() ? entries.get(i + 1).index() : stop;
      days.add(noteDay(entries.get(i), next));
    }
    remarks.onPreamble(header, firstDay);
    remarks.addAll(NoteRemarks.repeated(days, header.month()));
    header.month().ifPresent(month -> remarks.addAll(dateRemarks(days, month)));
    return new MonthNote(
        header.month(),
        days,
        remarks.inOrder(),
        raw(0, firstDay),
        raw(stop, lines.size()),
        closes());
  }

  private DayLineReader reader(MonthHeader header) {
    Optional<Month> assumed =
        header.month().isPresent() ? Optional.empty() : MonthHeader.assumed(lines, names);
    Optional<YearMonth> known =
        header
            .month()
            .or(
                () ->
                    planned.filter(
                        month -> assumed.isEmpty() || assumed.get().equals(month.getMonth())));
    return new DayLineReader(names, known, assumed, bases);
  }

  private List<NoteLine> inParts(MonthHeader header, DayLineReader reader) {
    DaysOnOneLine several = new DaysOnOneLine(reader);
    List<NoteLine> parts = new ArrayList<>(lines.subList(0, header.index() + 1));
    lines
        .subList(header.index() + 1, lines.size())
        .forEach(line -> parts.addAll(several.parts(line)));
    return List.copyOf(parts);
  }

  private String raw(int from, int to) {
    return lines.subList(from, to).stream().map(NoteLine::raw).collect(Collectors.joining());
  }

  /** The line below the last day that ends the album. */
  private int stop(int lastDay) {
    for (int i = lastDay + 1; i < lines.size(); i++) {
      if (STOP.matcher(lines.get(i).text()).matches()) {
        lines.subList(i + 1, lines.size()).stream()
            .filter(line -> !line.text().isBlank())
            .findFirst()
            .ifPresent(remarks::onWordsBelowStop);
        return i;
      }
    }
    return lines.size();
  }

  /** Whether the note's last words sound like an end. */
  private boolean closes() {
    return lines.stream()
        .map(NoteLine::text)
        .filter(text -> !text.isBlank())
        .reduce((before, last) -> last)
        .filter(text -> CLOSING.matcher(text.strip()).matches())
        .isPresent();
  }

  private List<Entry> entries(MonthHeader header, DayLineReader reader) {
    List<List<DayCandidate>> candidates = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      candidates.add(i == header.index() ? List.of() : reader.read(lines.get(i).text()));
    }
    List<Optional<DayCandidate>> read = DayOrder.decide(withoutStamps(candidates));
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (read.get(i).isPresent()) {
        entries.add(entry(i, read));
        remarks.onDay(lines.get(i), read.get(i).get());
      } else if (!entries.isEmpty()) {
        Entry above = entries.get(entries.size() - 1);
        remarks.onOtherMonth(lines.get(i));
        remarks.onNoSuchDay(lines.get(i));
        remarks.onDoubt(lines.get(i), candidates.get(i), above);
        remarkOnEarlyStop(i, read);
      }
    }
    remarks.onOrder(entries);
    return entries;
  }

  /** Where the messages of a chat name their days, its stamps say when they were typed. */
  private static List<List<DayCandidate>> withoutStamps(List<List<DayCandidate>> candidates) {
    long named = candidates.stream().filter(each -> isOf(each, "chat ")).count();
    long stamped = candidates.stream().filter(each -> isOf(each, "stamp ")).count();
    return named < stamped
        ? candidates
        : candidates.stream()
            .map(each -> isOf(each, "stamp ") ? List.<DayCandidate>of() : each)
            .toList();
  }

  private static boolean isOf(List<DayCandidate> candidates, String chat) {
    return !candidates.isEmpty() && candidates.get(0).style().startsWith(chat);
  }

  private void remarkOnEarlyStop(int index, List<Optional<DayCandidate>> read) {
    if (STOP.matcher(lines.get(index).text()).matches()) {
      read.subList(index, read.size()).stream()
          .flatMap(Optional::stream)
          .findFirst()
          .ifPresent(day -> remarks.onEarlyStop(lines.get(index), day.first()));
    }
  }

  /** A day and, where nothing stands on its own line, words for its page on the next. */
  private Entry entry(int index, List<Optional<DayCandidate>> read) {
    DayCandidate day = read.get(index).get();
    Entry alone = new Entry(index, day, day.words(), index, day.storyFrom());
    boolean bare =
        day.words().saysNothing() && lines.get(index).text().substring(day.storyFrom()).isBlank();
    if (!bare && day.words().saysNothing()) {
      return withWordsBehind(alone);
    }
    int below = index + 1;
    while (bare && below < lines.size() && lines.get(below).text().isBlank()) {
      below++;
    }
    if (!bare || below >= lines.size() || read.get(below).isPresent()) {
      return alone;
    }
    String text = lines.get(below).text();
    PageSpecParser.Read words =
        PageSpecParser.read(text, DayNameReader.end(BULLETS, text, 0), bases);
    int storyFrom = DayNameReader.end(AFTER_WORDS, text, words.end());
    boolean whole = words.any() && storyFrom == text.length();
    boolean begins =
        words.definite() && storyFrom > words.end() && !text.startsWith(" ", words.end());
    if (!whole && !begins) {
      return alone;
    }
    remarks.onWordsBelow(lines.get(below), day);
    return new Entry(index, day, words.words(), below, storyFrom);
  }

  private Entry withWordsBehind(Entry day) {
    NoteLine line = lines.get(day.index());
    Optional<WordsBehindStory.Found> found =
        WordsBehindStory.in(line.text(), day.storyFrom(), bases);
    found.ifPresent(words -> remarks.onWordsBehind(line, words.from(), day.day()));
    return found
        .map(
            words ->
                new Entry(
                    day.index(), day.day(), words.words(), day.headingEnds(), day.storyFrom()))
        .orElse(day);
  }

  private NoteDay noteDay(Entry entry, int next) {
    NoteLine line = lines.get(entry.headingEnds());
    int cut = line.folded().rawIndex(entry.storyFrom());
    // All of the line belongs to the heading when no story starts on it.
    int end = line.content().substring(cut).isBlank() ? line.raw().length() : cut;
    List<PartialDate> dates = entry.day().names();
    return new NoteDay(
        dates.get(0),
        dates.subList(1, dates.size()),
        entry.words(),
        lines.get(entry.index()).number(),
        raw(entry.index(), entry.headingEnds()) + line.raw().substring(0, end),
        line.raw().substring(end) + raw(entry.headingEnds() + 1, next));
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

  /**
   * A day where it starts.
   *
   * @param index of its line
   * @param words for its page
   * @param headingEnds index of the line on which the heading ends
   * @param storyFrom folded index on that line
   */
  record Entry(int index, DayCandidate day, PageSpec words, int headingEnds, int storyFrom) {}
}
