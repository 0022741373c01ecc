package org.daymount.testphoto;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Damages JPEG files as cards, cables and half-done copies do, mostly inside the coded data, the
 * same way for the same seed: flipped bits, runs of zeros, parts of other files, parts missing,
 * repeated or changed with each other, segments repeated, headers changed.
 */
public final class JpegDamager {
  private static final int SCAN = 0xda;

  private final Random chance;

  public JpegDamager(long seed) {
    this.chance = new Random(seed);
  }

  /**
   * @param others files to take parts from
   */
  public byte[] damaged(byte[] whole, List<byte[]> others) {
    List<int[]> segments = segments(whole);
    int scan = segments.isEmpty() ? 2 : segments.get(segments.size() - 1)[1];
    int length = whole.length - 2 - scan;
    int kind = segments.isEmpty() || length < 8 ? 8 : chance.nextInt(11);
    byte[] bytes = whole.clone();
    int at = length < 8 ? scan : scan + chance.nextInt(length);
    switch (kind) {
      case 0 -> bytes[at] ^= (byte) (1 << chance.nextInt(8));
      case 1 -> {
        for (int i = 2 + chance.nextInt(20); i > 0; i--) {
          bytes[scan + chance.nextInt(length)] ^= (byte) (1 << chance.nextInt(8));
        }
      }
      case 2, 3 -> Arrays.fill(bytes, at, end(bytes, at, 1 << chance.nextInt(13)), (byte) 0);
      case 4 -> {
        byte[] noise = new byte[end(bytes, at, 1 + chance.nextInt(200)) - at];
        chance.nextBytes(noise);
        System.arraycopy(noise, 0, bytes, at, noise.length);
      }
      case 5 -> {
        byte[] other = others.get(chance.nextInt(others.size()));
        int from = chance.nextInt(other.length);
        int count = Math.min(other.length - from, end(bytes, at, 1 + chance.nextInt(2000)) - at);
        System.arraycopy(other, from, bytes, at, count);
      }
      case 6 -> {
        return joined(bytes, at, end(bytes, at, 1 + chance.nextInt(300))); // missing
      }
      case 7 -> {
        return joined(bytes, end(bytes, at, 1 + chance.nextInt(600)), at); // told twice
      }
      case 9 -> {
        int[] copied = segments.get(chance.nextInt(segments.size()));
        int place = segments.get(chance.nextInt(segments.size()))[0];
        int added = copied[1] - copied[0];
        byte[] longer = Arrays.copyOf(bytes, bytes.length + added);
        System.arraycopy(whole, copied[0], longer, place, added);
        System.arraycopy(whole, place, longer, place + added, bytes.length - place);
        return longer;
      }
      case 10 -> {
        int other = scan + chance.nextInt(length);
        int count = Math.min(1 + chance.nextInt(400), bytes.length - Math.max(at, other));
        System.arraycopy(whole, other, bytes, at, count);
        System.arraycopy(whole, at, bytes, other, count);
      }
      default -> {
        for (int i = 1 + chance.nextInt(4); i > 0; i--) {
          bytes[2 + chance.nextInt(Math.max(1, scan - 2))] = (byte) chance.nextInt(256);
        }
      }
    }
    return bytes;
  }

  private static int end(byte[] bytes, int at, int count) {
    return Math.min(bytes.length, at + count);
  }

  /** What stands before {@code until} and then what stands from {@code from} on. */
  private static byte[] joined(byte[] bytes, int until, int from) {
    byte[] joined = Arrays.copyOf(bytes, until + bytes.length - from);
    System.arraycopy(bytes, from, joined, until, bytes.length - from);
    return joined;
  }

  /** Where each begins and ends, up to the header of the first scan. */
  private static List<int[]> segments(byte[] jpeg) {
    List<int[]> found = new ArrayList<>();
    int at = 2;
    while (at + 4 < jpeg.length && (jpeg[at] & 0xff) == 0xff) {
      int end = at + 2 + ((jpeg[at + 2] & 0xff) << 8 | jpeg[at + 3] & 0xff);
      if (end > jpeg.length - 2) {
        break;
      }
      found.add(new int[] {at, end});
      if ((jpeg[at + 1] & 0xff) == SCAN) {
        break;
      }
      at = end;
    }
    return found;
  }
}
