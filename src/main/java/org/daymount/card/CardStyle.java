package org.daymount.card;

import java.util.Locale;

/**
 * How story cards look.
 *
 * @param fitted whether a card takes the place that is left on its page, instead of one size
 * @param rules whether lines to write on stand below a story that leaves room
 */
public record CardStyle(boolean fitted, Heading heading, boolean rules) {
  /** What stands at the top of a card. */
  public enum Heading {
    /** The day's number, the weekday and the date. */
    DATE,
    /** The day's number alone, so that a page can be moved to another month. */
    NUMBER,
    /** Nothing: the whole card is the story's. */
    NONE;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public static final CardStyle USUAL = new CardStyle(false, Heading.DATE, false);
}
