package org.daymount.note;

import java.util.ArrayList;
import java.util.List;
import org.daymount.album.PageSpec;

/**
 * A day where it starts.
 *
 * @param index of its line
 * @param words for its page
 * @param headingEnds index of the line on which the heading ends
 * @param storyFrom folded index on that line
 * @param cuts what of the lines is not printed
 */
record DayEntry(
    int index,
    DayCandidate day,
    PageSpec words,
    int headingEnds,
    int storyFrom,
    List<LineCut> cuts) {
  /**
   * A part of a line.
   *
   * @param line its index
   * @param from raw index
   * @param to raw index behind it
   */
  record LineCut(int line, int from, int to) {}

  DayEntry {
    cuts = List.copyOf(cuts);
  }

  DayEntry(int index, DayCandidate day) {
    this(index, day, day.words(), index, day.storyFrom(), List.of());
  }

  DayEntry with(PageSpec said) {
    return new DayEntry(index, day, said, headingEnds, storyFrom, cuts);
  }

  /** With words for the page up to there. */
  DayEntry with(PageSpec said, int line, int from) {
    return new DayEntry(index, day, said, line, from, cuts);
  }

  DayEntry with(NoteColumns.Row row) {
    DayEntry with =
        new DayEntry(index, day.withoutLeftOver(), row.words(), index, row.storyFrom(), List.of());
    for (NoteDay.Cut cut : row.cuts()) {
      with = with.without(index, cut.from(), cut.to());
    }
    return with;
  }

  /** Whether a line is not printed from its start on. */
  boolean isCut(int line) {
    return cuts.stream().anyMatch(cut -> cut.line() == line && cut.from() == 0);
  }

  DayEntry without(int line, int from, int to) {
    return without(List.of(new LineCut(line, from, to)));
  }

  DayEntry without(List<LineCut> more) {
    List<LineCut> all = new ArrayList<>(cuts);
    all.addAll(more);
    return new DayEntry(index, day, words, headingEnds, storyFrom, all);
  }

  /** The day with all its lines, exactly as typed. */
  NoteDay in(List<NoteLine> lines, int next) {
    NoteLine line = lines.get(headingEnds);
    int cut = line.folded().rawIndex(storyFrom);
    // All of the line belongs to the heading when no story starts on it.
    int end = line.content().substring(cut).isBlank() ? line.raw().length() : cut;
    int[] offsets = new int[next - headingEnds];
    for (int i = 1; i < offsets.length; i++) {
      offsets[i] = offsets[i - 1] + lines.get(headingEnds + i - 1).raw().length();
    }
    List<NoteDay.Cut> inStory =
        cuts.stream()
            .filter(each -> each.line() > headingEnds || each.to() > end)
            .map(
                each -> {
                  int at = offsets[each.line() - headingEnds] - end;
                  return new NoteDay.Cut(Math.max(0, at + each.from()), at + each.to());
                })
            .toList();
    return new NoteDay(
        day.names().get(0),
        day.names().subList(1, day.names().size()),
        words,
        lines.get(index).number(),
        NoteLine.raw(lines, index, headingEnds) + line.raw().substring(0, end),
        line.raw().substring(end) + NoteLine.raw(lines, headingEnds + 1, next),
        inStory);
  }
}
