package org.daymount.image;

import org.daymount.unit.PixelSize;

/**
 * How tiles are coded.
 *
 * @param type of the item or sample entry: hvc1, av01 or avc1
 * @param configuration the decoder configuration record (hvcC, av1C or avcC)
 * @param tile the size promised; a larger picture is refused before memory is taken for it
 */
record TileCoding(String type, byte[] configuration, PixelSize tile) {
  private static final int CODED_BLOCK = 64; // tiles are coded in whole blocks and cut to size

  /** The most pixels that a decoded tile may have. */
  long mostPixels() {
    return (tile.width() + CODED_BLOCK) * ((long) tile.height() + CODED_BLOCK);
  }
}
