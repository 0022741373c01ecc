package org.daymount.look.detect;

/**
 * A picture scaled into a square for a detector, or into as much of the square as it needs.
 *
 * @param width of the planes in pixels, at most the square's side
 * @param height of the planes in pixels, at most the square's side
 * @param planes red, then green, then blue, each row by row, 0 to 255
 * @param scale pixels of the picture for one of the square
 * @param left where the picture begins in the square
 * @param top where the picture begins in the square
 */
record Letterbox(int width, int height, float[] planes, double scale, int left, int top) {

  /** The planes with 0 to 255 as -1 to 1. */
  float[] signed() {
    float[] signed = new float[planes.length];
    for (int i = 0; i < planes.length; i++) {
      signed[i] = planes[i] / 127.5f - 1;
    }
    return signed;
  }

  /** From edges in the square to a place in the picture. */
  Spot inPicture(double x0, double y0, double x1, double y1, double confidence) {
    return new Spot(
        (x0 - left) * scale, (y0 - top) * scale, (x1 - x0) * scale, (y1 - y0) * scale, confidence);
  }
}
