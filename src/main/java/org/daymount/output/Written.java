package org.daymount.output;

import java.util.HexFormat;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * What a file was written with.
 *
 * @param sha256 of its bytes, 64 lower case hexadecimal digits: which file it is
 * @param crc32 of its bytes (ISO/IEC 8802-3), which is told fifty times as fast: whether it still
 *     is
 */
public record Written(String sha256, int crc32) {
  private static final int SHA256_DIGITS = 64;
  private static final int CRC32_DIGITS = 8;

  static int crc32(byte[] content) {
    CRC32 crc = new CRC32();
    crc.update(content);
    return (int) crc.getValue();
  }

  /** As one line of text; {@link #parse} reads it. */
  public String text() {
    return sha256 + HexFormat.of().toHexDigits(crc32);
  }

  /** Empty for anything else than what {@link #text} gives. */
  public static Optional<Written> parse(String text) {
    return text.matches("[0-9a-f]{" + (SHA256_DIGITS + CRC32_DIGITS) + "}")
        ? Optional.of(
            new Written(
                text.substring(0, SHA256_DIGITS),
                HexFormat.fromHexDigits(text.substring(SHA256_DIGITS))))
        : Optional.empty();
  }
}
