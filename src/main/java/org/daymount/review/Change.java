package org.daymount.review;

import java.time.LocalDate;
import java.util.Optional;
import org.daymount.choices.Choices;

/**
 * One thing a person changed.
 *
 * @param words for the undo button: "picture on 3 June"
 * @param session changes of one kind that follow each other in one session (a word being typed, a
 *     crop being dragged) are undone together; empty: on its own
 * @param where it is seen
 */
record Change(Choices choices, String words, String session, Where where) {

  /**
   * Where a change is seen.
   *
   * @param day empty when it is not one day's
   * @param part of the day's view: space0 and so on, story, or page
   */
  record Where(Optional<LocalDate> day, String part) {
    static final Where ANYWHERE = new Where(Optional.empty(), "");
  }
}
