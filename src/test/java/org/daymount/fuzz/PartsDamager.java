package org.daymount.fuzz;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.daymount.fuzz.Parts.Part;
import org.daymount.testphoto.JpegDamager;

/**
 * Damages picture files as cards, cables and half-done copies do, with their structure in view, the
 * same way for the same seed: in the coded data flipped bits, runs of zeros, noise, parts of other
 * files, parts missing or told twice; whole chunks, boxes, blocks and entries repeated, missing,
 * changed with each other or taken from another file; headers changed.
 */
final class PartsDamager {
  private final Random chance;
  private final JpegDamager jpegs;

  PartsDamager(long seed) {
    this.chance = new Random(seed);
    this.jpegs = new JpegDamager(seed);
  }

  /**
   * @param others files of the same kind, to take parts from
   */
  byte[] damaged(String kind, byte[] whole, List<byte[]> others) {
    if (kind.equals("jpeg")) {
      return jpegs.damaged(whole, others);
    }
    byte[] bytes = whole.clone();
    for (int i = chance.nextInt(4) == 0 ? 3 : 1; i > 0; i--) {
      bytes = once(kind, bytes, others.get(chance.nextInt(others.size())));
    }
    if (kind.equals("png") && chance.nextInt(4) != 0) {
      Parts.mendSums(bytes);
    }
    return bytes;
  }

  private byte[] once(String kind, byte[] bytes, byte[] other) {
    List<Part> parts = Parts.of(kind, bytes);
    Part coded = parts.stream().max(Comparator.comparingInt(Part::length)).orElseThrow();
    Part any = parts.get(chance.nextInt(parts.size()));
    int at = coded.from() + chance.nextInt(coded.length());
    switch (chance.nextInt(12)) {
      case 0 -> bytes[at] ^= (byte) (1 << chance.nextInt(8));
      case 1 -> {
        for (int i = 2 + chance.nextInt(20); i > 0; i--) {
          bytes[coded.from() + chance.nextInt(coded.length())] ^= (byte) (1 << chance.nextInt(8));
        }
      }
      case 2, 3 -> Arrays.fill(bytes, at, end(bytes, at, 1 << chance.nextInt(13)), (byte) 0);
      case 4 -> {
        byte[] noise = new byte[end(bytes, at, 1 + chance.nextInt(200)) - at];
        chance.nextBytes(noise);
        System.arraycopy(noise, 0, bytes, at, noise.length);
      }
      case 5 -> {
        int from = chance.nextInt(other.length);
        int count = Math.min(other.length - from, end(bytes, at, 1 + chance.nextInt(2000)) - at);
        System.arraycopy(other, from, bytes, at, count);
      }
      case 6 -> {
        return replaced(bytes, at, end(bytes, at, 1 + chance.nextInt(300)), new byte[0]);
      }
      case 7 -> {
        byte[] twice = Arrays.copyOfRange(bytes, at, end(bytes, at, 1 + chance.nextInt(600)));
        return replaced(bytes, at, at, twice);
      }
      case 8 -> {
        int place = parts.get(chance.nextInt(parts.size())).from();
        return replaced(bytes, place, place, bytesOf(any, bytes));
      }
      case 9 -> {
        Part second = parts.get(chance.nextInt(parts.size()));
        if (any.to() <= second.from()) {
          byte[] first = bytesOf(any, bytes);
          byte[] changed = replaced(bytes, second.from(), second.to(), first);
          return replaced(changed, any.from(), any.to(), bytesOf(second, bytes));
        }
        return any.length() < bytes.length
            ? replaced(bytes, any.from(), any.to(), new byte[0])
            : bytes;
      }
      case 10 -> {
        List<Part> foreign = Parts.of(kind, other);
        byte[] part = bytesOf(foreign.get(chance.nextInt(foreign.size())), other);
        return replaced(bytes, any.from(), chance.nextBoolean() ? any.to() : any.from(), part);
      }
      default -> {
        for (int i = 1 + chance.nextInt(4); i > 0; i--) {
          int header = any.from() + chance.nextInt(Math.min(40, any.length()));
          bytes[header] =
              (byte) (chance.nextBoolean() ? chance.nextInt(256) : bytes[header] ^ 0x80);
        }
      }
    }
    return bytes;
  }

  private static int end(byte[] bytes, int at, int count) {
    return Math.min(bytes.length, at + count);
  }

  private static byte[] bytesOf(Part part, byte[] bytes) {
    return Arrays.copyOfRange(bytes, part.from(), part.to());
  }

  /** With {@code instead} in place of what stands from {@code from} up to {@code to}. */
  private static byte[] replaced(byte[] bytes, int from, int to, byte[] instead) {
    byte[] result = new byte[Math.max(1, bytes.length - (to - from) + instead.length)];
    System.arraycopy(bytes, 0, result, 0, from);
    System.arraycopy(instead, 0, result, from, instead.length);
    System.arraycopy(bytes, to, result, from + instead.length, bytes.length - to);
    return result;
  }
}
