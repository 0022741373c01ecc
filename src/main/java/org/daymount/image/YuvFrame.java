package org.daymount.image;

/** A decoded tile as its coding has it. */
final class YuvFrame {
  private final PlaneLayout layout;
  private final byte[][] planes;
  private final int[] strides;

  /**
   * @param planes each row by row; not copied
   * @param strides from the start of one row to that of the next, in bytes
   */
  YuvFrame(PlaneLayout layout, byte[][] planes, int[] strides) {
    this.layout = layout;
    this.planes = planes;
    this.strides = strides;
  }

  int width() {
    return layout.width();
  }

  int height() {
    return layout.height();
  }

  int bits() {
    return layout.bits();
  }

  boolean isGrey() {
    return layout.planes() == 1;
  }

  int chromaAcross() {
    return layout.chromaAcross();
  }

  int chromaDown() {
    return layout.chromaDown();
  }

  int chromaWidth() {
    return layout.width(1);
  }

  int chromaHeight() {
    return layout.height(1);
  }

  /** What the coded tile itself says of its colours. */
  Cicp colour() {
    return layout.colour();
  }

  /** One row of plane 0 (luma), 1 or 2 (colour differences). */
  void row(int plane, int y, int[] samples) {
    byte[] data = planes[plane];
    int at = y * strides[plane];
    int width = layout.width(plane);
    if (layout.bits() == 8) {
      for (int x = 0; x < width; x++) {
        samples[x] = data[at + x] & 0xff;
      }
    } else {
      int most = (1 << layout.bits()) - 1;
      for (int x = 0; x < width; x++) {
        samples[x] = Math.min(most, data[at + 2 * x] & 0xff | (data[at + 2 * x + 1] & 0xff) << 8);
      }
    }
  }
}
