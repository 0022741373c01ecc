package org.daymount.look;

/**
 * How well a picture is lit: the entropy of its tones, less what is burnt out, what is blocked up
 * and how far the middle tone lies from where it should. Weights found on ladders of -2 to +2 EV.
 */
final class Exposure {
  private static final int BINS = 64;
  private static final double ENTROPY_MOST = 6; // bits in 64 bins
  private static final int BURNT_FROM = 250;
  private static final int BLOCKED_TO = 6;
  private static final double BURNT_ALLOWED = 0.005;
  private static final double BURNT_COSTS = 1.5;
  private static final double BLOCKED_ALLOWED = 0.02;
  private static final double BLOCKED_COSTS = 0.75;
  private static final double MIDDLE = 0.45;
  private static final double MIDDLE_ALLOWED = 0.15;
  private static final double MIDDLE_COSTS = 0.6;

  private Exposure() {}

  /**
   * 0 to 1. The sum runs from -1.75 (all white) to 1 (all tones alike); below 0 a picture is past
   * use, so everything there is 0.
   */
  static double of(Plane luma) {
    int[] tones = new int[256];
    for (float value : luma.values()) {
      tones[Math.max(0, Math.min(255, Math.round(value)))]++;
    }
    double pixels = luma.values().length;
    double burnt = share(tones, BURNT_FROM, 255, pixels);
    double blocked = share(tones, 0, BLOCKED_TO, pixels);
    double off = Math.abs(median(tones, pixels) / 255.0 - MIDDLE);
    double sum =
        entropy(tones, pixels) / ENTROPY_MOST
            - BURNT_COSTS * Math.max(0, burnt - BURNT_ALLOWED)
            - BLOCKED_COSTS * Math.max(0, blocked - BLOCKED_ALLOWED)
            - MIDDLE_COSTS * Math.max(0, off - MIDDLE_ALLOWED);
    return Math.max(0, Math.min(1, sum));
  }

  private static double share(int[] tones, int from, int to, double pixels) {
    long count = 0;
    for (int tone = from; tone <= to; tone++) {
      count += tones[tone];
    }
    return count / pixels;
  }

  private static int median(int[] tones, double pixels) {
    long below = 0;
    int tone = 0;
    while (below + tones[tone] < pixels / 2) {
      below += tones[tone++];
    }
    return tone;
  }

  private static double entropy(int[] tones, double pixels) {
    int wide = tones.length / BINS;
    double bits = 0;
    for (int bin = 0; bin < BINS; bin++) {
      double share = share(tones, bin * wide, bin * wide + wide - 1, pixels);
      if (share > 0) {
        bits -= share * Math.log(share) / Math.log(2);
      }
    }
    return bits;
  }
}
