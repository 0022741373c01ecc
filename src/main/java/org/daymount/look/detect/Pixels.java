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

  /**
   * The whole picture scaled into a square, keeping its shape; what is left over stays black.
   *
   * @param side of the square
   * @param centred in the middle of the square, otherwise at its top left
   */
  Letterbox fitted(int side, boolean centred) {
    double scale = Math.max(width, height) / (double) side;
    int fittedWidth = Math.max(1, Math.min(side, (int) Math.round(width / scale)));
    int fittedHeight = Math.max(1, Math.min(side, (int) Math.round(height / scale)));
    int left = centred ? (side - fittedWidth) / 2 : 0;
    int top = centred ? (side - fittedHeight) / 2 : 0;
    float[] planes = new float[3 * side * side];
    Taps[] columns = Taps.across(width, fittedWidth);
    Taps[] rows = Taps.across(height, fittedHeight);
    float[] line = new float[3 * fittedWidth];
    for (int y = 0; y < fittedHeight; y++) {
      Arrays.fill(line, 0);
      for (int i = 0; i < rows[y].weights().length; i++) {
        addLine(line, rows[y].at(i), rows[y].weights()[i], columns);
      }
      int at = (top + y) * side + left;
      for (int x = 0; x < fittedWidth; x++) {
        planes[at + x] = line[3 * x];
        planes[at + x + side * side] = line[3 * x + 1];
        planes[at + x + 2 * side * side] = line[3 * x + 2];
      }
    }
    return new Letterbox(side, planes, scale, left, top);
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
