package org.daymount.output;

import java.awt.image.BufferedImage;

/** Turns a picture without touching its values. */
final class Turn {
  private Turn() {}

  /** A quarter turn clockwise: what was the top is then on the right. */
  static BufferedImage clockwise(BufferedImage upright) {
    int width = upright.getHeight();
    int height = upright.getWidth();
    BufferedImage turned = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] row = new int[upright.getWidth()];
    for (int y = 0; y < upright.getHeight(); y++) {
      upright.getRGB(0, y, row.length, 1, row, 0, row.length);
      turned.setRGB(width - 1 - y, 0, 1, height, row, 0, 1);
    }
    return turned;
  }
}
