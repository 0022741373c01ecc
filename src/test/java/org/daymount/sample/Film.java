package org.daymount.sample;

import java.awt.image.BufferedImage;

/** From linear light to the picture a phone would save: exposure, warmth, vignette, grain. */
final class Film {
  private static final int STEPS = 4096;
  private static final byte[] CURVE = curve();

  private Film() {}

  private static byte[] curve() {
    byte[] table = new byte[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      double v = (double) i / STEPS;
      // IEC 61966-2-1 transfer function
      double s = v <= .0031308 ? v * 12.92 : 1.055 * StrictMath.pow(v, 1 / 2.4) - .055;
      table[i] = (byte) Math.round(s * 255);
    }
    return table;
  }

  /**
   * @param grain standard deviation of the noise in steps of 256
   */
  static BufferedImage develop(Exposure e, double exposure, double grain, int seed) {
    BufferedImage image = new BufferedImage(e.width, e.height, BufferedImage.TYPE_INT_RGB);
    int[] row = new int[e.width];
    double mx = e.width / 2.0;
    double my = e.height / 2.0;
    double corner = mx * mx + my * my;
    for (int y = 0; y < e.height; y++) {
      for (int x = 0; x < e.width; x++) {
        int at = y * e.width + x;
        double fall = 1 - .2 * ((x - mx) * (x - mx) + (y - my) * (y - my)) / corner;
        double k = exposure * fall;
        double r = tone(e.red[at] * k);
        double g = tone(e.green[at] * k);
        double b = tone(e.blue[at] * k);
        double noise =
            Noise.hash(x, y, seed)
                + Noise.hash(x, y, seed + 1)
                - 1
                + (Noise.hash(x >> 1, y >> 1, seed + 2) - .5);
        double strength = grain / 255 * 2.0;
        int colour = (int) ((Noise.hash(x >> 1, y >> 1, seed + 3) - .5) * grain * 1.2);
        row[x] =
            level(r, noise * strength, colour) << 16
                | level(g, noise * strength, 0) << 8
                | level(b, noise * strength, -colour);
      }
      image.setRGB(0, y, e.width, 1, row, 0, e.width);
    }
    return image;
  }

  /** A gentle shoulder, so that skies and lamps do not clip hard, and a little contrast. */
  private static double tone(double v) {
    double s = v * (1 + v * .12) / (1 + v * .62);
    double c = Math.max(0, s * 1.06 - .006);
    return c / (1 + Math.max(0, c - .8) * .6);
  }

  private static int level(double v, double noise, int shift) {
    int i = (int) (Math.max(0, Math.min(1, v)) * STEPS);
    int base = CURVE[i] & 255;
    double dim = base < 12 ? base / 12.0 : 1;
    int value = (int) Math.round(base + noise * 255 * dim + shift * dim);
    return Math.max(0, Math.min(255, value));
  }
}
