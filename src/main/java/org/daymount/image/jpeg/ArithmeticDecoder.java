package org.daymount.image.jpeg;

import java.io.IOException;
import org.daymount.file.FileBytes;

/**
 * The arithmetic decoder (Annex D): yes-or-no decisions out of a stretch of coded data. Each
 * decision has a bin of statistics: how probable the less probable answer is (a state of table
 * D.3), and which answer that is.
 */
final class ArithmeticDecoder extends CodedStretch {
  private static final int ANSWER = 0x80; // of a bin: the more probable answer; below it the state
  private static final int STATE = 0x7f;
  private static final int FULL = 0x8000; // the interval is kept at or above this (D.1.2)
  private static final int BITS_BEFORE_FIRST = -16; // two bytes are taken in first (D.2.7)

  /** A state for decisions that are as likely as not, always (F.1.4.4.1.5); behind the table's. */
  static final byte EVEN = 113;

  /**
   * Table D.3: for each state the probability of the less probable answer, in 65536ths of 4/3, the
   * state after it, the state after the more probable one, and whether the two then change places.
   */
  private static final int[] TABLE = {
    0x5a1d, 1, 1, 1, 0x2586, 14, 2, 0, 0x1114, 16, 3, 0, 0x080b, 18, 4, 0, 0x03d8, 20, 5, 0, 0x01da,
    23, 6, 0, 0x00e5, 25, 7, 0, 0x006f, 28, 8, 0, 0x0036, 30, 9, 0, 0x001a, 33, 10, 0, 0x000d, 35,
    11, 0, 0x0006, 9, 12, 0, 0x0003, 10, 13, 0, 0x0001, 12, 13, 0, 0x5a7f, 15, 15, 1, 0x3f25, 36,
    16, 0, 0x2cf2, 38, 17, 0, 0x207c, 39, 18, 0, 0x17b9, 40, 19, 0, 0x1182, 42, 20, 0, 0x0cef, 43,
    21, 0, 0x09a1, 45, 22, 0, 0x072f, 46, 23, 0, 0x055c, 48, 24, 0, 0x0406, 49, 25, 0, 0x0303, 51,
    26, 0, 0x0240, 52, 27, 0, 0x01b1, 54, 28, 0, 0x0144, 56, 29, 0, 0x00f5, 57, 30, 0, 0x00b7, 59,
    31, 0, 0x008a, 60, 32, 0, 0x0068, 62, 33, 0, 0x004e, 63, 34, 0, 0x003b, 32, 35, 0, 0x002c, 33,
    9, 0, 0x5ae1, 37, 37, 1, 0x484c, 64, 38, 0, 0x3a0d, 65, 39, 0, 0x2ef1, 67, 40, 0, 0x261f, 68,
    41, 0, 0x1f33, 69, 42, 0, 0x19a8, 70, 43, 0, 0x1518, 72, 44, 0, 0x1177, 73, 45, 0, 0x0e74, 74,
    46, 0, 0x0bfb, 75, 47, 0, 0x09f8, 77, 48, 0, 0x0861, 78, 49, 0, 0x0706, 79, 50, 0, 0x05cd, 48,
    51, 0, 0x04de, 50, 52, 0, 0x040f, 50, 53, 0, 0x0363, 51, 54, 0, 0x02d4, 52, 55, 0, 0x025c, 53,
    56, 0, 0x01f8, 54, 57, 0, 0x01a4, 55, 58, 0, 0x0160, 56, 59, 0, 0x0125, 57, 60, 0, 0x00f6, 58,
    61, 0, 0x00cb, 59, 62, 0, 0x00ab, 61, 63, 0, 0x008f, 61, 32, 0, 0x5b12, 65, 65, 1, 0x4d04, 80,
    66, 0, 0x412c, 81, 67, 0, 0x37d8, 82, 68, 0, 0x2fe8, 83, 69, 0, 0x293c, 84, 70, 0, 0x2379, 86,
    71, 0, 0x1edf, 87, 72, 0, 0x1aa9, 87, 73, 0, 0x174e, 72, 74, 0, 0x1424, 72, 75, 0, 0x119c, 74,
    76, 0, 0x0f6b, 74, 77, 0, 0x0d51, 75, 78, 0, 0x0bb6, 77, 79, 0, 0x0a40, 77, 48, 0, 0x5832, 80,
    81, 1, 0x4d1c, 88, 82, 0, 0x438e, 89, 83, 0, 0x3bdd, 90, 84, 0, 0x34ee, 91, 85, 0, 0x2eae, 92,
    86, 0, 0x299a, 93, 87, 0, 0x2516, 86, 71, 0, 0x5570, 88, 89, 1, 0x4ca9, 95, 90, 0, 0x44d9, 96,
    91, 0, 0x3e22, 97, 92, 0, 0x3824, 99, 93, 0, 0x32b4, 99, 94, 0, 0x2e17, 93, 86, 0, 0x56a8, 95,
    96, 1, 0x4f46, 101, 97, 0, 0x47e5, 102, 98, 0, 0x41cf, 103, 99, 0, 0x3c3d, 104, 100, 0, 0x375e,
    99, 93, 0, 0x5231, 105, 102, 0, 0x4c0f, 106, 103, 0, 0x4639, 107, 104, 0, 0x415e, 103, 99, 0,
    0x5627, 105, 106, 1, 0x50e7, 108, 107, 0, 0x4b85, 109, 103, 0, 0x5597, 110, 109, 0, 0x504f, 111,
    107, 0, 0x5a10, 110, 111, 1, 0x5522, 112, 109, 0, 0x59eb, 112, 111, 1, 0x5a1d, 113, 113, 0
  };

  private FileBytes file;
  private long position;
  private boolean isAtMarker; // position is then that of its 0xFF; zeros are read (D.2.6.1)
  private long code;
  private int interval;
  private int shift; // bits that can be taken before a byte has to be read; below zero at first

  @Override
  void load(FileBytes coded, long from) {
    file = coded;
    position = from;
    isAtMarker = false;
    code = 0;
    interval = 0;
    shift = BITS_BEFORE_FIRST;
  }

  @Override
  void prepare() {}

  /** Never: trailing zeros need not be stored (D.1.8), so nothing tells an end from them. */
  @Override
  boolean isPastEnd() {
    return false;
  }

  @Override
  boolean isUsedUp() throws IOException {
    return isAtMarker || end() == position;
  }

  @Override
  long end() throws IOException {
    long at = position;
    while (true) {
      at = file.find(0xff, at);
      if (file.peek(at + 1) != 0) {
        return at;
      }
      at += 2;
    }
  }

  /** Decides by a bin of statistics, which learns from it (D.2). */
  boolean decide(byte[] bins, int bin) throws IOException {
    renormalize();
    int before = bins[bin] & 0xff;
    int row = (before & STATE) * 4;
    int less = TABLE[row];
    interval -= less;
    long border = (long) interval << shift;
    boolean isUpper = code >= border;
    boolean isMoreProbable;
    if (isUpper) {
      code -= border;
      isMoreProbable = interval < less; // the two have changed their halves (D.2.4)
      interval = less;
    } else if (interval < FULL) {
      isMoreProbable = interval >= less;
    } else {
      return before >= ANSWER;
    }
    int answer = before & ANSWER;
    if (isMoreProbable) {
      bins[bin] = (byte) (answer | TABLE[row + 2]);
      return answer != 0;
    }
    bins[bin] = (byte) ((TABLE[row + 3] == 1 ? answer ^ ANSWER : answer) | TABLE[row + 1]);
    return answer == 0;
  }

  private void renormalize() throws IOException {
    while (interval < FULL) {
      if (--shift < 0) {
        code = code << 8 | nextByte();
        shift += 8;
        if (shift < 0 && ++shift == 0) {
          interval = FULL; // the first two bytes are there
        }
      }
      interval <<= 1;
    }
  }

  private int nextByte() throws IOException {
    if (isAtMarker) {
      return 0;
    }
    int value = file.peek(position);
    if (value != 0xff) {
      position++;
      return Math.max(0, value);
    }
    if (file.peek(position + 1) == 0) {
      position += 2;
      return value;
    }
    isAtMarker = true;
    return 0;
  }
}
