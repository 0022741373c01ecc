package org.daymount.image.jpeg;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * The bits of one stretch of coded data: from a scan's header or a restart marker to the next
 * marker. In the file a byte 0xFF of the data is followed by a stuffed 0 (B.1.1.5), so that it is
 * no marker; the zeros are taken out here, once for the whole stretch, and bits can then be read
 * from any place, eight bytes at a time.
 */
final class BitReader {
  /** Bytes; more than the longest block has: 64 times a code of 16 and a value of 15 bits. */
  private static final int PADDING = 512;

  /** As many bits as {@link #peek} gives at least. */
  static final int PEEKED = 57;

  private static final VarHandle LONGS =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.BIG_ENDIAN);

  private byte[] bytes = new byte[0];
  private long limit;

  /** The bit that comes next. The decoders keep it in a local variable while they run. */
  long position;

  /**
   * Takes the stretch that begins at {@code from}.
   *
   * @return where in the file it ends: at a marker, or at the file's end
   */
  int load(byte[] file, int from) {
    if (bytes.length < file.length - from + PADDING) {
      bytes = new byte[file.length - from + PADDING];
    }
    int length = 0;
    int copied = from; // up to here it is in bytes
    int at = from;
    while (true) {
      at = nextOnes(file, at);
      boolean stuffed = at + 1 < file.length && file[at + 1] == 0;
      int until = stuffed ? at + 1 : at;
      System.arraycopy(file, copied, bytes, length, until - copied);
      length += until - copied;
      if (!stuffed) {
        break;
      }
      at += 2;
      copied = at;
    }
    Arrays.fill(bytes, length, length + PADDING, (byte) 0);
    position = 0;
    limit = 8L * length;
    return at;
  }

  /** Where the next 0xFF is, from {@code from} on; the file's end when there is none. */
  private static int nextOnes(byte[] file, int from) {
    int at = from;
    while (at <= file.length - Long.BYTES && !hasOnes((long) LONGS.get(file, at))) {
      at += Long.BYTES;
    }
    while (at < file.length && file[at] != (byte) 0xff) {
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

  /** At least {@value #PEEKED} bits from {@code position} on, the next one highest, zeros below them. */
  static long peek(byte[] bytes, long position) {
    return (long) LONGS.get(bytes, (int) (position >>> 3)) << (position & 7);
  }

  long peek() {
    return peek(bytes, position);
  }

  /** Whether more bits were asked for than there are; up to a block's worth gives zeros. */
  boolean isPastEnd() {
    return position > limit;
  }
}
