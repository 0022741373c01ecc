package org.daymount.choices;

import java.util.Optional;

/**
 * A story written in the review.
 *
 * @param text empty text: the person took the story away
 * @param replaced the note's story at that time, so that a later edit of the note is noticed; empty
 *     when the note had none
 */
public record StoryChoice(String text, Optional<String> replaced, UnknownFields other) {
  public StoryChoice(String text, Optional<String> replaced) {
    this(text, replaced, UnknownFields.NONE);
  }
}
