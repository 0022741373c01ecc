package org.daymount.image.jpeg;

import java.io.IOException;
import java.util.Arrays;

/**
 * Codes of 1 to 16 bits, short ones for frequent symbols (Annex C, F.2.2.3). Codes of one length
 * are consecutive numbers, so a table is stored as how many codes of each length there are, and the
 * symbols in order.
 *
 * <p>Most codes are short. The next {@value #LOOK_BITS} bits are therefore looked up at once: the
 * entry tells the symbol and, when its extra bits fit too, the whole number.
 */
final class HuffmanTable {
  static final int LOOK_BITS = 12;
  static final int LONGEST_CODE = 16;
  private static final int LARGEST_DC_SIZE = 15;

  /** No symbol has these bits for a code. */
  static final int NO_CODE = -1;

  // An entry: bits 0-4 bits used, 5-8 zeros before, 9 value is complete, 10-13 size, 16-31 value.
  private static final int USED_MASK = 0x1f;
  private static final int RUN_SHIFT = 5;
  private static final int COMPLETE = 1 << 9;
  private static final int SIZE_SHIFT = 10;
  private static final int NIBBLE = 0xf;
  private static final int VALUE_SHIFT = 16;

  // An entry of the skipping table: bits 0-7 bits used, 8-15 coefficients passed; below zero: end
  // of the block. 0: not even one code fits into what is looked up.
  private static final int END_OF_BLOCK = 1 << 31;

  private final int[] counts;
  private final byte[] symbols;
  private final int[] look = new int[1 << LOOK_BITS];
  private int[] skipping;

  /**
   * @param counts of codes with 1 to 16 bits, from index 1
   */
  HuffmanTable(int[] counts, byte[] symbols) throws IOException {
    this.counts = counts;
    this.symbols = symbols;
    int code = 0;
    int n = 0;
    for (int length = 1; length <= LONGEST_CODE; length++) {
      for (int i = 0; i < counts[length]; i++, code++, n++) {
        if (code >= 1 << length) {
          throw new JpegDamaged("a table of its codes has more of them than there can be");
        }
        if (length <= LOOK_BITS) {
          fill(code, length, symbols[n] & 0xff);
        }
      }
      code <<= 1;
    }
  }

  /** Whether its symbols can be sizes of DC steps (F.1.2.1: up to 11, and 15 with 12 bits). */
  boolean isForDc() {
    for (byte symbol : symbols) {
      if ((symbol & 0xff) > LARGEST_DC_SIZE) {
        return false;
      }
    }
    return true;
  }

  private void fill(int code, int length, int symbol) {
    int size = symbol & NIBBLE;
    int free = LOOK_BITS - length;
    int entry = symbol >> 4 << RUN_SHIFT | size << SIZE_SHIFT;
    for (int rest = 0; rest < 1 << free; rest++) {
      int at = code << free | rest;
      if (size <= free) {
        int value = extended(rest >> free - size, size);
        look[at] = entry | value << VALUE_SHIFT | COMPLETE | length + size;
      } else {
        look[at] = entry | length;
      }
    }
  }

  /**
   * The number that {@code size} extra bits stand for (F.2.2.1, EXTEND): a first bit of 0 means a
   * negative one.
   */
  static int extended(int bits, int size) {
    return size > 0 && bits < 1 << size - 1 ? bits - (1 << size) + 1 : bits;
  }

  /** The entry for the bits that come next; 0 when the code is longer than what is looked up. */
  static int entry(int[] lookup, long bits) {
    return lookup[(int) (bits >>> Long.SIZE - LOOK_BITS)];
  }

  /** Not to be written to. */
  int[] lookup() {
    return look;
  }

  static boolean isComplete(int entry) {
    return (entry & COMPLETE) != 0;
  }

  /** Bits of the code, and of its value if that is complete. */
  static int used(int entry) {
    return entry & USED_MASK;
  }

  /** Zero coefficients before this one. */
  static int run(int entry) {
    return entry >> RUN_SHIFT & NIBBLE;
  }

  /** How many extra bits the value has; 0 means that there is no value. */
  static int size(int entry) {
    return entry >> SIZE_SHIFT & NIBBLE;
  }

  static int value(int entry) {
    return entry >> VALUE_SHIFT;
  }

  /**
   * An entry for a code longer than what is looked up, one length after the other.
   *
   * @param bits what comes next, from the highest bit on
   * @return {@link #NO_CODE} when there is no such code
   */
  int longEntry(long bits) {
    int first = 0;
    int n = 0;
    for (int length = 1; length <= LONGEST_CODE; length++) {
      int code = (int) (bits >>> Long.SIZE - length);
      if (code - first < counts[length]) {
        int symbol = symbols[n + code - first] & 0xff;
        int whole = symbol >> 4 << RUN_SHIFT | (symbol & NIBBLE) << SIZE_SHIFT | length;
        return (symbol & NIBBLE) == 0 ? whole | COMPLETE : whole;
      }
      n += counts[length];
      first = first + counts[length] << 1;
    }
    return NO_CODE;
  }

  /**
   * For stepping over coefficients that nobody needs: how many of them, and how many bits, the next
   * {@value #LOOK_BITS} bits hold. Several short codes are passed at once. An entry below zero ends
   * the block, and 0 says that not even one code with its value fits.
   */
  int[] skipping() {
    if (skipping == null) {
      int[] made = new int[1 << LOOK_BITS];
      Arrays.setAll(made, this::skip);
      skipping = made;
    }
    return skipping;
  }

  private int skip(int bits) {
    int used = 0;
    int passed = 0;
    while (used < LOOK_BITS) {
      int entry = look[bits << used & (1 << LOOK_BITS) - 1];
      if (entry == 0 || used(entry) + (isComplete(entry) ? 0 : size(entry)) > LOOK_BITS - used) {
        break; // this one continues beyond what is looked up
      }
      used += used(entry);
      if (size(entry) == 0 && run(entry) != NIBBLE) {
        return used | passed << 8 | END_OF_BLOCK;
      }
      passed += run(entry) + 1;
    }
    return used | passed << 8;
  }

  static int skippedBits(int skip) {
    return skip & 0xff;
  }

  static int skippedCoefficients(int skip) {
    return skip >> 8 & 0xff;
  }
}
