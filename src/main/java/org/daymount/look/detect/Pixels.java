package org.daymount.look.detect;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;

/** The colours of a picture as plain numbers, for reading only. */
final class Pixels {
  private final int width;
  private final int height;
  private final int[] rgb;

  private Pixels(int width, int height, int[] rgb) {
    this.width = width;
    this.height = height;
    this.rgb = rgb;
  }

  static Pixels of(BufferedImage image) {
    BufferedImage plain = image;
    if (image.getType() != BufferedImage.TYPE_INT_RGB) {
      plain = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
      Graphics2D graphics = plain.createGraphics();
      graphics.drawImage(image, 0, 0, null);
      graphics.dispose();
    }
    int width = plain.getWidth();
    int height = plain.getHeight();
    int[] rgb = (int[]) plain.getRaster().getDataElements(0, 0, width, height, null);
    return new Pixels(width, height, rgb);
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** A square part. */
  Pixels square(int x, int y, int side) {
    int[] part = new int[side * side];
    for (int row = 0; row < side; row++) {
      System.arraycopy(rgb, (y + row) * width + x, part, row * side, side);
    }
    return new Pixels(side, side, part);
  }

  /** The picture turned by a quarter to the right. */
  Pixels turnedRight() {
    int[] turned = new int[rgb.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        turned[x * height + (height - 1 - y)] = rgb[y * width + x];
      }
    }
    return new Pixels(height, width, turned);
  }

  /** The whole picture scaled into the middle of a square; what is left over stays black. */
  Letterbox centred(int side) {
    int fittedWidth = fitted(width, side);
    int fittedHeight = fitted(height, side);
    return fitted(side, side, side, (side - fittedWidth) / 2, (side - fittedHeight) / 2);
  }

  /**
   * The whole picture scaled into the top left of a square, without the part of the square that it
   * leaves empty.
   *
   * @param side of the square, a multiple of {@code step}
   * @param step to which width and height are rounded up; the rest stays black
   */
  Letterbox topLeft(int side, int step) {
    int usedWidth = (fitted(width, side) + step - 1) / step * step;
    int usedHeight = (fitted(height, side) + step - 1) / step * step;
    return fitted(side, usedWidth, usedHeight, 0, 0);
  }

  private int fitted(int length, int side) {
    double scale = Math.max(width, height) / (double) side;
    return Math.max(1, Math.min(side, (int) Math.round(length / scale)));
  }

  private Letterbox fitted(int side, int planeWidth, int planeHeight, int left, int top) {
    int fittedWidth = fitted(width, side);
    int fittedHeight = fitted(height, side);
    int plane = planeWidth * planeHeight;
    float[] planes = new float[3 * plane];
    Taps[] columns = Taps.across(width, fittedWidth);
    Taps[] rows = Taps.across(height, fittedHeight);
    float[] line = new float[3 * fittedWidth];
    for (int y = 0; y < fittedHeight; y++) {
      Arrays.fill(line, 0);
      for (int i = 0; i < rows[y].weights().length; i++) {
        addLine(line, rows[y].at(i), rows[y].weights()[i], columns);
      }
      int at = (top + y) * planeWidth + left;
      for (int x = 0; x < fittedWidth; x++) {
        planes[at + x] = line[3 * x];
        planes[at + x + plane] = line[3 * x + 1];
        planes[at + x + 2 * plane] = line[3 * x + 2];
      }
    }
    double scale = Math.max(width, height) / (double) side;
    return new Letterbox(planeWidth, planeHeight, planes, scale, left, top);
  }

  private void addLine(float[] line, int row, float weight, Taps[] columns) {
    int start = row * width;
    for (int x = 0; x < columns.length; x++) {
      float red = 0;
      float green = 0;
      float blue = 0;
      Taps taps = columns[x];
      for (int i = 0; i < taps.weights().length; i++) {
        int colour = rgb[start + taps.at(i)];
        float share = taps.weights()[i];
        red += share * ((colour >> 16) & 255);
        green += share * ((colour >> 8) & 255);
        blue += share * (colour & 255);
      }
      line[3 * x] += weight * red;
      line[3 * x + 1] += weight * green;
      line[3 * x + 2] += weight * blue;
    }
  }
}
