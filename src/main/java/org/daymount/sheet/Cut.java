package org.daymount.sheet;

import java.util.Locale;
import org.daymount.unit.Length;

/**
 * One straight cut from edge to edge of the paper in hand.
 *
 * @param axis {@link Axis#X}: the cut runs up and down at x = {@code at}; {@link Axis#Y}: it runs
 *     across at y = {@code at}
 * @param at distance from the sheet's left (x) or top (y) edge
 * @param from where the cut starts, along the other axis
 * @param to where it ends
 */
public record Cut(Axis axis, Length at, Length from, Length to) {
  /** The coordinate that a cut keeps. */
  public enum Axis {
    X,
    Y;

    /** The word used in month.json. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
