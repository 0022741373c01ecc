package org.daymount.file;

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
 * whatever the file's size. Where nothing else is said, reading beyond the end is an {@link
 * EOFException}. For one thread.
 */
public final class FileBytes implements Closeable {
  private static final int WINDOW = 1 << 13;

  /** Where the bytes come from. */
  private interface Source {
    /** Reads some bytes into what is left of the target; below 1 at the end. */
    int read(ByteBuffer target, long position) throws IOException;
  }

  private final Source source;
  private final Closeable file;
  private final long base;
  private final long size;
  private final byte[] window = new byte[WINDOW];
  private long windowStart;
  private int windowLength;

  private FileBytes(Source source, Closeable file, long base, long size) {
    this.source = source;
    this.file = file;
    this.base = base;
    this.size = size;
  }

  /** A stretch of the file as if it were one of its own; closed with this one. */
  public FileBytes part(long from, long length) throws IOException {
    if (from < 0 || length < 0 || from > size - length) {
      throw new EOFException();
    }
    return new FileBytes(source, file, base + from, length);
  }

  public static FileBytes open(Path file) throws IOException {
    FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
    try {
      return new FileBytes(channel::read, channel, 0, channel.size());
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  /** A file that is held already. Not to be written to. */
  public static FileBytes of(byte[] bytes) {
    Source held =
        (target, position) -> {
          int count = (int) Math.min(target.remaining(), bytes.length - position);
          target.put(bytes, (int) position, count);
          return count;
        };
    return new FileBytes(held, () -> {}, 0, bytes.length);
  }

  public long size() {
    return size;
  }

  public int u8(long position) throws IOException {
    if (position < windowStart || position >= windowStart + windowLength) {
      load(position);
    }
    return window[(int) (position - windowStart)] & 0xff;
  }

  /** As {@link #u8}; -1 behind the end. */
  public int peek(long position) throws IOException {
    return position < size ? u8(position) : -1;
  }

  /**
   * Where the next byte of that value is, from {@code position} on; the size when there is none.
   */
  public long find(int value, long position) throws IOException {
    byte wanted = (byte) value;
    long at = position;
    while (peek(at) >= 0) { // which brings the window there
      for (int i = (int) (at - windowStart); i < windowLength; i++) {
        if (window[i] == wanted) {
          return windowStart + i;
        }
      }
      at = windowStart + windowLength;
    }
    return size;
  }

  public int u16(long position, boolean bigEndian) throws IOException {
    int first = u8(position);
    int second = u8(position + 1);
    return bigEndian ? first << 8 | second : second << 8 | first;
  }

  public long u32(long position, boolean bigEndian) throws IOException {
    long first = u16(position, bigEndian);
    long second = u16(position + 2, bigEndian);
    return bigEndian ? first << 16 | second : second << 16 | first;
  }

  public int u16(long position) throws IOException {
    return u16(position, true);
  }

  public long u32(long position) throws IOException {
    return u32(position, true);
  }

  /** Four bytes as letters, for the names of chunks and boxes. */
  public String name(long position) throws IOException {
    StringBuilder name = new StringBuilder(4);
    for (int i = 0; i < 4; i++) {
      name.append((char) u8(position + i));
    }
    return name.toString();
  }

  /** Whether these bytes stand at that position; false where the file is too short for them. */
  public boolean has(long position, int... expected) throws IOException {
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

  public boolean has(long position, String ascii) throws IOException {
    return has(position, ascii.chars().toArray());
  }

  /**
   * A copy of a stretch of the file. The stretch is checked against the file before any memory is
   * taken.
   */
  public byte[] copy(long position, int length) throws IOException {
    if (position < 0 || length < 0 || position + length > size) {
      throw new EOFException();
    }
    byte[] copy = new byte[length];
    int count = read(position, copy, 0, length);
    return count < length ? Arrays.copyOf(copy, count) : copy; // it shrank while it was read
  }

  /**
   * Reads past the window.
   *
   * @return how many bytes; fewer than {@code count} only at the end
   */
  public int read(long position, byte[] to, int offset, int count) throws IOException {
    if (position >= size) {
      return 0;
    }
    int most = (int) Math.min(count, size - position);
    ByteBuffer target = ByteBuffer.wrap(to, offset, most);
    while (target.hasRemaining()) {
      if (source.read(target, base + position + target.position() - offset) < 1) {
        break;
      }
    }
    return target.position() - offset;
  }

  private void load(long position) throws IOException {
    if (position < 0 || position >= size) {
      throw new EOFException();
    }
    windowLength = 0;
    windowStart = position;
    ByteBuffer target = ByteBuffer.wrap(window);
    int read = (int) Math.min(source.read(target, base + position), size - position);
    if (read <= 0) {
      throw new EOFException();
    }
    windowLength = read;
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
