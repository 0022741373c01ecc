package org.daymount.look.cache;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.CRC32;

/**
 * A hash of a file's first and last bytes: tags and tables at one end, the last of the picture at
 * the other. Together with length and time it tells whether a file is the one that was read before.
 */
final class QuickHash {
  private static final int END = 1 << 14;

  private QuickHash() {}

  static String of(Path file, long length) throws IOException {
    ByteBuffer ends = ByteBuffer.allocate(2 * END);
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      ends.limit(END);
      fill(channel, ends, 0);
      ends.limit(2 * END);
      fill(channel, ends, Math.max(ends.position(), length - END));
    }
    int read = ends.position();
    return HexFormat.of().toHexDigits((int) crc(ends.array(), 0, Math.min(END, read)))
        + HexFormat.of().toHexDigits((int) crc(ends.array(), Math.min(END, read), read));
  }

  /** Native from the first call on, where SHA-256 would be interpreted a thousand times. */
  private static long crc(byte[] bytes, int from, int to) {
    CRC32 sum = new CRC32();
    sum.update(bytes, from, to - from);
    return sum.getValue();
  }

  private static void fill(FileChannel channel, ByteBuffer into, long from) throws IOException {
    long at = from;
    while (into.hasRemaining()) {
      int read = channel.read(into, at);
      if (read <= 0) {
        return;
      }
      at += read;
    }
  }

  static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
