package org.daymount.look;

import java.util.Arrays;

/**
 * How much of a picture's detail another blur takes away (Crete et al., "The blur effect", SPIE
 * 6492, 2007, turned round so that more is crisper). A picture that is soft already loses little.
 */
final class Clarity {
  private static final int TAPS = 9; // as published

  private Clarity() {}

  /** 0 (soft, or nothing to see) to 1 (crisp), by the softer of the two directions. */
  static double of(Plane luma) {
    float[] taps = new float[TAPS];
    Arrays.fill(taps, 1f / TAPS);
    return Math.min(
        lost(luma, luma.acrossRows(taps), 1, 0), lost(luma, luma.downColumns(taps), 0, 1));
  }

  private static double lost(Plane luma, Plane reblurred, int dx, int dy) {
    double all = 0;
    double lost = 0;
    float[] before = luma.values();
    float[] after = reblurred.values();
    int back = dy * luma.width() + dx;
    for (int y = dy; y < luma.height(); y++) {
      int row = y * luma.width();
      for (int at = row + dx; at < row + luma.width(); at++) {
        double step = Math.abs(before[at] - before[at - back]);
        all += step;
        lost += Math.max(0, step - Math.abs(after[at] - after[at - back]));
      }
    }
    return all > 0 ? lost / all : 0;
  }
}
