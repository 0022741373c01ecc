package org.daymount.image;

import java.io.IOException;
import java.util.Optional;
import org.daymount.file.FileBytes;
import org.daymount.image.IsoBoxes.Box;

/**
 * What the numbers of a coded picture mean, in the code points of ITU-T H.273.
 *
 * @param primaries 1 BT.709 and sRGB, 9 BT.2020, 12 Display P3
 * @param transfer 13 sRGB; 1, 6 and 14 are treated as sRGB, as on screens
 * @param matrix 0 none (RGB), 1 BT.709, 5 and 6 BT.601, 9 BT.2020
 */
record Cicp(int primaries, int transfer, int matrix, boolean fullRange) {
  static final int UNSPECIFIED = 2;

  static Optional<Cicp> read(FileBytes bytes, Optional<Box> nclx) throws IOException {
    if (nclx.isEmpty() || nclx.get().length() < 7) {
      return Optional.empty();
    }
    BoxCursor cursor = new BoxCursor(bytes, nclx.get());
    return Optional.of(
        new Cicp(
            (int) cursor.unsigned(2),
            (int) cursor.unsigned(2),
            (int) cursor.unsigned(2),
            cursor.unsigned(1) >= 0x80));
  }
}
