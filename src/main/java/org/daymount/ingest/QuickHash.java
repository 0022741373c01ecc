package org.daymount.ingest;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HexFormat;
import java.util.zip.CRC32;

/**
 * A checksum of a whole file. Together with length and time it tells whether a file is the one that
 * was read before: a change in its middle that leaves both as they were is noticed too.
 */
final class QuickHash {
  private static final int PART = 1 << 18; // bytes

  private QuickHash() {}

  /**
   * The CRC-32 (ISO/IEC 8802-3) of its bytes: told many times as fast as SHA-256, and faster than a
   * disk gives them. It is not made to withstand a forger, who could set the time as well.
   */
  static String of(Path file) throws IOException {
    CRC32 sum = new CRC32();
    ByteBuffer part = ByteBuffer.allocate(PART);
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      while (channel.read(part) >= 0) {
        sum.update(part.flip());
        part.clear();
      }
    }
    return HexFormat.of().toHexDigits((int) sum.getValue());
  }
}
