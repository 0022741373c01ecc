package org.daymount.photo;

import java.util.Locale;
import org.daymount.unit.PixelSize;

/** The outline of an upright picture. */
public enum Shape {
  LANDSCAPE,
  PORTRAIT,
  SQUARE,
  PANORAMA;

  private static final double NEARLY_SQUARE = 1.05;
  private static final double LONG_AND_NARROW = 2.4; // beyond the 21:9 that phones film in

  public static Shape of(PixelSize upright) {
    double ratio = upright.longEdge() / (double) upright.shortEdge();
    if (ratio >= LONG_AND_NARROW) {
      return PANORAMA;
    }
    if (ratio <= NEARLY_SQUARE) {
      return SQUARE;
    }
    return upright.width() > upright.height() ? LANDSCAPE : PORTRAIT;
  }

  /** The word used in month.json. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
