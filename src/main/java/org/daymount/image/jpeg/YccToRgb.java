package org.daymount.image.jpeg;

/** ITU-T T.871, 7: brightness and two colour differences to red, green and blue, 8 bits each. */
final class YccToRgb {
  private static final int BITS = 16;
  private static final int HALF = 1 << BITS - 1;
  private static final int RED_BY_RED = fixed(1.402);
  private static final int GREEN_BY_BLUE = fixed(0.34414); // 5 digits, as libjpeg rounds them
  private static final int GREEN_BY_RED = fixed(0.71414);
  private static final int BLUE_BY_BLUE = fixed(1.772);

  private YccToRgb() {}

  private static int fixed(double value) {
    return (int) Math.round(value * (1 << BITS));
  }

  /**
   * One row.
   *
   * @param blues colour difference towards blue of each pixel, -128 to 127
   */
  static void convert(byte[] brightness, int from, int[] blues, int[] reds, byte[] rgb, int to) {
    int at = to;
    for (int x = 0; x < blues.length; x++) {
      int y = brightness[from + x] & 0xff;
      int blue = blues[x];
      int red = reds[x];
      rgb[at++] = level(y + (RED_BY_RED * red + HALF >> BITS));
      rgb[at++] = level(y + (HALF - GREEN_BY_BLUE * blue - GREEN_BY_RED * red >> BITS));
      rgb[at++] = level(y + (BLUE_BY_BLUE * blue + HALF >> BITS));
    }
  }

  private static byte level(int value) {
    return (byte) Math.max(0, Math.min(255, value));
  }
}
