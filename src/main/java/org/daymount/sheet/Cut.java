package org.daymount.sheet;

import java.util.List;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;

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
    Y
  }

  /** Whether it cuts this part from edge to edge. */
  public boolean runsThrough(PaperBox part) {
    return axis == Axis.X
        ? from.equals(part.y())
            && to.equals(part.bottom())
            && at.isLongerThan(part.x())
            && part.right().isLongerThan(at)
        : from.equals(part.x())
            && to.equals(part.right())
            && at.isLongerThan(part.y())
            && part.bottom().isLongerThan(at);
  }

  /** What it leaves of a part that it runs through: left and right, or top and bottom. */
  public List<PaperBox> halves(PaperBox part) {
    return axis == Axis.X
        ? List.of(
            new PaperBox(part.x(), part.y(), at.minus(part.x()), part.height()),
            new PaperBox(at, part.y(), part.right().minus(at), part.height()))
        : List.of(
            new PaperBox(part.x(), part.y(), part.width(), at.minus(part.y())),
            new PaperBox(part.x(), at, part.width(), part.bottom().minus(at)));
  }
}
