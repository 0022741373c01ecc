package org.daymount.image;

import java.io.IOException;

/**
 * What the samples of a decoded tile are: a plane of luma and, unless it is grey, two of colour.
 *
 * @param planes 1 or 3
 * @param bits of a sample; more than 8 lie in two bytes, the lower first
 * @param chromaAcross log2 of how many pixels of a row share a colour
 * @param chromaDown log2 of how many rows share a colour
 * @param colour what the coded tile itself says of its colours
 */
record PlaneLayout(
    int width, int height, int planes, int bits, int chromaAcross, int chromaDown, Cicp colour) {
  private static final int MOST_BITS = 12;
  private static final int MOST_SHARED = 2;

  /** Refuses what cannot be read. */
  PlaneLayout checked(long mostPixels) throws IOException {
    boolean usual =
        bits >= 8
            && bits <= MOST_BITS
            && (planes == 1 || planes == 3)
            && isShared(chromaAcross)
            && isShared(chromaDown);
    if (!usual) {
      throw new IOException("its tiles have samples of an unusual kind");
    }
    if (width < 1 || height < 1 || (long) width * height > mostPixels) {
      throw new IOException("a tile of it has another size than it should");
    }
    return this;
  }

  private static boolean isShared(int log2) {
    return log2 >= 0 && log2 <= MOST_SHARED;
  }

  int width(int plane) {
    return plane == 0 ? width : (width + (1 << chromaAcross) - 1) >> chromaAcross;
  }

  int height(int plane) {
    return plane == 0 ? height : (height + (1 << chromaDown) - 1) >> chromaDown;
  }

  /** The bytes of the samples of one row. */
  int rowBytes(int plane) {
    return width(plane) * (bits > 8 ? 2 : 1);
  }

  /**
   * @param stride from the start of one row to that of the next, in bytes
   * @return the bytes from the first sample to the last
   */
  long bytes(int plane, int stride) {
    return (long) stride * (height(plane) - 1) + rowBytes(plane);
  }
}
