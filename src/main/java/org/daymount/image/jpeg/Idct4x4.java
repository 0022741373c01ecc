package org.daymount.image.jpeg;

/** A block as 4 by 4 cells of 2 pixels each way; the fourth frequency has no say. */
final class Idct4x4 extends ScaledIdct {
  private static final int PIXELS = 2;
  private static final int PIXELS_BITS = 1;
  private static final int OUTER_1 = weight(1, PIXELS, 0);
  private static final int OUTER_2 = weight(2, PIXELS, 0);
  private static final int OUTER_3 = weight(3, PIXELS, 0);
  private static final int OUTER_5 = weight(5, PIXELS, 0);
  private static final int OUTER_6 = weight(6, PIXELS, 0);
  private static final int OUTER_7 = weight(7, PIXELS, 0);
  private static final int INNER_1 = weight(1, PIXELS, 1);
  private static final int INNER_3 = weight(3, PIXELS, 1);
  private static final int INNER_5 = weight(5, PIXELS, 1);
  private static final int INNER_7 = weight(7, PIXELS, 1);
  private static final int AFTER_COLUMNS = FRACTION - BETWEEN + PIXELS_BITS;
  private static final int AFTER_ROWS = FRACTION + BETWEEN + SCALE + PIXELS_BITS;

  private final int[] sums = new int[4 * Block.SIDE];

  @Override
  boolean hasSay(int frequency) {
    return frequency != 4;
  }

  @Override
  void put(int[] block, byte[] samples, int offset, int stride) {
    for (int x = 0; x < Block.SIDE; x++) {
      if (x != 4) {
        column(block, x);
      }
    }
    for (int y = 0; y < 4; y++) {
      row(y * Block.SIDE, samples, offset + y * stride);
    }
  }

  private void column(int[] block, int x) {
    int even = block[x] << FRACTION + PIXELS_BITS;
    int slow = OUTER_2 * block[x + 16] + OUTER_6 * block[x + 48];
    int outer = outer(block[x + 8], block[x + 24], block[x + 40], block[x + 56]);
    int inner = inner(block[x + 8], block[x + 24], block[x + 40], block[x + 56]);
    sums[x] = rounded(even + slow + outer, AFTER_COLUMNS);
    sums[x + 8] = rounded(even - slow + inner, AFTER_COLUMNS);
    sums[x + 16] = rounded(even - slow - inner, AFTER_COLUMNS);
    sums[x + 24] = rounded(even + slow - outer, AFTER_COLUMNS);
  }

  private void row(int from, byte[] samples, int at) {
    int even = sums[from] << FRACTION + PIXELS_BITS;
    int slow = OUTER_2 * sums[from + 2] + OUTER_6 * sums[from + 6];
    int outer = outer(sums[from + 1], sums[from + 3], sums[from + 5], sums[from + 7]);
    int inner = inner(sums[from + 1], sums[from + 3], sums[from + 5], sums[from + 7]);
    samples[at] = sample(rounded(even + slow + outer, AFTER_ROWS));
    samples[at + 1] = sample(rounded(even - slow + inner, AFTER_ROWS));
    samples[at + 2] = sample(rounded(even - slow - inner, AFTER_ROWS));
    samples[at + 3] = sample(rounded(even + slow - outer, AFTER_ROWS));
  }

  private static int outer(int first, int third, int fifth, int seventh) {
    return OUTER_1 * first + OUTER_3 * third + OUTER_5 * fifth + OUTER_7 * seventh;
  }

  private static int inner(int first, int third, int fifth, int seventh) {
    return INNER_1 * first + INNER_3 * third + INNER_5 * fifth + INNER_7 * seventh;
  }
}
