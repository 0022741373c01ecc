package org.daymount.image;

import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Which pixels of a stored picture are decoded for a window, and how the window lies among them.
 *
 * <p>Of a very large window only every {@code period}th row and column is kept, so that no more
 * than about {@value #MOST_PIXELS} pixels are in memory; twice the target is kept whatever that
 * takes, so only windows of at least four times the target each way are thinned. Of each cell the
 * middle pixel is the one kept; in a cell with an even number of pixels that is half a pixel past
 * the centre, which the taps allow for, so that nothing shifts. Cells start at the picture's own
 * corner: windows that meet share their cells.
 *
 * @param region to decode, in stored pixels: the window and what the filter needs around it
 * @param period one kept pixel stands for a cell of this many pixels each way
 */
record DecodeRegion(PixelBox window, PixelSize target, PixelBox region, int period) {
  /** Decoded pixels held at once, at 3 bytes each: a 12 megapixel phone photo is read in full. */
  private static final long MOST_PIXELS = 24_000_000;

  private static final int LEAST_OVER_TARGET = 2;

  static DecodeRegion of(PixelSize stored, PixelBox window, PixelSize target) {
    int period = period(window, target);
    int across = Lanczos.reach(window.width() / (double) target.width() / period) * period;
    int down = Lanczos.reach(window.height() / (double) target.height() / period) * period;
    PixelBox wanted = window.grown(across, down, across, down);
    PixelBox cells =
        PixelBox.edges(
            Math.floorDiv(wanted.x(), period) * period,
            Math.floorDiv(wanted.y(), period) * period,
            -Math.floorDiv(-wanted.right(), period) * period,
            -Math.floorDiv(-wanted.bottom(), period) * period);
    return new DecodeRegion(window, target, cells.within(stored), period);
  }

  private static int period(PixelBox window, PixelSize target) {
    int most =
        Math.min(
            window.width() / (LEAST_OVER_TARGET * target.width()),
            window.height() / (LEAST_OVER_TARGET * target.height()));
    int period = 1;
    while (window.area() / ((long) period * period) > MOST_PIXELS && period < most) {
      period++;
    }
    return period;
  }

  /** How many pixels of a cell lie before the one that is kept. */
  int offset() {
    return period / 2;
  }

  LanczosTaps across(int keptPixels) {
    return taps(keptPixels, window.x() - region.x(), window.width(), target.width());
  }

  LanczosTaps down(int keptPixels) {
    return taps(keptPixels, window.y() - region.y(), window.height(), target.height());
  }

  private LanczosTaps taps(int keptPixels, int start, int length, int targetPixels) {
    double pastCentre = offset() + 0.5 - period / 2.0;
    return new LanczosTaps(
        keptPixels, (start - pastCentre) / period, length / (double) period, targetPixels);
  }
}
