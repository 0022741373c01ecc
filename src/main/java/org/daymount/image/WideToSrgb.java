package org.daymount.image;

/**
 * Colours of more light or more saturation than sRGB has, to sRGB: HLG and PQ (Rec. ITU-R
 * BT.2100-2, tables 4 and 5), and BT.2020 primaries.
 *
 * <p>HLG is shown as on a display of 1,000 cd/m², for which its standard is written; PQ as if it
 * was graded on one, which is common practice and not read from the file. 203 cd/m² is white
 * (Report BT.2408-5, 2.1); what is brighter is rolled off by the curve of Report BT.2390-10, 5.4.1,
 * on the largest of red, green and blue, so that hues stay. Colours outside sRGB are clipped.
 */
final class WideToSrgb implements SampleConversion {
  static final double WHITE = 203; // cd/m²
  static final double PEAK = 1000; // cd/m²

  private static final int PQ = 16; // ITU-T H.273, table 3
  private static final int HLG = 18;
  private static final int P3 = 12;
  private static final int STEPS = 4096;

  private static final double[] BT2020_LIGHT = {0.2627, 0.6780, 0.0593}; // BT.2100, table 6

  /** BT.2020 to BT.709, linear (Rec. ITU-R BT.2087-0, annex 1, inverted: BT.2407-0, 2.2). */
  private static final double[] FROM_BT2020 = {
    1.6605, -0.5876, -0.0728, -0.1246, 1.1329, -0.0083, -0.0182, -0.1006, 1.1187
  };

  /** Display P3 to sRGB, linear (W3C CSS Color 4, 10.4 with 10.2). */
  private static final double[] FROM_P3 = {
    1.2249, -0.2249, 0, -0.0420, 1.0420, 0, -0.0196, -0.0786, 1.0983
  };

  private static final double[] AS_IT_IS = {1, 0, 0, 0, 1, 0, 0, 0, 1};

  private final boolean hlg;
  private final boolean rolled;
  private final float[] toRgb; // of cb and cr: red of cr, green of cb, green of cr, blue of cb
  private final float[] luma;
  private final float middle; // of a colour difference, in sixteenths of a step
  private final float step; // that sixteenth, 1 for the whole signal
  private final float[] linear = new float[STEPS];
  private final float[] scenePower = new float[STEPS]; // by the root of the scene's light
  private final float[] gain = new float[STEPS]; // by the root of light over the peak
  private final byte[] coded = new byte[STEPS]; // by the root of light over white
  private final float[] primaries = new float[9];

  static boolean isNeeded(Cicp colour) {
    return colour.matrix() != 0 // those are coded as red, green and blue
        && (colour.transfer() == PQ || colour.transfer() == HLG || colour.primaries() == BT2020);
  }

  WideToSrgb(Cicp colour, int bits) {
    hlg = colour.transfer() == HLG;
    rolled = hlg || colour.transfer() == PQ;
    int levels = 1 << bits;
    double unit = 1 << bits - 8;
    boolean full = colour.fullRange();
    luma = new float[levels];
    middle = PARTS * levels / 2f;
    step = (float) (1.0 / PARTS / (full ? levels - 1.0 : 224 * unit));
    for (int i = 0; i < levels; i++) {
      luma[i] = (float) (full ? i / (levels - 1.0) : (i - 16 * unit) / (219 * unit));
    }
    double kr = colour.matrix() == BT2020 ? 0.2627 : colour.matrix() == 1 ? 0.2126 : 0.299;
    double kb = colour.matrix() == BT2020 ? 0.0593 : colour.matrix() == 1 ? 0.0722 : 0.114;
    double kg = 1 - kr - kb;
    toRgb =
        new float[] {
          (float) (2 * (1 - kr)),
          (float) (-2 * (1 - kb) * kb / kg),
          (float) (-2 * (1 - kr) * kr / kg),
          (float) (2 * (1 - kb))
        };
    for (int i = 0; i < STEPS; i++) {
      double signal = i / (STEPS - 1.0);
      linear[i] = (float) light(signal, colour.transfer());
      scenePower[i] = (float) Math.pow(signal * signal, 0.2); // gamma 1.2 less 1, BT.2100 note 5f
      double shown = Math.max(1e-6, signal * signal) * PEAK;
      gain[i] = (float) (rolledOff(shown) / shown);
      coded[i] = (byte) Math.round(255 * SrgbCurve.sample(signal * signal));
    }
    double[] matrix =
        switch (colour.primaries()) {
          case BT2020 -> FROM_BT2020;
          case P3 -> FROM_P3;
          default -> AS_IT_IS;
        };
    for (int i = 0; i < 9; i++) {
      primaries[i] = (float) matrix[i];
    }
  }

  /** Of HLG the scene's light, 0 to 1; else what is shown, in cd/m². */
  private static double light(double signal, int transfer) {
    return switch (transfer) {
      case HLG -> hlgScene(signal);
      case PQ -> pqLight(signal);
      default -> WHITE * SrgbCurve.light(signal);
    };
  }

  /** Inverse OETF of HLG (BT.2100, table 5). */
  static double hlgScene(double signal) {
    double a = 0.17883277;
    double b = 1 - 4 * a;
    double c = 0.5 - a * Math.log(4 * a);
    return signal <= 0.5 ? signal * signal / 3 : (Math.exp((signal - c) / a) + b) / 12;
  }

  /** EOTF of PQ (BT.2100, table 4): signal 0 to 1, to cd/m². */
  static double pqLight(double signal) {
    double root = Math.pow(signal, 1 / (2523.0 / 4096 * 128));
    double c1 = 3424.0 / 4096;
    double c2 = 2413.0 / 4096 * 32;
    double c3 = 2392.0 / 4096 * 32;
    return 10_000 * Math.pow(Math.max(root - c1, 0) / (c2 - c3 * root), 1 / (2610.0 / 16384));
  }

  /** The inverse of {@link #pqLight}. */
  static double pqSignal(double light) {
    double y = Math.pow(light / 10_000, 2610.0 / 16384);
    double c1 = 3424.0 / 4096;
    double c2 = 2413.0 / 4096 * 32;
    double c3 = 2392.0 / 4096 * 32;
    return Math.pow((c1 + c2 * y) / (1 + c3 * y), 2523.0 / 4096 * 128);
  }

  /** EETF of BT.2390, 5.4.1, from {@link #PEAK} to {@link #WHITE}, both blacks 0; cd/m². */
  static double rolledOff(double light) {
    double most = pqSignal(WHITE) / pqSignal(PEAK);
    double knee = 1.5 * most - 0.5;
    double e = Math.min(1, pqSignal(light) / pqSignal(PEAK));
    if (e < knee) {
      return light;
    }
    double t = (e - knee) / (1 - knee);
    double t2 = t * t;
    double t3 = t2 * t;
    double p =
        (2 * t3 - 3 * t2 + 1) * knee + (t3 - 2 * t2 + t) * (1 - knee) + (-2 * t3 + 3 * t2) * most;
    return pqLight(p * pqSignal(PEAK));
  }

  @Override
  public int rgb(int y, int cb, int cr) {
    return blended(y, PARTS * cb, PARTS * cr);
  }

  /**
   * Not rounded to whole steps: where a colour ends at the edge of sRGB, half a step of ten bits
   * moves its darkest part by up to 17 of 255.
   */
  @Override
  public int blended(int y, int cb, int cr) {
    float light = luma[y];
    float blue = (cb - middle) * step;
    float red = (cr - middle) * step;
    float r = linear[index(light + toRgb[0] * red)];
    float g = linear[index(light + toRgb[1] * blue + toRgb[2] * red)];
    float b = linear[index(light + toRgb[3] * blue)];
    float scale = 1;
    if (hlg) { // OOTF, BT.2100, table 5
      double scene = BT2020_LIGHT[0] * r + BT2020_LIGHT[1] * g + BT2020_LIGHT[2] * b;
      scale = (float) PEAK * scenePower[index((float) Math.sqrt(scene))];
    }
    if (rolled) {
      float most = Math.max(r, Math.max(g, b)) * scale;
      scale *= gain[index((float) Math.sqrt(most / PEAK))] * Math.min(1, (float) PEAK / most);
    }
    scale /= (float) WHITE;
    return channel(0, r, g, b, scale) << 16
        | channel(3, r, g, b, scale) << 8
        | channel(6, r, g, b, scale);
  }

  private int channel(int row, float r, float g, float b, float scale) {
    float light = scale * (primaries[row] * r + primaries[row + 1] * g + primaries[row + 2] * b);
    return light <= 0 ? 0 : coded[index((float) Math.sqrt(light))] & 0xff;
  }

  private static int index(float part) {
    return Math.max(0, Math.min(STEPS - 1, (int) (part * (STEPS - 1) + 0.5f)));
  }
}
