package org.daymount.look;

import java.util.Arrays;
import org.daymount.unit.PixelBox;

/** One channel of a picture: {@code width} x {@code height} values, row by row. */
record Plane(int width, int height, float[] values) {
  Plane {
    if (values.length != width * height) {
      throw new IllegalArgumentException(
          values.length + " values do not fill " + width + " x " + height);
    }
  }

  static Plane empty(int width, int height) {
    return new Plane(width, height, new float[width * height]);
  }

  float at(int x, int y) {
    return values[y * width + x];
  }

  double mean() {
    double sum = 0;
    for (float value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  /**
   * @param box inside this plane
   */
  Plane part(PixelBox box) {
    Plane part = empty(box.width(), box.height());
    for (int y = 0; y < box.height(); y++) {
      System.arraycopy(
          values, (box.y() + y) * width + box.x(), part.values, y * box.width(), box.width());
    }
    return part;
  }

  /** The value that the given share of all values, 0 to 1, is below. */
  double quantile(double share) {
    return Selection.of(values, values.length, (int) (share * (values.length - 1)));
  }

  /** Stretched so that the smallest value is 0 and the largest 1; all 0 when they are equal. */
  Plane stretched() {
    float low = Float.POSITIVE_INFINITY;
    float high = Float.NEGATIVE_INFINITY;
    for (float value : values) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    Plane out = empty(width, height);
    if (high > low) {
      for (int i = 0; i < values.length; i++) {
        out.values[i] = (values[i] - low) / (high - low);
      }
    }
    return out;
  }

  /** Convolved with a Gaussian cut off at three sigma; the border pixels are repeated outwards. */
  Plane blurred(double sigma) {
    int reach = (int) Math.ceil(3 * sigma);
    float[] taps = new float[2 * reach + 1];
    double sum = 0;
    for (int i = -reach; i <= reach; i++) {
      sum += Math.exp(-i * i / (2 * sigma * sigma));
    }
    for (int i = -reach; i <= reach; i++) {
      taps[i + reach] = (float) (Math.exp(-i * i / (2 * sigma * sigma)) / sum);
    }
    return acrossRows(taps).downColumns(taps);
  }

  /** Each row convolved with an odd number of taps; the border pixels are repeated outwards. */
  Plane acrossRows(float[] taps) {
    int reach = taps.length / 2;
    Plane out = empty(width, height);
    float[] row = new float[width + 2 * reach];
    int[] from = new int[taps.length];
    Arrays.setAll(from, k -> k);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < reach; x++) {
        row[x] = values[y * width];
        row[row.length - 1 - x] = values[y * width + width - 1];
      }
      System.arraycopy(values, y * width, row, reach, width);
      addTo(out.values, y * width, row, from, taps, width);
    }
    return out;
  }

  /** Each column convolved with an odd number of taps; the border pixels are repeated outwards. */
  Plane downColumns(float[] taps) {
    int reach = taps.length / 2;
    Plane out = empty(width, height);
    int[] from = new int[taps.length];
    for (int y = 0; y < height; y++) {
      for (int k = 0; k < taps.length; k++) {
        from[k] = clamp(y + k - reach, height) * width;
      }
      addTo(out.values, y * width, values, from, taps, width);
    }
    return out;
  }

  /** Three taps at a time over a whole line, which a compiler turns into vectors; then the rest. */
  private static void addTo(
      float[] to, int at, float[] values, int[] from, float[] taps, int count) {
    int k = 0;
    for (; k + 3 <= taps.length; k += 3) {
      addThree(to, at, values, from[k], from[k + 1], from[k + 2], taps, k, count);
    }
    for (; k < taps.length; k++) {
      float tap = taps[k];
      int first = from[k];
      for (int i = 0; i < count; i++) {
        to[at + i] += tap * values[first + i];
      }
    }
  }

  private static void addThree(
      float[] to, int at, float[] values, int a, int b, int c, float[] taps, int k, int count) {
    float first = taps[k];
    float second = taps[k + 1];
    float third = taps[k + 2];
    for (int i = 0; i < count; i++) {
      to[at + i] =
          to[at + i] + first * values[a + i] + second * values[b + i] + third * values[c + i];
    }
  }

  private static int clamp(int i, int size) {
    return Math.max(0, Math.min(i, size - 1));
  }
}
