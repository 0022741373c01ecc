package org.daymount.image;

/**
 * How much lighter pictures are printed than they are.
 *
 * @param stops of exposure (EV), 0 to 1: doubles the light of dark and middle tones at 1
 */
public record Lightening(double stops) {
  public static final Lightening NONE = new Lightening(0);
  private static final double SHOULDER = 0.5;

  public Lightening {
    if (!(stops >= 0 && stops <= 1)) {
      throw new IllegalArgumentException(
          "prints are made lighter by 0 to 1 stop, such as 1/3, not by " + stops);
    }
  }

  public boolean isNone() {
    return stops == 0;
  }

  /**
   * Light after lightening, of a linear light from 0 to 1. Up to half of all light it grows by the
   * stops; from there on it bends, ever flatter, to reach 1 at 1: black and white stay.
   */
  double of(double light) {
    double gain = Math.pow(2, stops);
    double bend = SHOULDER / gain;
    if (light <= bend) {
      return gain * light;
    }
    double along = (light - bend) / (1 - bend);
    double steep = gain * (1 - bend) / (1 - SHOULDER); // both parts have one slope where they meet
    return SHOULDER + (1 - SHOULDER) * steep * along / (1 + (steep - 1) * along);
  }
}
