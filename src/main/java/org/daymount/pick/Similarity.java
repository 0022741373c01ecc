package org.daymount.pick;

import org.daymount.look.AnalysedPhoto;

/** How nearly two pictures are the same to the eye. */
final class Similarity {
  private static final double SAME_BITS = 24; // at or below: one scene, whatever the gap in time
  private static final double OTHER_BITS = 52;
  private static final double SAME_COLOURS = 0.06;
  private static final double OTHER_COLOURS = 0.14;

  private Similarity() {}

  /** 0 for different pictures to 1 for nearly the same one. */
  static double between(AnalysedPhoto one, AnalysedPhoto other) {
    double bits = one.measures().fingerprint().bitsApart(other.measures().fingerprint());
    double colours = one.measures().fingerprint().coloursApart(other.measures().fingerprint());
    return ramp(bits, SAME_BITS, OTHER_BITS) * ramp(colours, SAME_COLOURS, OTHER_COLOURS);
  }

  private static double ramp(double value, double full, double none) {
    return Math.max(0, Math.min(1, (none - value) / (none - full)));
  }
}
