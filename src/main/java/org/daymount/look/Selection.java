package org.daymount.look;

/**
 * The value at a place in the order of size, without sorting: values are counted by their highest
 * bits, those of the class that holds the place by the bits that follow, and so on (selection by
 * radix; Knuth, The Art of Computer Programming 3, 5.2.5). It gives what sorting would, in linear
 * time, and no step depends on how a comparison ends, which a processor could not foresee.
 */
final class Selection {
  private static final int[] SHIFTS = {21, 10, 0};
  private static final int DIGITS = 1 << 11;

  private Selection() {}

  /**
   * @param values none of them NaN; left as they are
   * @param count how many of them take part, from the first on
   * @param place 0 for the smallest of those
   */
  static float of(float[] values, int count, int place) {
    if (place < 0 || place >= count || count > values.length) {
      throw new IllegalArgumentException(
          "no value " + place + " of " + count + " in " + values.length);
    }
    int[] keys = new int[count];
    for (int i = 0; i < count; i++) {
      keys[i] = ordered(Float.floatToRawIntBits(values[i]));
    }
    int left = count;
    int wanted = place;
    for (int shift : SHIFTS) {
      int[] counts = new int[DIGITS];
      for (int i = 0; i < left; i++) {
        counts[digit(keys[i], shift)]++;
      }
      int digit = 0;
      while (wanted >= counts[digit]) {
        wanted -= counts[digit++];
      }
      left = keep(keys, left, shift, digit);
    }
    return Float.intBitsToFloat(ordered(keys[0]));
  }

  /**
   * A float's bits as a whole number of the same order, and back: below zero they run backwards.
   */
  private static int ordered(int bits) {
    return bits ^ bits >> Integer.SIZE - 1 & Integer.MAX_VALUE;
  }

  /** The highest digit has the sign: what is below zero comes first. */
  private static int digit(int key, int shift) {
    return (key ^ Integer.MIN_VALUE) >>> shift & DIGITS - 1;
  }

  private static int keep(int[] keys, int count, int shift, int digit) {
    int kept = 0;
    for (int i = 0; i < count; i++) {
      int key = keys[i];
      keys[kept] = key;
      kept += digit(key, shift) == digit ? 1 : 0;
    }
    return kept;
  }
}
