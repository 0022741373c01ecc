package org.daymount.fuzz;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * Damages clips where it hurts: it walks the boxes (ISO/IEC 14496-12, 4.2) and changes the length,
 * the count or the numbers of one, cuts the file at one, or puts another clip's in its place. The
 * same way for the same seed.
 */
final class BoxMutator {
  /** What it may do; each clip gets one of these. */
  enum Damage {
    LENGTH,
    COUNT,
    ENTRY,
    NAME,
    CUT,
    SPLICE,
    DROP,
    TWICE
  }

  private static final Set<String> HOLDERS =
      Set.of("moov", "trak", "mdia", "minf", "stbl", "edts", "udta", "dinf");

  private static final Set<String> TABLES =
      Set.of("stts", "stss", "stsc", "stsz", "stco", "co64", "ctts", "elst", "stsd", "dref");

  private static final int[] AWKWARD = {
    0, 1, 2, 7, 8, 9, -1, -2, 0x7fffffff, 0x80000000, 0xffff, 0x10000, 1 << 24, 1 << 30
  };

  private record Part(String name, int at, int length) {}

  private final Random chance;

  BoxMutator(long seed) {
    this.chance = new Random(seed);
  }

  byte[] damaged(byte[] whole, Damage how, byte[] other) {
    List<Part> parts = new ArrayList<>();
    walk(whole, 0, whole.length, parts);
    Part part = any(parts);
    ByteBuffer bytes = ByteBuffer.wrap(whole.clone());
    switch (how) {
      case LENGTH -> bytes.putInt(part.at(), number(part.length()));
      case COUNT -> {
        Part table = any(parts.stream().filter(p -> TABLES.contains(p.name())).toList());
        boolean sizes = table.name().equals("stsz"); // its count stands behind a size
        bytes.putInt(table.at() + (sizes && chance.nextBoolean() ? 16 : 12), number(3));
      }
      case ENTRY -> {
        Part table = any(parts.stream().filter(p -> TABLES.contains(p.name())).toList());
        int entries = Math.max(1, (table.length() - 16) / 4);
        int at = table.at() + 16 + 4 * chance.nextInt(entries);
        bytes.putInt(Math.min(at, table.at() + table.length() - 4), number(100));
      }
      case NAME -> bytes.put(part.at() + 4 + chance.nextInt(4), (byte) chance.nextInt(256));
      case CUT -> {
        return Arrays.copyOf(whole, part.at() + chance.nextInt(part.length()) + 1);
      }
      case SPLICE -> {
        List<Part> theirs = new ArrayList<>();
        walk(other, 0, other.length, theirs);
        Part taken = any(theirs);
        byte[] instead = Arrays.copyOfRange(other, taken.at(), end(taken));
        return joined(
            lengthened(bytes, parts, part, instead.length - part.length()), part, instead);
      }
      case DROP -> {
        return joined(lengthened(bytes, parts, part, -part.length()), part, new byte[0]);
      }
      default -> {
        byte[] again = Arrays.copyOfRange(whole, part.at(), end(part));
        byte[] around = lengthened(bytes, parts, part, part.length());
        return joined(around, new Part("", part.at(), 0), again);
      }
    }
    return bytes.array();
  }

  private static void walk(byte[] bytes, int from, int to, List<Part> parts) {
    int at = from;
    while (at + 8 <= to) {
      int length = ByteBuffer.wrap(bytes).getInt(at);
      if (length < 8 || length > to - at) {
        return;
      }
      String name = new String(bytes, at + 4, 4, StandardCharsets.ISO_8859_1);
      parts.add(new Part(name, at, length));
      if (HOLDERS.contains(name)) {
        walk(bytes, at + 8, at + length, parts);
      }
      at += length;
    }
  }

  private Part any(List<Part> parts) {
    return parts.get(chance.nextInt(parts.size()));
  }

  private int number(int near) {
    return switch (chance.nextInt(3)) {
      case 0 -> AWKWARD[chance.nextInt(AWKWARD.length)];
      case 1 -> near + chance.nextInt(17) - 8;
      default -> chance.nextInt();
    };
  }

  /** In three of four clips the boxes around it know of the change. */
  private byte[] lengthened(ByteBuffer bytes, List<Part> parts, Part changed, int by) {
    if (chance.nextInt(4) > 0) {
      for (Part part : parts) {
        if (part != changed && part.at() < changed.at() && end(part) >= end(changed)) {
          bytes.putInt(part.at(), part.length() + by);
        }
      }
    }
    return bytes.array();
  }

  private static int end(Part part) {
    return part.at() + part.length();
  }

  private static byte[] joined(byte[] whole, Part gone, byte[] instead) {
    ByteBuffer joined = ByteBuffer.allocate(whole.length - gone.length() + instead.length);
    joined.put(whole, 0, gone.at()).put(instead);
    return joined.put(whole, end(gone), whole.length - end(gone)).array();
  }
}
