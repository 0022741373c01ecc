package org.daymount.image.jpeg;

import java.io.IOException;
import java.util.Arrays;

/** Where small numbers end for arithmetic coding's statistics (B.2.4.3, F.1.4.4.1.4). */
final class ArithmeticConditioning {
  private static final int PLACES = 16;
  private static final int AC_DEFAULT = 5;
  private static final int DC_UPPER_DEFAULT = 1;

  private final int[] lower = new int[PLACES];
  private final int[] upper = new int[PLACES];
  private final int[] ac = new int[PLACES];

  ArithmeticConditioning() {
    Arrays.fill(upper, DC_UPPER_DEFAULT);
    Arrays.fill(ac, AC_DEFAULT);
  }

  void read(MarkerReader in) throws IOException {
    while (in.hasMore()) {
      int kindAndPlace = in.u8();
      int value = in.u8();
      int place = kindAndPlace & 15;
      if (kindAndPlace >> 4 > 1) {
        throw new JpegDamaged("a table inside of it cannot be");
      }
      if (kindAndPlace >> 4 == 1) {
        ac[place] = value;
        continue;
      }
      lower[place] = value & 15;
      upper[place] = value >> 4;
      if (lower[place] > upper[place]) {
        throw new JpegDamaged("a table inside of it cannot be");
      }
    }
  }

  int dcLower(int place) {
    return lower[place];
  }

  int dcUpper(int place) {
    return upper[place];
  }

  /** The last coefficient that counts as one of the first. */
  int ac(int place) {
    return ac[place];
  }
}
