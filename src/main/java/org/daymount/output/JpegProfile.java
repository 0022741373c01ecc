package org.daymount.output;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * Reads the ICC profile out of a JPEG file. Segments as in ITU-T T.81 annex B; the profile's chunks
 * as in ICC.1:2022 annex B.4: APP2, "ICC_PROFILE\0", number and count.
 */
final class JpegProfile {
  private static final byte[] MARK = "ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII);
  private static final int APP2 = 0xE2;
  private static final int START_OF_SCAN = 0xDA;

  private JpegProfile() {}

  /** Empty when the file carries none. The chunks are taken to be in order, as writers put them. */
  static Optional<byte[]> of(byte[] jpeg) {
    ByteArrayOutputStream profile = new ByteArrayOutputStream();
    int at = 2;
    while (at + 4 <= jpeg.length && (jpeg[at] & 0xFF) == 0xFF) {
      int marker = jpeg[at + 1] & 0xFF;
      int length = ((jpeg[at + 2] & 0xFF) << 8) | (jpeg[at + 3] & 0xFF);
      int data = at + 4;
      int end = at + 2 + length;
      if (marker == START_OF_SCAN || end > jpeg.length) {
        break;
      }
      int header = MARK.length + 2;
      if (marker == APP2
          && end - data > header
          && Arrays.equals(jpeg, data, data + MARK.length, MARK, 0, MARK.length)) {
        profile.write(jpeg, data + header, end - data - header);
      }
      at = end;
    }
    return profile.size() == 0 ? Optional.empty() : Optional.of(profile.toByteArray());
  }
}
