package org.daymount.note;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.daymount.album.PageSpecParser;

/** What was read in a note, a line for each day and below them what was guessed. */
public final class NoteTable {
  private static final int STORY_WIDTH = 40; // characters
  private static final int SHORT_WIDTH = 28;

  private NoteTable() {}

  /**
   * What was read of one day line.
   *
   * @param days its day, or all of a range
   * @param line in the note, from 1
   * @param page in our words; empty for the usual page
   * @param story its first line; empty when there is none
   * @param taken what stands among the story and is not printed
   * @param guessed what the person should look at, in words
   */
  public record Row(
      String days, int line, String page, String story, List<String> taken, List<String> guessed) {
    public Row {
      taken = List.copyOf(taken);
      guessed = List.copyOf(guessed);
    }

    private String storyAndTaken(int width) {
      String words =
          taken.stream().map(text -> text.replace('\n', ' ')).collect(Collectors.joining(" "));
      return start(story, width)
          + (taken.isEmpty() ? "" : "  [not printed: " + start(words, width) + "]");
    }

    /** The page, where it is usual too. */
    public String pageInWords() {
      return page.isEmpty() ? "as usual" : page;
    }
  }

  /** A row for each day line, in the order of the note. */
  public static List<Row> rows(MonthNote note) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < note.days().size(); i++) {
      NoteDay day = note.days().get(i);
      int from = day.line();
      int to = i + 1 < note.days().size() ? note.days().get(i + 1).line() : Integer.MAX_VALUE;
      rows.add(
          new Row(
              days(day.names()),
              from,
              PageSpecParser.text(day.words()),
              day.story().map(text -> text.strip().split("\n", 2)[0]).orElse(""),
              day.taken(),
              note.remarks().stream()
                  .filter(
                      remark -> remark.line() == from || remark.line() > from && remark.line() < to)
                  .map(NoteRemark::toString)
                  .toList()));
    }
    return rows;
  }

  private static String days(List<PartialDate> names) {
    PartialDate first = names.get(0);
    PartialDate last = names.get(names.size() - 1);
    return names.size() > 2 && last.day() - first.day() + 1 == names.size()
        ? first + " to " + last
        : names.stream().map(PartialDate::toString).collect(Collectors.joining(", "));
  }

  /** Day, page, first words of the story and what was guessed, in columns. */
  public static List<String> lines(MonthNote note) {
    List<String> lines = new ArrayList<>();
    lines.add(note.month().map(NoteParser::name).orElse("no month named; the photos' is taken"));
    lines.addAll(table(rows(note), STORY_WIDTH));
    if (!note.ending().isEmpty()) {
      lines.add("the album ends here");
    }
    if (!note.remarks().isEmpty()) {
      lines.add("");
      lines.add("? guessed, or not understood:");
      note.remarks().forEach(remark -> lines.add("  " + remark));
    }
    return lines;
  }

  /** How much was read, in a line, and below it the days with something guessed. */
  public static List<String> shortLines(MonthNote note) {
    List<Row> rows = rows(note);
    List<String> lines = new ArrayList<>();
    long doubtful = rows.stream().filter(row -> !row.guessed().isEmpty()).count();
    lines.add(
        counted(note.days().stream().mapToLong(day -> day.names().size()).sum(), "day")
            + ", "
            + counted(rows.stream().filter(row -> !row.page().isEmpty()).count(), "page")
            + " asked for, "
            + (doubtful == 0
                ? "nothing had to be guessed"
                : counted(doubtful, "line") + " to look at:"));
    lines.addAll(
        table(rows.stream().filter(row -> !row.guessed().isEmpty()).toList(), SHORT_WIDTH));
    return lines;
  }

  private static String counted(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private static List<String> table(List<Row> rows, int storyWidth) {
    int days = width(rows.stream().map(Row::days).toList(), 14);
    int page = width(rows.stream().map(Row::pageInWords).toList(), 32);
    return rows.stream()
        .map(
            row ->
                ((row.guessed().isEmpty() ? "  " : "? ")
                        + padded(start(row.days(), 30), days)
                        + "  "
                        + padded(row.pageInWords(), page)
                        + "  "
                        + row.storyAndTaken(storyWidth))
                    .stripTrailing())
        .toList();
  }

  private static int width(List<String> texts, int most) {
    return Math.min(most, texts.stream().mapToInt(String::length).max().orElse(0));
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  private static String start(String text, int width) {
    return text.codePointCount(0, text.length()) <= width
        ? text
        : text.substring(0, text.offsetByCodePoints(0, width)) + "…";
  }
}
