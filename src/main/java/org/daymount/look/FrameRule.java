package org.daymount.look;

/**
 * When one frame of a burst may be preferred to another. The numbers were chosen by looking at
 * bursts; they have no source.
 */
public final class FrameRule {
  private static final double CLEARLY_SHARPER = 1.15; // below this ratio the light may decide
  private static final double CLEARLY_LIGHTER = 0.1; // of an exposure from 0 to 1

  private FrameRule() {}

  /** Whether a frame is sharper than another or so little softer that nobody would see it. */
  public static boolean isAboutAsSharp(double sharpness, double other) {
    return sharpness * CLEARLY_SHARPER >= other;
  }

  /** Whether a person would see that a frame is better exposed. */
  public static boolean isBetterLit(Measures frame, Measures other) {
    return frame.exposure() - other.exposure() >= CLEARLY_LIGHTER;
  }
}
