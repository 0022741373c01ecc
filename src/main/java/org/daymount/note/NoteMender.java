package org.daymount.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Mends single lines of a note, so that they are read as the person says. Every other character
 * stays as typed.
 */
public final class NoteMender {
  private static final Pattern FIRST_NUMBER =
      Pattern.compile("(?U)^[^\\p{L}\\d]*(?:\\p{L}+\\.? +)?\\d{1,2}(?:st|nd|rd|th)?");

  /** A letter typed for a digit. */
  private static final Pattern SLIP =
      Pattern.compile("^([^\\p{L}\\d]*)(?:\\d[OoIl]|[OoIl]\\d|[Il][OoIl])(?![\\p{L}\\d])");

  private static final Pattern WORD = Pattern.compile("[\\p{L}\\d]");
  private static final Pattern LAST_BREAK = Pattern.compile("(\\r\\n|\\r|\\n)\\s*$");

  private final Function<String, MonthNote> reader;

  /**
   * @param reader the parser with all that it is told in this run
   */
  public NoteMender(Function<String, MonthNote> reader) {
    this.reader = reader;
  }

  /**
   * The note with the line as the start of a day.
   *
   * @param line from 1
   * @return empty when no way of writing it makes the parser read it so
   */
  public Optional<String> asDay(String text, int line, int day) {
    return lines(text)
        .filter(lines -> line >= 1 && line <= lines.size())
        .flatMap(
            lines -> {
              String typed = lines.get(line - 1);
              List<String> ways = new ArrayList<>();
              Matcher slip = SLIP.matcher(typed);
              if (slip.find()) {
                ways.add(slip.group(1) + day + ":" + typed.substring(slip.end()));
              }
              Matcher number = FIRST_NUMBER.matcher(typed);
              if (number.find()) {
                ways.add(typed.substring(0, number.end()) + ":" + typed.substring(number.end()));
              }
              ways.add(day + ": " + typed);
              return ways.stream()
                  .map(way -> with(lines, line, way))
                  .filter(mended -> startsDay(reader.apply(mended), line, day))
                  .findFirst();
            });
  }

  /** The note with the line as story, by a backslash before it. */
  public Optional<String> asStory(String text, int line) {
    return lines(text)
        .filter(lines -> line >= 1 && line <= lines.size())
        .map(lines -> with(lines, line, "\\" + lines.get(line - 1)))
        .filter(
            mended -> reader.apply(mended).days().stream().noneMatch(day -> day.line() == line));
  }

  /**
   * The note with all that was taken off a day's card as its story, by a backslash before it.
   *
   * @param line that starts the day, from 1
   */
  public Optional<String> asPrinted(String text, int line) {
    Optional<NoteDay> day = dayAt(text, line);
    int start =
        lines(text).stream().flatMap(List::stream).limit(line - 1L).mapToInt(String::length).sum();
    if (day.isEmpty() || !text.startsWith(day.get().heading(), start)) {
      return Optional.empty(); // a part of a line with several days
    }
    StringBuilder mended = new StringBuilder(text);
    List<NoteDay.Cut> cuts = day.get().cuts();
    for (int i = cuts.size() - 1; i >= 0; i--) {
      int from = start + day.get().heading().length() + cuts.get(i).from();
      Matcher word = WORD.matcher(text).region(from, from + cuts.get(i).to() - cuts.get(i).from());
      if (word.find()) {
        mended.insert(word.start(), '\\');
      }
    }
    return Optional.of(mended.toString())
        .filter(all -> dayAt(all, line).filter(read -> read.taken().isEmpty()).isPresent());
  }

  private Optional<NoteDay> dayAt(String text, int line) {
    return reader.apply(text).days().stream().filter(day -> day.line() == line).findFirst();
  }

  /** The note ended behind its last day. */
  public String stopped(String text) {
    String newline = text.contains("\r\n") ? "\r\n" : "\n";
    return (LAST_BREAK.matcher(text).find() ? text : text + newline) + "stop" + newline;
  }

  private static boolean startsDay(MonthNote note, int line, int day) {
    return note.days().stream().anyMatch(each -> each.line() == line && each.name().day() == day);
  }

  private static Optional<List<String>> lines(String text) {
    List<String> lines = NoteLine.of(text).stream().map(NoteLine::raw).toList();
    return lines.isEmpty() ? Optional.empty() : Optional.of(lines);
  }

  private static String with(List<String> lines, int line, String mended) {
    List<String> all = new ArrayList<>(lines);
    all.set(line - 1, mended);
    return String.join("", all);
  }
}
