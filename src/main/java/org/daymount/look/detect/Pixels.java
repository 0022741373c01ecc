package org.daymount.look.detect;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

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

  /**
   * A square part that may reach beyond the picture (black there), scaled to another size: each
   * point between the four pixels around it, or the mean of a few where the part is larger.
   *
   * @param side of the part, pixels of this picture
   * @param to side of the result
   * @return red, then green, then blue, each row by row, 0 to 255
   */
  float[] patch(double left, double top, double side, int to) {
    double step = side / to;
    int samples = Math.max(1, (int) Math.ceil(step));
    float[] planes = new float[3 * to * to];
    float share = 1f / (samples * samples);
    for (int y = 0; y < to; y++) {
      for (int x = 0; x < to; x++) {
        for (int sample = 0; sample < samples * samples; sample++) {
          double across = left + (x + (sample % samples + 0.5) / samples) * step;
          double down = top + (y + (sample / samples + 0.5) / samples) * step;
          addBlended(planes, y * to + x, across, down, share);
        }
      }
    }
    return planes;
  }

  private void addBlended(float[] planes, int at, double across, double down, float share) {
    int x = (int) Math.floor(across - 0.5);
    int y = (int) Math.floor(down - 0.5);
    double right = across - 0.5 - x;
    double below = down - 0.5 - y;
    int plane = planes.length / 3;
    for (int corner = 0; corner < 4; corner++) {
      int cx = x + (corner & 1);
      int cy = y + (corner >> 1);
      if (cx < 0 || cy < 0 || cx >= width || cy >= height) {
        continue;
      }
      double weight = ((corner & 1) == 0 ? 1 - right : right) * (corner < 2 ? 1 - below : below);
      int colour = rgb[cy * width + cx];
      planes[at] += (float) (share * weight * (colour >> 16 & 0xff));
      planes[at + plane] += (float) (share * weight * (colour >> 8 & 0xff));
      planes[at + 2 * plane] += (float) (share * weight * (colour & 0xff));
    }
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
    return fitted(side, (side - fittedWidth) / 2, (side - fittedHeight) / 2);
  }

  /** The whole picture scaled into the top left of a square; what is left over stays black. */
  Letterbox topLeft(int side) {
    return fitted(side, 0, 0);
  }

  private int fitted(int length, int side) {
    double scale = Math.max(width, height) / (double) side;
    return Math.max(1, Math.min(side, (int) Math.round(length / scale)));
  }

  private Letterbox fitted(int side, int left, int top) {
    int fittedWidth = fitted(width, side);
    int fittedHeight = fitted(height, side);
    int plane = side * side;
    float[] planes = new float[3 * plane];
    ScaledLines lines = new ScaledLines(rgb, width, Taps.across(width, fittedWidth));
    Taps[] rows = Taps.across(height, fittedHeight);
    for (int y = 0; y < fittedHeight; y++) {
      float[] line = lines.blended(rows[y]);
      int at = (top + y) * side + left;
      for (int x = 0; x < fittedWidth; x++) {
        planes[at + x] = line[3 * x];
        planes[at + x + plane] = line[3 * x + 1];
        planes[at + x + 2 * plane] = line[3 * x + 2];
      }
    }
    double scale = Math.max(width, height) / (double) side;
    return new Letterbox(
        new PixelSize(side, side),
        planes,
        scale,
        new PixelBox(left, top, fittedWidth, fittedHeight));
  }
}
