package org.daymount.note;

import java.util.List;
import java.util.Optional;
import org.daymount.album.PageSpec;

/**
 * One way to read a line as the start of a day.
 *
 * @param names the days it is for; one, or all of a range or a list
 * @param style how the day is written, so that a note's own habit can be told
 * @param strength what it costs to take the line for story all the same
 * @param doubt what it costs to take the line for a day
 * @param inMonth whether its numbers count in the order of the note
 * @param mayRepeat whether the day may stand there again, as in a chat
 * @param nameEnd folded index behind the day's name
 * @param storyFrom folded index at which the story starts
 * @param guess what was guessed, in words
 * @param settled whether the guess needs no word where the days around it agree
 */
record DayCandidate(
    List<PartialDate> names,
    String style,
    double strength,
    double doubt,
    boolean inMonth,
    boolean mayRepeat,
    PageSpec words,
    int nameEnd,
    int storyFrom,
    Optional<String> guess,
    boolean settled) {
  /** How the guess about a word behind words for the page begins. */
  static final String LEFT_OVER = "read up to ";

  private static final String AFTERTHOUGHT = "afterthought ";

  /** Whether more than a number says that it is a day. */
  boolean isExplicit() {
    return names.get(0).month().isPresent()
        || names.get(0).weekday().isPresent()
        || style.contains("day");
  }

  /** Where a table says what is page and what is story. */
  DayCandidate withoutLeftOver() {
    return changed(
        names, style, strength, words, guess.filter(text -> !text.startsWith(LEFT_OVER)));
  }

  /** With words for the page that stand before the day. */
  DayCandidate with(PageSpec said) {
    return changed(
        names, "page-first " + style, strength + 3, words.saysNothing() ? said : words, guess);
  }

  /** Said later than its day's turn, so that it does not count in the order. */
  DayCandidate asAfterthought() {
    return changed(names, AFTERTHOUGHT + style, strength + 3, words, guess);
  }

  /** The same line, if it is that day's. */
  DayCandidate on(int day) {
    return changed(List.of(PartialDate.of(day)), style, strength, words, guess);
  }

  private DayCandidate changed(
      List<PartialDate> days,
      String written,
      double sure,
      PageSpec page,
      Optional<String> guessed) {
    return new DayCandidate(
        days,
        written,
        sure,
        doubt,
        inMonth,
        mayRepeat || written.startsWith(AFTERTHOUGHT),
        page,
        nameEnd,
        storyFrom,
        guessed,
        settled);
  }

  /** Whether a chat's stamp is all that names it. */
  boolean isStamp() {
    return style.startsWith("stamp ");
  }

  boolean isAfterthought() {
    return style.startsWith(AFTERTHOUGHT);
  }

  boolean isNextDay() {
    return style.contains(DayName.NEXT_DAY);
  }

  /** The last before the first gap: {@code 18, 20}, and 19 may yet come. */
  int lastInRow() {
    int last = first();
    for (PartialDate name : names) {
      last = name.day() == last + 1 ? name.day() : last;
    }
    return last;
  }

  int first() {
    return names.get(0).day();
  }

  int last() {
    return names.get(names.size() - 1).day();
  }
}
