package org.daymount.image;

/**
 * Luma and two colour differences to 8-bit red, green and blue (ITU-T H.273, 8.3, equations 20 to
 * 44), by tables of 16.16 fixed point.
 */
final class YccToRgb implements SampleConversion {
  private static final int ONE = 1 << 16;

  private final boolean identity;
  private final int[] luma;
  private final int[] redOfCr;
  private final int[] greenOfCr;
  private final int[] greenOfCb;
  private final int[] blueOfCb;

  /**
   * @param matrix code point of H.273; unknown ones are taken for BT.601, as decoders do
   * @param bits of each sample, 8 to 12
   */
  YccToRgb(int matrix, boolean fullRange, int bits) {
    identity = matrix == 0;
    double kr = 0.299;
    double kb = 0.114;
    if (matrix == 1) {
      kr = 0.2126;
      kb = 0.0722;
    } else if (matrix == 9) {
      kr = 0.2627;
      kb = 0.0593;
    }
    int levels = 1 << bits;
    double step = 1 << bits - 8;
    double lumaScale = fullRange ? 255.0 / (levels - 1) : 255 / (219 * step);
    double chromaScale = fullRange ? 255.0 / (levels - 1) : 255 / (224 * step);
    double black = fullRange ? 0 : 16 * step;
    luma = new int[levels];
    redOfCr = new int[levels];
    greenOfCr = new int[levels];
    greenOfCb = new int[levels];
    blueOfCb = new int[levels];
    double kg = 1 - kr - kb;
    for (int i = 0; i < levels; i++) {
      luma[i] = fixed((i - black) * lumaScale) + ONE / 2;
      double difference = (i - levels / 2) * chromaScale;
      redOfCr[i] = fixed(2 * (1 - kr) * difference);
      blueOfCb[i] = fixed(2 * (1 - kb) * difference);
      greenOfCr[i] = fixed(-2 * (1 - kr) * kr / kg * difference);
      greenOfCb[i] = fixed(-2 * (1 - kb) * kb / kg * difference);
    }
  }

  private static int fixed(double value) {
    return (int) Math.round(value * ONE);
  }

  @Override
  public int rgb(int y, int cb, int cr) {
    if (identity) { // green, blue, red
      return level(luma[cr]) << 16 | level(luma[y]) << 8 | level(luma[cb]);
    }
    int light = luma[y];
    return level(light + redOfCr[cr]) << 16
        | level(light + greenOfCr[cr] + greenOfCb[cb]) << 8
        | level(light + blueOfCb[cb]);
  }

  private static int level(int fixed) {
    return Math.max(0, Math.min(255, fixed >> 16));
  }
}
