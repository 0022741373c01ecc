package org.daymount.album;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What one day's page side is to hold.
 *
 * @param spaces in the order of the page; empty unless {@code kind} is {@link Kind#PICTURES}
 * @param story the day's text as the person wrote it, lines joined by '\n'
 * @param form of the page, when the person said it; a ready-made page's spaces are these
 * @param storyCard whether a card for the story was asked for in so many words
 */
public record DayPage(
    LocalDate day,
    Kind kind,
    List<Space> spaces,
    Optional<String> story,
    Optional<PageForm> form,
    boolean storyCard) {
  /** Whether the day has pictures, a page without one, or no page at all. */
  public enum Kind {
    PICTURES,
    NO_PHOTO,
    LEFT_OUT
  }

  /** A page of which nothing but its spaces was said. */
  public DayPage(LocalDate day, Kind kind, List<Space> spaces, Optional<String> story) {
    this(day, kind, spaces, story, Optional.empty(), false);
  }

  public DayPage {
    spaces = List.copyOf(spaces);
    if (spaces.isEmpty() == (kind == Kind.PICTURES)) {
      throw new IllegalArgumentException(day + ": " + kind + " with " + spaces.size() + " spaces");
    }
  }

  /** The name of the ready-made page, if it is one. */
  public Optional<String> base() {
    return form.flatMap(PageForm::base);
  }

  /** Other spaces; a ready-made page stays one only with its own. */
  public DayPage withSpaces(List<Space> others) {
    return new DayPage(
        day,
        kind,
        others,
        story,
        form.filter(said -> said.kind() != PageForm.Kind.BASE || others.equals(spaces)),
        storyCard);
  }

  /** The same spaces by other names or directions. */
  public DayPage mapped(UnaryOperator<Space> change) {
    return new DayPage(day, kind, spaces.stream().map(change).toList(), story, form, storyCard);
  }

  public DayPage withStory(Optional<String> told) {
    return new DayPage(day, kind, spaces, told, form, storyCard);
  }
}
