package org.daymount.album;

import java.util.List;
import java.util.Optional;

/**
 * What a person said about one page.
 *
 * @param spaces in the order they were said; none: the default spaces. One without a size changes
 *     the default spaces, or is {@link WantedSpace#PHOTO}; several without a size divide the page
 * @param form of the page, when it was said
 * @param storyCard whether a card for the story was asked for in so many words
 */
public record PageSpec(
    DayPage.Kind kind, List<WantedSpace> spaces, Optional<PageForm> form, boolean storyCard) {
  /** Nothing was said: pictures, in the default spaces. */
  public static final PageSpec NONE = new PageSpec(DayPage.Kind.PICTURES, List.of());

  public PageSpec {
    spaces = List.copyOf(spaces);
    if (kind != DayPage.Kind.PICTURES && !spaces.isEmpty()) {
      throw new IllegalArgumentException("a page of kind " + kind + " has no spaces");
    }
  }

  /** Spaces alone, of a page whose form was not said. */
  public PageSpec(DayPage.Kind kind, List<WantedSpace> spaces) {
    this(kind, spaces, Optional.empty(), false);
  }

  /** With what was said of the page elsewhere, where this says nothing of it. */
  public PageSpec plus(PageSpec more) {
    return new PageSpec(
        kind,
        spaces.isEmpty() ? more.spaces() : spaces,
        form.or(more::form),
        storyCard || more.storyCard());
  }

  /** Whether photos are asked for, or a card for the story, and not the other. */
  public boolean isHalf() {
    return kind == DayPage.Kind.PICTURES && spaces.isEmpty() == storyCard;
  }

  /** Whether the other says of photos and card what this leaves open. */
  public boolean lacks(PageSpec other) {
    return isHalf()
        && other.isHalf()
        && other.form().isEmpty()
        && spaces.isEmpty() != other.spaces().isEmpty();
  }

  public boolean saysNothing() {
    return equals(NONE);
  }

  /** Whether a number of photos was said for which the page has yet to be divided. */
  public boolean dividesPage() {
    boolean unsized = spaces.stream().anyMatch(space -> space.size().isEmpty());
    return unsized && (spaces.size() > 1 || spaces.get(0).equals(WantedSpace.PHOTO));
  }
}
