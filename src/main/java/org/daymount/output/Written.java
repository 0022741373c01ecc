package org.daymount.output;

import java.util.zip.CRC32;

/**
 * What a file was written with.
 *
 * @param sha256 of its bytes, 64 lower case hexadecimal digits: which file it is
 * @param crc32 of its bytes (ISO/IEC 8802-3), which is told fifty times as fast: whether it still
 *     is
 */
public record Written(String sha256, int crc32) {
  static int crc32(byte[] content) {
    CRC32 crc = new CRC32();
    crc.update(content);
    return (int) crc.getValue();
  }
}
