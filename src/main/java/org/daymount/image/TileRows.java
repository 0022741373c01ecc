package org.daymount.image;

/**
 * The rows of a decoded tile as red, green and blue. Colour differences that several pixels share
 * are blended between their centres.
 */
final class TileRows {
  private final YuvFrame planes;
  private final SampleConversion conversion;
  private final int[] near; // how much of the nearer colour difference a pixel has, in quarters
  private final int[] luma;
  private final int[][] chroma; // blended down: 4 times the samples' values
  private final int[] above;
  private final int[] below;

  /** For pictures: centres lie in the middle of the pixels that share a colour, as in JPEG. */
  static TileRows ofPicture(YuvFrame planes, Cicp colour) {
    return new TileRows(planes, colour, 3, 3);
  }

  /**
   * For clips: centres lie on the left of two pixels (ITU-T H.264 and H.265, annex E, where
   * chroma_sample_loc_type is not there).
   */
  static TileRows ofClip(YuvFrame planes, Cicp colour) {
    return new TileRows(planes, colour, 4, 2);
  }

  private TileRows(YuvFrame planes, Cicp colour, int nearOfEven, int nearOfOdd) {
    this.planes = planes;
    this.near = new int[] {nearOfEven, nearOfOdd};
    this.conversion = SampleConversion.of(colour, planes.bits());
    this.luma = new int[planes.width()];
    this.chroma = new int[2][planes.chromaWidth()];
    this.above = new int[planes.chromaWidth()];
    this.below = new int[planes.chromaWidth()];
  }

  /**
   * @param from the first column, then every {@code step}th
   * @param rgb 0xRRGGBB, from index {@code at} on
   */
  void read(int y, int from, int step, int count, int[] rgb, int at) {
    planes.row(0, y, luma);
    int middle = 1 << planes.bits() - 1;
    if (planes.isGrey()) {
      for (int i = 0, x = from; i < count; i++, x += step) {
        rgb[at + i] = conversion.rgb(luma[x], middle, middle);
      }
      return;
    }
    blendDown(1, y, chroma[0]);
    blendDown(2, y, chroma[1]);
    boolean shared = planes.chromaAcross() == 1;
    int last = planes.chromaWidth() - 1;
    for (int i = 0, x = from; i < count; i++, x += step) {
      int own = shared ? x >> 1 : x;
      int other = shared ? Math.max(0, Math.min(last, (x & 1) == 0 ? own - 1 : own + 1)) : own;
      int weight = near[x & 1];
      rgb[at + i] =
          conversion.blended(
              luma[x],
              weight * chroma[0][own] + (4 - weight) * chroma[0][other],
              weight * chroma[1][own] + (4 - weight) * chroma[1][other]);
    }
  }

  private void blendDown(int plane, int y, int[] blended) {
    if (planes.chromaDown() == 0) {
      planes.row(plane, y, above);
      for (int x = 0; x < blended.length; x++) {
        blended[x] = 4 * above[x];
      }
      return;
    }
    int near = y >> 1;
    int far = Math.max(0, Math.min(planes.chromaHeight() - 1, (y & 1) == 0 ? near - 1 : near + 1));
    planes.row(plane, near, above);
    planes.row(plane, far, below);
    for (int x = 0; x < blended.length; x++) {
      blended[x] = 3 * above[x] + below[x];
    }
  }
}
