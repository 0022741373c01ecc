package org.daymount.fuzz;

import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Damages files, the same way for the same seed. */
final class Mutator {
  /** Numbers at which arithmetic goes wrong. */
  private static final int[] AWKWARD = {
    0, 1, -1, 0x7f, 0x80, 0xff, 0x100, 0x7fff, 0x8000, 0xffff, 0x10000, 0x7fffffff, 0x80000000
  };

  private static final int HEADER = 2048;

  private final Random chance;

  Mutator(long seed) {
    this.chance = new Random(seed);
  }

  /**
   * @param from where damage may begin; {@code length} bytes from there on
   * @param others files of the same format, to take parts from
   */
  byte[] damaged(byte[] whole, int from, int length, List<byte[]> others) {
    byte[] bytes = whole.clone();
    int times = 1 + chance.nextInt(chance.nextBoolean() ? 3 : 24);
    for (int i = 0; i < times; i++) {
      int reach = chance.nextBoolean() ? Math.min(length, HEADER) : length;
      int at = Math.min(bytes.length - 1, from + chance.nextInt(Math.max(1, reach)));
      bytes = once(bytes, at, others);
      if (bytes.length == 0) {
        return new byte[1];
      }
    }
    return bytes;
  }

  private byte[] once(byte[] bytes, int at, List<byte[]> others) {
    switch (chance.nextInt(9)) {
      case 0 -> bytes[at] ^= (byte) (1 << chance.nextInt(8));
      case 1 -> bytes[at] = (byte) chance.nextInt(256);
      case 2, 3 -> putNumber(bytes, at, AWKWARD[chance.nextInt(AWKWARD.length)]);
      case 4 -> putNumber(bytes, at, chance.nextInt());
      case 5 -> {
        return without(bytes, at, 1 + chance.nextInt(64));
      }
      case 6 -> {
        return repeated(bytes, at, 1 + chance.nextInt(64));
      }
      case 7 ->
          Arrays.fill(bytes, at, Math.min(bytes.length, at + 1 + chance.nextInt(64)), (byte) 0);
      default -> {
        return chance.nextInt(4) == 0
            ? Arrays.copyOf(bytes, at + 1) // cut off
            : spliced(bytes, at, others.get(chance.nextInt(others.size())));
      }
    }
    return bytes;
  }

  private void putNumber(byte[] bytes, int at, int value) {
    int width = 1 << chance.nextInt(3);
    boolean big = chance.nextBoolean();
    for (int i = 0; i < width && at + i < bytes.length; i++) {
      bytes[at + i] = (byte) (value >> 8 * (big ? width - 1 - i : i));
    }
  }

  private static byte[] without(byte[] bytes, int at, int length) {
    int end = Math.min(bytes.length, at + length);
    byte[] shorter = Arrays.copyOf(bytes, bytes.length - (end - at));
    System.arraycopy(bytes, end, shorter, at, bytes.length - end);
    return shorter;
  }

  private static byte[] repeated(byte[] bytes, int at, int length) {
    int end = Math.min(bytes.length, at + length);
    byte[] longer = Arrays.copyOf(bytes, bytes.length + end - at);
    System.arraycopy(bytes, at, longer, end, bytes.length - at);
    return longer;
  }

  private byte[] spliced(byte[] bytes, int at, byte[] other) {
    int length = Math.min(1 + chance.nextInt(256), Math.min(other.length, bytes.length - at));
    System.arraycopy(other, chance.nextInt(other.length - length + 1), bytes, at, length);
    return bytes;
  }
}
