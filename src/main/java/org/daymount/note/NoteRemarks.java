package org.daymount.note;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;

/** Collects what a person should know of how a note was read. */
final class NoteRemarks {
  private static final Pattern NUMBERED = Pattern.compile(" *(\\p{L}*) *(\\d{1,2}):(?!\\d).*");

  /** Of a line on which sizes are only named. */
  static final String NAMED_SIZES =
      "read with 3x4 for small photos, and 4x6 for large ones beside others";

  private static final double NO_DOUBT = 4; // "14 years ago" is a sentence
  private static final double WEAK = 0.5;

  private final List<NoteLine> lines;
  private final CalendarNames names;
  private final List<NoteRemark> remarks = new ArrayList<>();

  NoteRemarks(List<NoteLine> lines, CalendarNames names) {
    this.lines = lines;
    this.names = names;
  }

  List<NoteRemark> inOrder() {
    return remarks.stream().sorted().toList();
  }

  void addAll(List<NoteRemark> more) {
    remarks.addAll(more);
  }

  private void remark(NoteLine line, String text) {
    remarks.add(line.remark(text));
  }

  /** What was guessed of the days; a guess that the days around it bear out needs no word. */
  void onDays(List<DayEntry> days) {
    for (int i = 0; i < days.size(); i++) {
      DayCandidate day = days.get(i).day();
      boolean after = i == 0 || days.get(i - 1).day().last() + 1 == day.first();
      boolean before = i + 1 == days.size() || days.get(i + 1).day().first() == day.last() + 1;
      boolean alike =
          (i == 0 || days.get(i - 1).day().style().equals(day.style()))
              && (i + 1 == days.size() || days.get(i + 1).day().style().equals(day.style()));
      if (days.size() < 3 || !(day.settled() && after && before && alike)) {
        NoteLine line = lines.get(days.get(i).index());
        day.guess().ifPresent(guess -> remark(line, "'" + line.start() + "' is " + guess));
      }
    }
  }

  void onPageFirst(NoteLine line, DayCandidate day, PageSpec words) {
    remark(
        line,
        "'"
            + line.start()
            + "' is read with '"
            + PageSpecParser.text(words)
            + "' for the page, as most days of this note begin; if that is story, put a \\ before it");
  }

  void onSamePage(NoteLine line, String said, DayCandidate day, PageSpec words) {
    remark(
        line,
        "'"
            + said
            + "' is taken for the page of day "
            + day.last()
            + ": "
            + PageSpecParser.text(words));
  }

  void onNamedSizes(NoteLine line) {
    remark(line, "'" + line.start() + "' is " + NAMED_SIZES);
  }

  /** Page words that stand on a line of their own below their day. */
  void onWordsBelow(NoteLine line, DayCandidate day) {
    remark(line, "'" + line.start() + "' is taken for the page of day " + day.last());
  }

  void onWordsBehind(NoteLine line, String said, DayCandidate day) {
    remark(
        line,
        "'"
            + said
            + "' is taken for the page of day "
            + day.last()
            + " and stays in its story; put it before the story to take it out");
  }

  void onLeftOutBehind(NoteLine line, String said, DayCandidate day) {
    remark(
        line,
        "'"
            + said
            + "' leaves day "
            + day.last()
            + " out; its story is kept in the note and not printed");
  }

  void onParagraphBelow(NoteLine line, DayCandidate last) {
    remark(
        line,
        "this stands apart at the end and is printed with day "
            + last.last()
            + "; put a line 'stop' above it to keep it off the page");
  }

  void onListBelow(NoteLine line, DayCandidate last) {
    remark(
        line,
        "this list stands apart and is not printed; to print it, put it right below day "
            + last.last());
  }

  void onOtherMonth(NoteLine line) {
    String text = line.text();
    if (MonthHeader.monthOf(text, names).isPresent() && text.strip().split(" +").length <= 2) {
      remark(line, "a note holds one month, named at its top; this line is kept as story");
    }
  }

  void onEarlyStop(NoteLine line, int nextDay) {
    remark(
        line,
        "'"
            + line.start()
            + "' is kept as story, because day "
            + nextDay
            + " follows; to end the album here, take the days below it out");
  }

  void onWordsBelowStop(NoteLine line) {
    remark(line, "this stands below the end of the note; it is kept and not printed");
  }

  /** What might have been a day, and stays story all the same. */
  void onDoubt(NoteLine line, List<DayCandidate> candidates, DayEntry above) {
    candidates.stream()
        .filter(day -> day.inMonth() && day.doubt() < NO_DOUBT)
        .filter(
            day ->
                day.first() > above.day().last() ? day.strength() >= WEAK : day.style().equals(":"))
        .findFirst()
        .ifPresent(
            day -> {
              NoteRemark remark =
                  line.remark(
                      "kept as story of day "
                          + above.day().last()
                          + "; if it starts day "
                          + day.first()
                          + ", put a colon after the number");
              remarks.add(
                  new NoteRemark(
                      remark.line(), remark.column(), remark.text(), OptionalInt.of(day.first())));
            });
  }

  void onNoSuchDay(NoteLine line) {
    Matcher number = NUMBERED.matcher(line.text());
    if (number.matches()) {
      int day = Integer.parseInt(number.group(2));
      boolean named = number.group(1).isBlank() || names.monthAt(number.group(1), 0).isPresent();
      if (named && (day < 1 || day > 31)) {
        remark(line, "there is no day " + day + " in a month; kept as story");
      }
    }
  }

  void onOrder(List<DayEntry> all) {
    List<DayEntry> entries = all.stream().filter(each -> !each.day().isAfterthought()).toList();
    long falling =
        IntStream.range(1, entries.size())
            .filter(i -> entries.get(i).day().first() < entries.get(i - 1).day().last())
            .count();
    if (falling * 2 > entries.size()) {
      return; // a note that is kept with the newest day on top
    }
    for (int i = 1; i < entries.size(); i++) {
      DayCandidate day = entries.get(i).day();
      int above = entries.get(i - 1).day().last();
      if (day.inMonth() && day.first() < above) {
        remark(
            lines.get(entries.get(i).index()),
            "day "
                + day.first()
                + " stands below day "
                + above
                + "; if one of the two numbers belongs to a story, write it out or add a word");
      }
    }
  }

  void onPreamble(MonthHeader header, int firstDay, Optional<NoteColumns> table) {
    for (int i = 0; i < firstDay; i++) {
      NoteLine line = lines.get(i);
      String text = line.text().strip();
      boolean named = remarks.stream().anyMatch(remark -> remark.line() == line.number());
      boolean title = table.filter(columns -> columns.isTitle(line)).isPresent();
      if (i == header.index() || text.isEmpty() || text.startsWith("#") || named || title) {
        continue;
      }
      boolean monthAlone = MonthHeader.alone(text, names).isPresent();
      remark(
          line,
          monthAlone
              ? "the month needs a year, like June 2026; until then it is taken from the photos"
              : "this stands above the first day, so it belongs to none and is not printed; start"
                  + " the line with # to keep it as a note to yourself");
      return;
    }
  }

  static List<NoteRemark> repeated(List<NoteDay> days, Optional<YearMonth> month) {
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
                "day %d is there twice (line %d); the two are joined"
                    .formatted(day.name().day(), first)));
      }
    }
    return repeated;
  }
}
