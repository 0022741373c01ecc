package org.daymount.image;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

/**
 * Any byte of a file by its position, through one window of 8 KiB, so that memory stays the same
 * whatever the file's size. Reading beyond the end is an {@link EOFException}. For one thread.
 */
final class FileBytes implements Closeable {
  private static final int WINDOW = 1 << 13;

  private final FileChannel channel;
  private final long base;
  private final long size;
  private final byte[] window = new byte[WINDOW];
  private long windowStart;
  private int windowLength;

  private FileBytes(FileChannel channel, long base, long size) {
    this.channel = channel;
    this.base = base;
    this.size = size;
  }

  /** A stretch of the file as if it were one of its own; closed with this one. */
  FileBytes part(long from, long length) throws IOException {
    if (from < 0 || length < 0 || from > size - length) {
      throw new EOFException();
    }
    return new FileBytes(channel, base + from, length);
  }

  static FileBytes open(Path file) throws IOException {
    FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
    try {
      return new FileBytes(channel, 0, channel.size());
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  long size() {
    return size;
  }

  int u8(long position) throws IOException {
    if (position < windowStart || position >= windowStart + windowLength) {
      load(position);
    }
    return window[(int) (position - windowStart)] & 0xff;
  }

  /**
   * Where the next byte of that value is, from {@code position} on.
   *
   * @throws EOFException when there is none
   */
  long find(int value, long position) throws IOException {
    byte wanted = (byte) value;
    long at = position;
    while (true) {
      u8(at); // brings the window there
      for (int i = (int) (at - windowStart); i < windowLength; i++) {
        if (window[i] == wanted) {
          return windowStart + i;
        }
      }
      at = windowStart + windowLength;
    }
  }

  int u16(long position, boolean bigEndian) throws IOException {
    int first = u8(position);
    int second = u8(position + 1);
    return bigEndian ? first << 8 | second : second << 8 | first;
  }

  long u32(long position, boolean bigEndian) throws IOException {
    long first = u16(position, bigEndian);
    long second = u16(position + 2, bigEndian);
    return bigEndian ? first << 16 | second : second << 16 | first;
  }

  int u16(long position) throws IOException {
    return u16(position, true);
  }

  long u32(long position) throws IOException {
    return u32(position, true);
  }

  /** Four bytes as letters, for the names of chunks and boxes. */
  String name(long position) throws IOException {
    StringBuilder name = new StringBuilder(4);
    for (int i = 0; i < 4; i++) {
      name.append((char) u8(position + i));
    }
    return name.toString();
  }

  /** Whether these bytes stand at that position; false where the file is too short for them. */
  boolean has(long position, int... expected) throws IOException {
    if (position < 0 || position + expected.length > size) {
      return false;
    }
    for (int i = 0; i < expected.length; i++) {
      if (u8(position + i) != expected[i]) {
        return false;
      }
    }
    return true;
  }

  boolean has(long position, String ascii) throws IOException {
    return has(position, ascii.chars().toArray());
  }

  /**
   * A copy of a stretch of the file. The stretch is checked against the file before any memory is
   * taken.
   */
  byte[] copy(long position, int length) throws IOException {
    if (position < 0 || length < 0 || position + length > size) {
      throw new EOFException();
    }
    byte[] copy = new byte[length];
    ByteBuffer target = ByteBuffer.wrap(copy);
    while (target.hasRemaining()) {
      if (channel.read(target, base + position + target.position()) < 0) {
        return Arrays.copyOf(copy, target.position()); // the file shrank while it was read
      }
    }
    return copy;
  }

  private void load(long position) throws IOException {
    if (position < 0 || position >= size) {
      throw new EOFException();
    }
    windowLength = 0;
    windowStart = position;
    ByteBuffer target = ByteBuffer.wrap(window);
    int read = (int) Math.min(channel.read(target, base + position), size - position);
    if (read <= 0) {
      throw new EOFException();
    }
    windowLength = read;
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
