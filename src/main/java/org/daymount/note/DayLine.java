package org.daymount.note;

import java.util.List;
import java.util.Optional;
import org.daymount.album.PageSpec;

/**
 * What one line of a note turned out to be.
 *
 * @param day empty for a line of story
 * @param storyFrom folded index at which the story starts on a day line
 * @param bareNumber the number a line of story starts with, when that might have been meant as a
 *     day
 */
record DayLine(Optional<Day> day, int storyFrom, Optional<Integer> bareNumber, List<Spot> spots) {
  record Day(PartialDate name, PageSpec words) {}

  /** A remark at a folded index of the line. */
  record Spot(int at, String text) {}

  static DayLine story(List<Spot> spots) {
    return new DayLine(Optional.empty(), 0, Optional.empty(), List.copyOf(spots));
  }

  static DayLine perhaps(int number) {
    return new DayLine(Optional.empty(), 0, Optional.of(number), List.of());
  }
}
