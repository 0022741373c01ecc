package org.daymount.image;

import java.io.IOException;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.daymount.file.FileBytes;

/**
 * Whether all pixels of a PNG are in its file. It ends with an IEND chunk (W3C PNG, 5.6), but what
 * comes behind the pixels makes no difference to them: a file that ends there, or goes on with
 * other things, is opened by browsers without complaint.
 */
final class PngPixels {
  private static final int SIGNATURE = 8;
  private static final int AROUND = 12; // length, name and check sum of a chunk
  private static final int PIECE = 1 << 16;

  /** First column and row, and the distance to the next, of Adam7's seven passes (W3C PNG, 8.1). */
  private static final int[][] PASSES = {
    {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
  };

  private final FileBytes bytes;
  private long missing; // of what the pixels unpack to
  private final Inflater inflater = new Inflater();
  private final byte[] unpacked = new byte[PIECE];

  private PngPixels(FileBytes bytes) throws IOException {
    this.bytes = bytes;
    this.missing = unpackedLength(bytes);
  }

  static boolean areAllThere(FileBytes bytes) throws IOException {
    long at = SIGNATURE;
    while (at + AROUND <= bytes.size()) {
      if (bytes.name(at + 4).equals("IEND")) {
        return true;
      }
      at += AROUND + bytes.u32(at);
    }
    return new PngPixels(bytes).unpackToTheLast();
  }

  /** Each row of each pass has a byte before it (W3C PNG, 7.2 and 9). */
  private static long unpackedLength(FileBytes bytes) throws IOException {
    long width = bytes.u32(16);
    long height = bytes.u32(20);
    int samples =
        switch (bytes.u8(25)) {
          case 2 -> 3;
          case 4 -> 2;
          case 6 -> 4;
          default -> 1;
        };
    long bits = (long) bytes.u8(24) * samples;
    if (bytes.u8(28) == 0) {
      return height * (1 + (width * bits + 7) / 8);
    }
    long sum = 0;
    for (int[] pass : PASSES) {
      long columns = Math.max(0, (width - pass[0] + pass[2] - 1) / pass[2]);
      long rows = Math.max(0, (height - pass[1] + pass[3] - 1) / pass[3]);
      sum += columns == 0 ? 0 : rows * (1 + (columns * bits + 7) / 8);
    }
    return sum;
  }

  private boolean unpackToTheLast() throws IOException {
    try {
      long at = SIGNATURE;
      while (at + 8 <= bytes.size() && missing > 0) {
        long length = Math.min(bytes.u32(at), bytes.size() - at - 8);
        if (bytes.name(at + 4).equals("IDAT")) {
          unpack(at + 8, length);
        }
        at += AROUND + length;
      }
      return missing <= 0;
    } catch (DataFormatException e) {
      return false;
    } finally {
      inflater.end();
    }
  }

  private void unpack(long from, long length) throws IOException, DataFormatException {
    for (long done = 0; done < length && missing > 0; done += PIECE) {
      inflater.setInput(bytes.copy(from + done, (int) Math.min(PIECE, length - done)));
      for (int n = inflater.inflate(unpacked); n > 0; n = inflater.inflate(unpacked)) {
        missing -= n;
      }
    }
  }
}
