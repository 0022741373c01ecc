package org.daymount.image.jpeg;

/** A block as 2 by 2 cells of 4 pixels each way; only the DC and odd frequencies have a say. */
final class Idct2x2 extends ScaledIdct {
  private static final int PIXELS = 4;
  private static final int PIXELS_BITS = 2;
  private static final int W1 = weight(1, PIXELS, 0);
  private static final int W3 = weight(3, PIXELS, 0);
  private static final int W5 = weight(5, PIXELS, 0);
  private static final int W7 = weight(7, PIXELS, 0);
  private static final int AFTER_COLUMNS = FRACTION - BETWEEN + PIXELS_BITS;
  private static final int AFTER_ROWS = FRACTION + BETWEEN + SCALE + PIXELS_BITS;

  private final int[] upper = new int[Block.SIDE];
  private final int[] lower = new int[Block.SIDE];

  @Override
  boolean hasSay(int frequency) {
    return frequency == 0 || frequency % 2 == 1;
  }

  @Override
  void put(int[] block, byte[] samples, int offset, int stride) {
    column(block, 0);
    column(block, 1);
    column(block, 3);
    column(block, 5);
    column(block, 7);
    row(upper, samples, offset);
    row(lower, samples, offset + stride);
  }

  /** The second cell is the mirror of the first: odd frequencies change their sign. */
  private void column(int[] block, int x) {
    int odd = odd(block[x + 8], block[x + 24], block[x + 40], block[x + 56]);
    int even = block[x] << FRACTION + PIXELS_BITS;
    upper[x] = rounded(even + odd, AFTER_COLUMNS);
    lower[x] = rounded(even - odd, AFTER_COLUMNS);
  }

  private static void row(int[] sums, byte[] samples, int at) {
    int odd = odd(sums[1], sums[3], sums[5], sums[7]);
    int even = sums[0] << FRACTION + PIXELS_BITS;
    samples[at] = sample(rounded(even + odd, AFTER_ROWS));
    samples[at + 1] = sample(rounded(even - odd, AFTER_ROWS));
  }

  private static int odd(int first, int third, int fifth, int seventh) {
    return W1 * first + W3 * third + W5 * fifth + W7 * seventh;
  }
}
