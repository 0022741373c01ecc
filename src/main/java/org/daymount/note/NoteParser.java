package org.daymount.note;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.daymount.album.NormalizedText;

/**
 * Reads a month note: the month at the top, then days, each with words for its page and a story
 * below. Nothing is dropped: what is not understood stays where it was typed, as story, and is
 * named with its line and column. The format is in docs/month-note.md.
 */
public final class NoteParser {
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
    MonthHeader header = MonthHeader.of(lines, names, planned);
    DayLineReader reader = reader(header);
    lines = inParts(header, reader);
    remarks = new NoteRemarks(lines, names);
    List<DayEntry> entries = entries(header, reader);
    int firstDay = entries.isEmpty() ? lines.size() : entries.get(0).index();
    int stop = entries.isEmpty() ? lines.size() : stop(entries);
    Optional<NoteColumns> table = NoteColumns.of(lines);
    List<NoteDay> days = days(entries, stop, table);
    remarks.onPreamble(header, firstDay, table);
    remarks.addAll(NoteRemarks.repeated(days, header.month()));
    header.month().ifPresent(month -> remarks.addAll(dateRemarks(days, month)));
    return new MonthNote(
        header.month(),
        days,
        remarks.inOrder(),
        NoteLine.raw(lines, 0, firstDay),
        NoteLine.raw(lines, stop, lines.size()),
        NoteEnd.closes(lines));
  }

  /** The days with the words for their pages and their stories. */
  private List<NoteDay> days(List<DayEntry> entries, int stop, Optional<NoteColumns> table) {
    if (entries.isEmpty()) {
      return List.of();
    }
    List<Integer> starts = entries.stream().map(DayEntry::index).toList();
    int below = NoteEnd.below(lines, starts, stop);
    List<DayEntry> complete = new DayPages(lines, bases, remarks, table).complete(entries, below);
    List<Integer> lists = NoteEnd.listsBetween(lines, starts);
    Trimmings trimmings = new Trimmings(lines, entries, lists);
    remarks.onDays(complete);
    List<NoteDay> days = new ArrayList<>();
    for (int i = 0; i + 1 < complete.size(); i++) {
      int next = complete.get(i + 1).index();
      DayCandidate day = complete.get(i).day();
      int from = complete.get(i).index();
      lists.stream()
          .filter(line -> line > from && line < next)
          .forEach(line -> remarks.onListBelow(lines.get(line), day));
      days.add(trimmings.off(complete.get(i), next, OptionalInt.empty()).in(lines, next));
    }
    DayEntry last = trimmings.off(complete.get(complete.size() - 1), stop, OptionalInt.of(below));
    days.add(last.in(lines, stop));
    NoteEnd.paragraphBelow(lines, starts, stop)
        .ifPresent(
            line -> {
              if (!last.isCut(line)) {
                remarks.onParagraphBelow(lines.get(line), last.day());
              } else if (line == below && !NoteEnd.saysSo(lines, line, stop)) {
                remarks.onListBelow(lines.get(line), last.day());
              }
            });
    return days;
  }

  private DayLineReader reader(MonthHeader header) {
    Optional<Month> assumed =
        header.month().isPresent() ? Optional.empty() : MonthHeader.assumed(lines, names, planned);
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

  private int stop(List<DayEntry> entries) {
    int stop = NoteEnd.stop(lines, entries.get(entries.size() - 1).index());
    lines.stream()
        .skip(stop + 1L)
        .filter(line -> !line.text().isBlank())
        .findFirst()
        .ifPresent(remarks::onWordsBelowStop);
    return stop;
  }

  private List<DayEntry> entries(MonthHeader header, DayLineReader reader) {
    List<List<DayCandidate>> candidates = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      candidates.add(i == header.index() ? List.of() : reader.read(lines.get(i).text()));
    }
    List<Optional<DayCandidate>> read =
        DayOrder.decide(
            WeekHeading.within(lines, withoutStamps(candidates), reader),
            (int) lines.stream().filter(line -> !line.text().isBlank()).count());
    List<DayEntry> entries = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (read.get(i).isPresent()) {
        entries.add(new DayEntry(i, read.get(i).get()));
      } else if (!entries.isEmpty()) {
        DayEntry above = entries.get(entries.size() - 1);
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
    if (NoteEnd.isStop(lines.get(index))) {
      read.subList(index, read.size()).stream()
          .flatMap(Optional::stream)
          .findFirst()
          .ifPresent(day -> remarks.onEarlyStop(lines.get(index), day.first()));
    }
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
}
