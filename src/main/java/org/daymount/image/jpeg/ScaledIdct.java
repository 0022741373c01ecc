package org.daymount.image.jpeg;

/**
 * From a block's frequencies straight to the means of its cells, without its 64 pixels.
 *
 * <p>A pixel is a sum of cosines (the inverse DCT, A.3.3). The mean of neighbouring pixels is
 * therefore the same sum with each cosine replaced by its mean over those pixels. Means over 2 or 4
 * pixels leave out some frequencies altogether: over 4 pixels a cosine with an even frequency is up
 * as long as it is down. As the inverse DCT is separable, columns come first, rows second. The mean
 * of the whole block is its DC coefficient.
 *
 * <p>The arithmetic is whole numbers, with 13 bits for the means of cosines and 2 more bits than a
 * sample between the passes, each pass rounded to the nearest. This is the precision of the
 * reduced-size transforms of libjpeg (described in its jidctred.c), so that both give the same
 * samples; the tests compare them bit by bit.
 */
abstract sealed class ScaledIdct permits Idct8x8, Idct4x4, Idct2x2 {
  /** Bits behind the point of a mean of cosines. */
  static final int FRACTION = 13;

  /** Extra bits of a column's sums. */
  static final int BETWEEN = 2;

  private static final int LEVEL_SHIFT = 128; // A.3.1

  /** The DCT's own scale: 8 over two dimensions. */
  static final int SCALE = 3;

  /**
   * Puts the means of a block's cells in their place.
   *
   * @param block 64 coefficients, multiplied by their steps, row by row; left as they are
   * @param offset of the block's first cell in {@code samples}
   * @param stride from one row of samples to the next
   */
  abstract void put(int[] block, byte[] samples, int offset, int stride);

  /**
   * Whether a frequency, along either side, takes part in the means.
   *
   * @param frequency 0 to 7
   */
  abstract boolean hasSay(int frequency);

  /** The mean of a whole block, or every pixel of one that has nothing but a DC coefficient. */
  static byte ofFlatBlock(int dc) {
    return sample(rounded(dc, SCALE));
  }

  /**
   * What a coefficient adds to a cell: the mean of its cosine over the cell's pixels, times the
   * square root of 2 and the number of pixels, with {@link #FRACTION} bits behind the point.
   *
   * @param frequency 1 to 7
   * @param pixels in a cell, along one side
   * @param cell which one, from 0
   */
  static int weight(int frequency, int pixels, int cell) {
    double sum = 0;
    for (int pixel = cell * pixels; pixel < (cell + 1) * pixels; pixel++) {
      sum += Math.cos((2 * pixel + 1) * frequency * Math.PI / 16);
    }
    return (int) Math.round(Math.sqrt(2) * sum * (1 << FRACTION));
  }

  static int rounded(int value, int bits) {
    return value + (1 << bits - 1) >> bits;
  }

  static byte sample(int value) {
    return (byte) Math.max(0, Math.min(255, value + LEVEL_SHIFT));
  }
}
