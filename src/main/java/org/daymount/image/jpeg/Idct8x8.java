package org.daymount.image.jpeg;

/**
 * A block as its 64 pixels: the inverse DCT itself, for the parts of pictures that are printed
 * nearly as large as they are. One line of eight needs twelve multiplications, after C. Loeffler,
 * A. Ligtenberg and G. Moschytz, "Practical fast 1-D DCT algorithms with 11 multiplications"
 * (ICASSP 1989, figure 1 with the multiplications of its rotations drawn together as in libjpeg's
 * accurate transform, whose samples these are).
 */
final class Idct8x8 extends ScaledIdct {
  private static final int AFTER_COLUMNS = FRACTION - BETWEEN;
  private static final int AFTER_ROWS = FRACTION + BETWEEN + SCALE;

  // The even half turns by 3/8 of a right angle … (cosines of multiples of pi/16)
  private static final int EVEN_BOTH = fixed(cos(6));
  private static final int EVEN_SLOW = fixed(cos(2) - cos(6));
  private static final int EVEN_QUICK = fixed(cos(2) + cos(6));

  // … the odd half by two other angles.
  private static final int ODD_ALL = fixed(cos(3));
  private static final int ODD_7 = fixed(-cos(1) + cos(3) + cos(5) - cos(7));
  private static final int ODD_5 = fixed(cos(1) + cos(3) - cos(5) + cos(7));
  private static final int ODD_3 = fixed(cos(1) + cos(3) + cos(5) - cos(7));
  private static final int ODD_1 = fixed(cos(1) + cos(3) - cos(5) - cos(7));
  private static final int PAIR_71 = fixed(cos(3) - cos(7));
  private static final int PAIR_53 = fixed(cos(1) + cos(3));
  private static final int PAIR_73 = fixed(cos(3) + cos(5));
  private static final int PAIR_51 = fixed(cos(3) - cos(5));

  private final int[] between = new int[Block.COEFFICIENTS];
  private final int[] line = new int[Block.SIDE];

  private static double cos(int sixteenths) {
    return Math.sqrt(2) * Math.cos(sixteenths * Math.PI / 16);
  }

  private static int fixed(double value) {
    return (int) Math.round(value * (1 << FRACTION));
  }

  @Override
  boolean hasSay(int frequency) {
    return true;
  }

  @Override
  void put(int[] block, byte[] samples, int offset, int stride) {
    for (int x = 0; x < Block.SIDE; x++) {
      transform(block, x, Block.SIDE);
      for (int y = 0; y < Block.SIDE; y++) {
        between[y * Block.SIDE + x] = rounded(line[y], AFTER_COLUMNS);
      }
    }
    for (int y = 0; y < Block.SIDE; y++) {
      transform(between, y * Block.SIDE, 1);
      for (int x = 0; x < Block.SIDE; x++) {
        samples[offset + y * stride + x] = sample(rounded(line[x], AFTER_ROWS));
      }
    }
  }

  /** Eight frequencies, {@code step} apart, to the eight values of {@link #line}. */
  private void transform(int[] from, int at, int step) {
    int f1 = from[at + step];
    int f2 = from[at + 2 * step];
    int f3 = from[at + 3 * step];
    int f5 = from[at + 5 * step];
    int f6 = from[at + 6 * step];
    int f7 = from[at + 7 * step];
    int turned = (f2 + f6) * EVEN_BOTH;
    int slow = turned + f2 * EVEN_SLOW;
    int quick = turned - f6 * EVEN_QUICK;
    int sum = from[at] + from[at + 4 * step] << FRACTION;
    int difference = from[at] - from[at + 4 * step] << FRACTION;

    int all = (f1 + f3 + f5 + f7) * ODD_ALL;
    int pair73 = all - (f7 + f3) * PAIR_73;
    int pair51 = all - (f5 + f1) * PAIR_51;
    int pair71 = -(f7 + f1) * PAIR_71;
    int pair53 = -(f5 + f3) * PAIR_53;
    mirror(0, sum + slow, f1 * ODD_1 + pair71 + pair51);
    mirror(1, difference + quick, f3 * ODD_3 + pair53 + pair73);
    mirror(2, difference - quick, f5 * ODD_5 + pair53 + pair51);
    mirror(3, sum - slow, f7 * ODD_7 + pair71 + pair73);
  }

  private void mirror(int place, int even, int odd) {
    line[place] = even + odd;
    line[Block.SIDE - 1 - place] = even - odd;
  }
}
