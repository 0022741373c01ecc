package org.daymount.image.jpeg;

/**
 * The strips of a progressive picture, from the top down. One whose numbers can be held at once is
 * a single strip; of others the file is gone through once for each.
 */
final class ProgressiveStrips {
  /** Held at once, 2 bytes each. */
  private static final long MOST_COEFFICIENTS = 30_000_000;

  private final Frame frame;
  private final UnitWindow wanted;
  private final ScaledIdct cells;
  private final int rows;
  private int top;

  /** Takes the memory for one strip, and begins with the first. */
  ProgressiveStrips(Frame frame, UnitWindow wanted, ScaledIdct cells) {
    this.frame = frame;
    this.wanted = wanted;
    this.cells = cells;
    long unitRow = frame.blocks(wanted.across(), 1) * ProgressiveBlocks.needed(cells);
    this.rows =
        (int) Math.max(1, Math.min(wanted.down(), MOST_COEFFICIENTS / Math.max(1, unitRow)));
    for (Component component : frame.components()) {
      component.allocateBlocks(cells, frame.unitsAcross(), frame.unitsDown(), rows);
    }
    begin(wanted.top());
  }

  private void begin(int from) {
    top = from;
    frame.components().forEach(component -> component.beginStrip(top, bottom()));
  }

  private int bottom() {
    return Math.min(wanted.bottom(), top + rows);
  }

  /**
   * Once all scans were read: makes the strip's pixels, and begins the next.
   *
   * @return whether that was the last
   */
  boolean finish() {
    int bottom = bottom();
    for (Component component : frame.components()) {
      if (component.isScanned()) {
        component.finishStrip(cells, top, bottom);
      }
    }
    if (bottom >= wanted.bottom()) {
      return true;
    }
    begin(bottom);
    return false;
  }
}
