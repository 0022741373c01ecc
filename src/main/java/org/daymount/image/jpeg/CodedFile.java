package org.daymount.image.jpeg;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;

/**
 * The bytes of a file by their positions, in memory or on the disk; of one on the disk only a small
 * window is held. A read that fails is an {@link UncheckedIOException}.
 */
final class CodedFile {
  private static final int WINDOW = 1 << 16;

  /** Copies up to so many bytes from a position; tells how many there were. */
  private interface Source {
    int read(long position, byte[] to, int offset, int length);
  }

  private final Source source;
  private final long length;
  private final byte[] window = new byte[WINDOW];
  private long windowStart;
  private int windowLength;

  private CodedFile(Source source, long length) {
    this.source = source;
    this.length = length;
  }

  static CodedFile of(byte[] bytes) {
    return new CodedFile(
        (position, to, offset, length) -> {
          int count = (int) Math.min(length, bytes.length - position);
          System.arraycopy(bytes, (int) position, to, offset, count);
          return count;
        },
        bytes.length);
  }

  static CodedFile of(FileChannel channel) throws IOException {
    return of(channel, 0, channel.size());
  }

  /** A stretch of a file as if it were one of its own. */
  static CodedFile of(FileChannel channel, long from, long size) {
    return new CodedFile(
        (position, to, offset, length) ->
            read(channel, from + position, to, offset, (int) Math.min(length, size - position)),
        size);
  }

  private static int read(FileChannel channel, long position, byte[] to, int offset, int length) {
    ByteBuffer target = ByteBuffer.wrap(to, offset, length);
    try {
      while (target.hasRemaining()) {
        if (channel.read(target, position + target.position() - offset) < 0) {
          break;
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return target.position() - offset;
  }

  long length() {
    return length;
  }

  /** Fewer than {@code count} only at the file's end. */
  int read(long position, byte[] to, int offset, int count) {
    return position >= length ? 0 : source.read(position, to, offset, count);
  }

  /** -1 behind the end. */
  int u8(long position) {
    if (position < windowStart || position >= windowStart + windowLength) {
      windowStart = position;
      windowLength = read(position, window, 0, WINDOW);
      if (windowLength == 0) {
        return -1;
      }
    }
    return window[(int) (position - windowStart)] & 0xff;
  }

  /** Where the next 0xFF is, from {@code position} on; the file's end when there is none. */
  long nextFf(long position) {
    long at = position;
    while (u8(at) >= 0) {
      for (int i = (int) (at - windowStart); i < windowLength; i++) {
        if (window[i] == (byte) 0xff) {
          return windowStart + i;
        }
      }
      at = windowStart + windowLength;
    }
    return length;
  }
}
