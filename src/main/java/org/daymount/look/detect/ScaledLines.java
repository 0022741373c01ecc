package org.daymount.look.detect;

import java.util.Arrays;

/**
 * Lines of a picture made narrower or wider, each once, and blended into the lines of the scaled
 * picture. Ask for those from the top down: of the lines already passed only the last few are kept.
 */
final class ScaledLines {
  /** More than one line needs when a picture of some thousand pixels becomes one of hundreds. */
  private static final int KEPT = 16;

  private final int[] rgb;
  private final int width;
  private final Taps[] columns;
  private final float[][] kept;
  private final int[] keptRow;
  private final float[] blended;

  /**
   * @param rgb of the picture, line by line
   * @param width of its lines
   */
  ScaledLines(int[] rgb, int width, Taps[] columns) {
    this.rgb = rgb;
    this.width = width;
    this.columns = columns;
    this.kept = new float[KEPT][3 * columns.length];
    this.keptRow = new int[KEPT];
    Arrays.fill(keptRow, -1);
    this.blended = new float[3 * columns.length];
  }

  /**
   * @return red, green and blue, 0 to 255, pixel by pixel; valid until the next call
   */
  float[] blended(Taps rows) {
    Arrays.fill(blended, 0);
    for (int i = 0; i < rows.weights().length; i++) {
      float[] line = scaled(rows.at(i));
      float weight = rows.weights()[i];
      for (int x = 0; x < line.length; x++) {
        blended[x] += weight * line[x];
      }
    }
    return blended;
  }

  private float[] scaled(int row) {
    float[] line = kept[row % KEPT];
    if (keptRow[row % KEPT] != row) {
      keptRow[row % KEPT] = row;
      scale(row * width, line);
    }
    return line;
  }

  private void scale(int start, float[] line) {
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
      line[3 * x] = red;
      line[3 * x + 1] = green;
      line[3 * x + 2] = blue;
    }
  }
}
