package org.daymount.image.jpeg;

import java.io.IOException;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.daymount.file.FileBytes;

/**
 * The bits of one stretch of coded data: from a scan's header or a restart marker to the next
 * marker. In the file a byte 0xFF of the data is followed by a stuffed 0 (B.1.1.5), so that it is
 * no marker; the zeros are taken out here, a window of the stretch at a time, and bits can then be
 * read eight bytes at once.
 */
final class BitReader extends CodedStretch {
  /** Bytes; more than the longest block has: 64 times a code of 16 and a value of 15 bits. */
  private static final int PADDING = 512;

  private static final int WINDOW = 1 << 16;

  /** As many bits as {@link #peek} gives at least. */
  static final int PEEKED = 57;

  private static final VarHandle LONGS =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.BIG_ENDIAN);

  private final byte[] bytes = new byte[WINDOW + PADDING];
  private final byte[] stored = new byte[WINDOW];
  private FileBytes file;
  private long next; // in the file: what has not been taken into the window
  private int length; // of the window
  private boolean isAll; // of the stretch is in the window or was
  private long safe; // a block that begins up to here ends in the window

  /** The bit that comes next. The decoders keep it in a local variable while they run. */
  long position;

  @Override
  void load(FileBytes coded, long from) throws IOException {
    file = coded;
    next = from;
    length = 0;
    position = 0;
    isAll = false;
    fill();
  }

  /** To be called before each block: sees to it that all of its bits are there. */
  @Override
  void prepare() throws IOException {
    if (position > safe) {
      fill();
    }
  }

  private void fill() throws IOException {
    int done = (int) Math.min(length, position >>> 3);
    position -= 8L * done;
    length -= done;
    System.arraycopy(bytes, done, bytes, 0, length);
    while (!isAll && length < WINDOW) {
      append(file.read(next, stored, 0, WINDOW - length));
    }
    Arrays.fill(bytes, length, length + PADDING, (byte) 0);
    safe = isAll ? Long.MAX_VALUE : 8L * (length - PADDING);
  }

  /** Takes what was read from the file, up to a marker. */
  private void append(int count) throws IOException {
    int copied = 0; // up to here it is in bytes
    int at = 0;
    while (true) {
      at = nextOnes(stored, at, count);
      boolean isStuffed = at + 1 < count && stored[at + 1] == 0;
      int until = isStuffed ? at + 1 : at;
      System.arraycopy(stored, copied, bytes, length, until - copied);
      length += until - copied;
      if (!isStuffed) {
        break;
      }
      at += 2;
      copied = at;
    }
    next += at;
    if (count == 0 || at + 1 < count) {
      isAll = true;
    } else if (at < count) { // 0xFF, and what follows it has not been read
      if (file.peek(next + 1) == 0) {
        bytes[length++] = (byte) 0xff;
        next += 2;
      } else {
        isAll = true;
      }
    }
  }

  /**
   * Whether all bits of the stretch have been read, but for those that fill up its last byte
   * (F.1.2.3), and none beyond.
   */
  @Override
  boolean isUsedUp() throws IOException {
    if (!isAll) {
      fill();
    }
    long left = 8L * length - position;
    return isAll && left >= 0 && left < 8;
  }

  @Override
  long end() throws IOException {
    while (!isAll) {
      next = file.find(0xff, next);
      if (file.peek(next + 1) == 0) {
        next += 2;
      } else {
        isAll = true;
      }
    }
    return next;
  }

  /** Where the next 0xFF is among the first {@code count} bytes; {@code count} when none is. */
  private static int nextOnes(byte[] of, int from, int count) {
    int at = from;
    while (at <= count - Long.BYTES && !hasOnes((long) LONGS.get(of, at))) {
      at += Long.BYTES;
    }
    while (at < count && of[at] != (byte) 0xff) {
      at++;
    }
    return at;
  }

  /**
   * Whether one of eight bytes is 0xFF. One taken from each byte of the complement borrows from a
   * byte's highest bit only where the byte is 0 or above 0x80; the latter are masked out.
   */
  private static boolean hasOnes(long eight) {
    return (~eight - 0x0101010101010101L & eight & 0x8080808080808080L) != 0;
  }

  byte[] bytes() {
    return bytes;
  }

  /**
   * At least {@value #PEEKED} bits from {@code position} on, the next one highest, zeros below
   * them.
   */
  static long peek(byte[] bytes, long position) {
    return (long) LONGS.get(bytes, (int) (position >>> 3)) << (position & 7);
  }

  long peek() {
    return peek(bytes, position);
  }

  /** Whether more bits were asked for than there are; up to a block's worth gives zeros. */
  @Override
  boolean isPastEnd() {
    return isAll && position > 8L * length;
  }
}
