package org.daymount.look;

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
    return Selection.of(values.clone(), values.length, (int) (share * (values.length - 1)));
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
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < row.length; x++) {
        row[x] = values[y * width + clamp(x - reach, width)];
      }
      for (int k = 0; k < taps.length; k++) { // tap by tap, which a compiler turns into vectors
        addTo(out.values, y * width, row, k, taps[k], width);
      }
    }
    return out;
  }

  /** Each column convolved with an odd number of taps; the border pixels are repeated outwards. */
  Plane downColumns(float[] taps) {
    int reach = taps.length / 2;
    Plane out = empty(width, height);
    for (int y = 0; y < height; y++) {
      for (int k = 0; k < taps.length; k++) {
        int from = clamp(y + k - reach, height) * width;
        addTo(out.values, y * width, values, from, taps[k], width);
      }
    }
    return out;
  }

  private static void addTo(float[] to, int at, float[] from, int first, float tap, int count) {
    for (int i = 0; i < count; i++) {
      to[at + i] += tap * from[first + i];
    }
  }

  private static int clamp(int i, int size) {
    return Math.max(0, Math.min(i, size - 1));
  }
}
