package org.daymount.sample;

/** The skin of whatever a ray met: linear colour and how it takes light. Reused between pixels. */
final class Surface {
  double red;
  double green;
  double blue;

  /** Strength of the highlight, 0 to 1. */
  double gloss;

  /** Light given off, as a multiple of the colour. */
  double glow;

  /** How far light wraps round it, as in skin, petals and wax: 0 to 1. */
  double soft;

  void dye(double[] linear) {
    red = linear[0];
    green = linear[1];
    blue = linear[2];
    gloss = 0;
    glow = 0;
    soft = 0;
  }

  void mix(double[] linear, double share) {
    double s = Math.max(0, Math.min(1, share));
    red += (linear[0] - red) * s;
    green += (linear[1] - green) * s;
    blue += (linear[2] - blue) * s;
  }

  void times(double factor) {
    red *= factor;
    green *= factor;
    blue *= factor;
  }
}
