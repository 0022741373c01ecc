package org.daymount.evaluate;

import java.awt.image.BufferedImage;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/** Which pixels of a picture belong to its subject. */
record Mask(int width, int height, boolean[] inside) {
  private static final int WHITE_FROM = 128;

  /** From a black and white picture, brought to the photo's size by nearest pixel. */
  static Mask of(BufferedImage drawn, PixelSize photo) {
    boolean[] inside = new boolean[(int) photo.area()];
    for (int y = 0; y < photo.height(); y++) {
      for (int x = 0; x < photo.width(); x++) {
        int rgb =
            drawn.getRGB(
                x * drawn.getWidth() / photo.width(), y * drawn.getHeight() / photo.height());
        inside[y * photo.width() + x] = (rgb & 0xff) >= WHITE_FROM;
      }
    }
    return new Mask(photo.width(), photo.height(), inside);
  }

  boolean at(int x, int y) {
    return inside[y * width + x];
  }

  /** How much of a box lies in it, 0 to 1. */
  double shareOf(PixelBox box) {
    long count = 0;
    for (int y = box.y(); y < box.bottom(); y++) {
      for (int x = box.x(); x < box.right(); x++) {
        count += at(x, y) ? 1 : 0;
      }
    }
    return count / (double) box.area();
  }

  /** The smallest box around it. */
  PixelBox box() {
    int left = width;
    int top = height;
    int right = 0;
    int bottom = 0;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        if (at(x, y)) {
          left = Math.min(left, x);
          top = Math.min(top, y);
          right = Math.max(right, x + 1);
          bottom = Math.max(bottom, y + 1);
        }
      }
    }
    return PixelBox.edges(left, top, right, bottom);
  }

  /**
   * What lies above the middle of its height: of someone who stands, from the head to the waist.
   */
  Mask upperHalf() {
    PixelBox box = box();
    boolean[] upper = new boolean[inside.length];
    System.arraycopy(inside, 0, upper, 0, (box.y() + box.height() / 2) * width);
    return new Mask(width, height, upper);
  }

  /** How many of its pixels lie before each column (or, if not sideways, row), and the end. */
  long[] upTo(boolean sideways) {
    long[] sums = new long[(sideways ? width : height) + 1];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        if (at(x, y)) {
          sums[(sideways ? x : y) + 1]++;
        }
      }
    }
    for (int i = 1; i < sums.length; i++) {
      sums[i] += sums[i - 1];
    }
    return sums;
  }
}
