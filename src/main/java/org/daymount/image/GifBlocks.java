package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import org.daymount.file.FileBytes;

/**
 * The blocks of a GIF (GIF89a, 15 to 26) up to its first frame, which is the picture. What follows
 * that frame, and a trailer that is missing, make no difference to it.
 */
final class GifBlocks {
  private static final int SCREEN = 13; // bytes of signature and logical screen descriptor
  private static final int EXTENSION = 0x21;
  private static final int FRAME = 0x2c;
  private static final int DESCRIPTOR = 10;

  private GifBlocks() {}

  /**
   * The size of the first frame, which may be another than that of the logical screen.
   *
   * @throws EOFException when there is no frame
   */
  static StoredSize size(FileBytes bytes) throws IOException {
    long at = firstFrame(bytes);
    return new StoredSize(bytes.u16(at + 5, false), bytes.u16(at + 7, false));
  }

  /** Whether the coded data of the first frame go on to their end. */
  static boolean isWhole(FileBytes bytes) throws IOException {
    long at = firstFrame(bytes);
    return afterSubBlocks(bytes, at + DESCRIPTOR + colours(bytes.u8(at + 9)) + 1) <= bytes.size();
  }

  private static long firstFrame(FileBytes bytes) throws IOException {
    long at = SCREEN + colours(bytes.u8(10));
    while (bytes.u8(at) == EXTENSION) {
      at = afterSubBlocks(bytes, at + 2);
    }
    if (bytes.u8(at) != FRAME) {
      throw new EOFException();
    }
    return at;
  }

  /** Bytes of the colour table that the flags announce. */
  private static int colours(int flags) {
    return (flags & 0x80) == 0 ? 0 : 3 << (flags & 7) + 1;
  }

  private static long afterSubBlocks(FileBytes bytes, long from) throws IOException {
    long at = from;
    int length;
    do {
      length = bytes.u8(at);
      at += 1 + length;
    } while (length > 0);
    return at;
  }
}
