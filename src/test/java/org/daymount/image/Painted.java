package org.daymount.image;

import java.awt.image.BufferedImage;
import java.util.Random;

/** Pictures painted by the tests, TYPE_INT_RGB. */
final class Painted {
  private Painted() {}

  /** Smooth colours with a bright corner at the top left: no two orientations look alike. */
  static BufferedImage scene(int width, int height) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int red = 255 * x / width;
        int green = 255 * y / height;
        int blue = (int) (127.5 + 127.5 * Math.sin(x * 0.11) * Math.cos(y * 0.07));
        boolean corner = x < width / 4 && y < height / 6;
        picture.setRGB(x, y, corner ? 0xffffff : red << 16 | green << 8 | blue);
      }
    }
    return picture;
  }

  static BufferedImage plain(int width, int height, int rgb) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        picture.setRGB(x, y, rgb);
      }
    }
    return picture;
  }

  /** Every pixel of its own colour, the same ones each time. */
  static BufferedImage noise(int width, int height) {
    Random chance = new Random(5);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        picture.setRGB(x, y, chance.nextInt(1 << 24));
      }
    }
    return picture;
  }
}
