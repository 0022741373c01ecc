package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import org.daymount.file.FileBytes;

/**
 * Where the pixels of a BMP lie (Microsoft's BITMAPFILEHEADER and BITMAPINFOHEADER). The lengths
 * that its headers state are not asked: writers get them wrong, and viewers do not ask either.
 *
 * @param from where they begin
 * @param length of them in the file, all told; for run-length coded ones, of what is there
 * @param size of the whole file
 */
record BmpPixels(StoredSize pixels, int bits, long compression, long from, long length, long size) {
  static final int OLDEST_HEADER = 12; // bytes; it states no lengths
  static final long RUNS_OF_8 = 1; // BI_RLE8
  static final long RUNS_OF_4 = 2; // BI_RLE4
  private static final long MASKS = 3; // BI_BITFIELDS: plain rows
  private static final long MASKS_WITH_ALPHA = 6;

  static BmpPixels read(FileBytes bytes) throws IOException {
    boolean oldest = bytes.u32(14, false) == OLDEST_HEADER;
    long compression = oldest ? 0 : bytes.u32(30, false);
    StoredSize pixels = HeaderSizes.bmp(bytes);
    int bits = bytes.u16(oldest ? 24 : 28, false);
    long from = bytes.u32(10, false);
    long there = Math.max(0, bytes.size() - from);
    long length = isPlain(compression) ? row(pixels, bits) * pixels.height() : there;
    BmpPixels found = new BmpPixels(pixels, bits, compression, from, length, bytes.size());
    return found.areRuns() && !found.runsReachTheEnd(bytes)
        ? new BmpPixels(pixels, bits, compression, from, there + 1, bytes.size())
        : found;
  }

  private static boolean isPlain(long compression) {
    return compression == 0 || compression == MASKS || compression == MASKS_WITH_ALPHA;
  }

  boolean isPlain() {
    return isPlain(compression);
  }

  boolean areRuns() {
    return compression == RUNS_OF_8 || compression == RUNS_OF_4;
  }

  /** Bytes of a row, padded to four. */
  private static long row(StoredSize pixels, int bits) {
    return (pixels.width() * bits + 31) / 32 * 4;
  }

  /** All but the padding of the last row, which nobody needs. */
  boolean areAllThere() {
    long padding = isPlain() ? row(pixels, bits) - (pixels.width() * bits + 7) / 8 : 0;
    return from + length - padding <= size && from < size;
  }

  /** Whether the runs come to their end mark, or to the end of the last row. */
  private boolean runsReachTheEnd(FileBytes bytes) throws IOException {
    long at = from;
    long column = 0;
    long row = 0;
    try {
      while (row < pixels.height() - 1 || row == pixels.height() - 1 && column < pixels.width()) {
        int count = bytes.u8(at);
        int value = bytes.u8(at + 1);
        at += 2;
        if (count > 0) {
          column += count;
        } else if (value == 0) { // end of a row
          row++;
          column = 0;
        } else if (value == 1) { // end of the picture
          return true;
        } else if (value == 2) { // a step to the right and on
          column += bytes.u8(at);
          row += bytes.u8(at + 1);
          at += 2;
        } else { // as many pixels as they are, padded to two bytes
          column += value;
          long literal = compression == RUNS_OF_8 ? value : (value + 1) / 2;
          at += literal + literal % 2;
          bytes.u8(at - 1);
        }
      }
      return true;
    } catch (EOFException e) {
      return false;
    }
  }
}
