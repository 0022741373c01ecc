package org.daymount.look.detect;

import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * A picture scaled into a square for a detector, or into as much of the square as it needs.
 *
 * @param size of the planes, at most the square
 * @param planes red, then green, then blue, each row by row, 0 to 255; black beside the picture
 * @param scale pixels of the picture for one of the square
 * @param filled by the picture, in pixels of the square
 */
record Letterbox(PixelSize size, float[] planes, double scale, PixelBox filled) {

  /**
   * Without the part on the right and below that the picture leaves empty.
   *
   * @param step to which width and height are rounded up; it divides the square's side
   */
  Letterbox withoutEmptyPart(int step) {
    int width = (filled.right() + step - 1) / step * step;
    int height = (filled.bottom() + step - 1) / step * step;
    float[] part = new float[3 * width * height];
    for (int row = 0; row < 3 * height; row++) {
      int plane = row / height;
      int from = (plane * size.height() + row % height) * size.width();
      System.arraycopy(planes, from, part, row * width, width);
    }
    return new Letterbox(new PixelSize(width, height), part, scale, filled);
  }

  /** The planes with 0 to 255 as -1 to 1. */
  float[] signed() {
    float[] signed = new float[planes.length];
    for (int i = 0; i < planes.length; i++) {
      signed[i] = planes[i] / 127.5f - 1;
    }
    return signed;
  }

  /** From edges in the square to a place in the picture. */
  Detection inPicture(double x0, double y0, double x1, double y1, double confidence) {
    return new Detection(
        (x0 - filled.x()) * scale,
        (y0 - filled.y()) * scale,
        (x1 - x0) * scale,
        (y1 - y0) * scale,
        confidence);
  }
}
