package org.daymount.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;

/**
 * Where the parts of a picture file begin and end, as its standard cuts it: chunks of PNG (ISO/IEC
 * 15948) and WebP (RIFF), blocks of GIF (89a), boxes of HEIC and AVIF (ISO/IEC 14496-12), directory
 * entries of TIFF (6.0), the headers of BMP. What cannot be followed is one part.
 */
final class Parts {
  /** From {@code from} up to, not with, {@code to}. */
  record Part(int from, int to) {
    int length() {
      return to - from;
    }
  }

  private Parts() {}

  static List<Part> of(String kind, byte[] file) {
    List<Part> parts = new ArrayList<>();
    switch (kind) {
      case "png" -> sized(parts, file, 8, (at) -> 12 + number(file, at, 4, true));
      case "webp" ->
          sized(
              parts,
              file,
              12,
              (at) -> {
                long length = number(file, at + 4, 4, false);
                return 8 + length + (length & 1);
              });
      case "gif" -> gif(parts, file);
      case "heif" -> boxes(parts, file, 0, file.length);
      case "tiff" -> tiff(parts, file);
      case "bmp" -> bmp(parts, file);
      default -> {}
    }
    parts.removeIf(part -> part.length() <= 0 || part.to() > file.length);
    if (parts.isEmpty()) {
      parts.add(new Part(0, file.length));
    }
    return parts;
  }

  private interface Length {
    /** Of the part that begins there, in bytes, with its header. */
    long at(int at);
  }

  private static void sized(List<Part> parts, byte[] file, int from, Length length) {
    int at = from;
    while (at + 12 <= file.length) {
      long end = at + length.at(at);
      if (end <= at || end > file.length) {
        return;
      }
      parts.add(new Part(at, (int) end));
      at = (int) end;
    }
  }

  private static void boxes(List<Part> parts, byte[] file, int from, int to) {
    int at = from;
    while (at + 8 <= to) {
      long length = number(file, at, 4, true);
      if (length < 8 || at + length > to) {
        return;
      }
      int end = (int) (at + length);
      String type = text(file, at + 4);
      parts.add(new Part(at, end));
      switch (type) {
        case "meta" -> boxes(parts, file, at + 12, end);
        case "iprp", "ipco" -> boxes(parts, file, at + 8, end);
        case "iinf" -> boxes(parts, file, at + 14, end);
        default -> {}
      }
      at = end;
    }
  }

  private static void gif(List<Part> parts, byte[] file) {
    int table = (file[10] & 0x80) == 0 ? 0 : 3 << (file[10] & 7) + 1;
    parts.add(new Part(6, 13 + table));
    int at = 13 + table;
    while (at < file.length && (file[at] == 0x2c || file[at] == 0x21)) {
      int start = at;
      if (file[at] == 0x21) {
        at += 2;
      } else if (at + 10 < file.length) {
        at += 11 + ((file[at + 9] & 0x80) == 0 ? 0 : 3 << (file[at + 9] & 7) + 1);
      }
      while (at < file.length && file[at] != 0) {
        at += 1 + (file[at] & 0xff);
      }
      at++;
      parts.add(new Part(start, Math.min(at, file.length)));
    }
  }

  private static void tiff(List<Part> parts, byte[] file) {
    boolean big = file[0] == 'M';
    parts.add(new Part(0, 8));
    long directory = number(file, 4, 4, big);
    if (directory + 2 > file.length || directory < 8) {
      return;
    }
    int at = (int) directory + 2;
    for (long i = number(file, (int) directory, 2, big); i > 0; i--, at += 12) {
      parts.add(new Part(at, at + 12));
    }
    parts.add(
        directory > file.length / 2
            ? new Part(8, (int) directory)
            : new Part(Math.min(at + 4, file.length), file.length));
  }

  private static void bmp(List<Part> parts, byte[] file) {
    int pixels = (int) Math.min(file.length, number(file, 10, 4, false));
    int header = (int) Math.min(pixels, 14 + number(file, 14, 4, false));
    parts.add(new Part(0, 14));
    parts.add(new Part(14, header));
    parts.add(new Part(header, pixels));
    parts.add(new Part(pixels, file.length));
  }

  /** The sums of a PNG's chunks are put right, so that readers look behind them. */
  static void mendSums(byte[] png) {
    for (Part chunk : of("png", png)) {
      if (chunk.from() == 0) {
        return;
      }
      CRC32 sum = new CRC32();
      sum.update(png, chunk.from() + 4, chunk.length() - 8);
      for (int i = 0; i < 4; i++) {
        png[chunk.to() - 4 + i] = (byte) (sum.getValue() >> 8 * (3 - i));
      }
    }
  }

  private static long number(byte[] file, int at, int width, boolean big) {
    long value = 0;
    for (int i = 0; i < width && at + i < file.length; i++) {
      value |= (file[at + i] & 0xffL) << 8 * (big ? width - 1 - i : i);
    }
    return value;
  }

  private static String text(byte[] file, int at) {
    return new String(file, at, 4, java.nio.charset.StandardCharsets.ISO_8859_1);
  }
}
