package org.daymount.note;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.daymount.album.PageSpecParser;

/** What was read in a note, a line for each day and below them what was guessed. */
public final class NoteTable {
  private static final int PAGE_WIDTH = 28; // characters
  private static final int STORY_WIDTH = 40;

  private NoteTable() {}

  /** Day, page and first words of the story, in columns. */
  public static List<String> lines(MonthNote note) {
    List<String> lines = new ArrayList<>();
    lines.add(note.month().map(NoteParser::name).orElse("no month named; the photos' is taken"));
    for (NoteDay day : note.days()) {
      String names =
          day.names().stream().map(PartialDate::toString).collect(Collectors.joining(", "));
      String page = PageSpecParser.text(day.words());
      String story = day.story().map(text -> text.strip().split("\n", 2)[0]).orElse("");
      boolean guessed = note.remarks().stream().anyMatch(remark -> remark.line() == day.line());
      lines.add(
          String.format(
                  "%s %-12s  %-" + PAGE_WIDTH + "s  %s",
                  guessed ? "?" : " ",
                  names,
                  page.isEmpty() ? "as usual" : page,
                  start(story))
              .stripTrailing());
    }
    note.remarks().forEach(remark -> lines.add(remark.toString()));
    return lines;
  }

  private static String start(String story) {
    return story.codePointCount(0, story.length()) <= STORY_WIDTH
        ? story
        : story.substring(0, story.offsetByCodePoints(0, STORY_WIDTH)) + "…";
  }
}
