package org.daymount.look;

/**
 * The source pixels that one pixel of a smaller picture averages, along one axis.
 *
 * @param shares how much of the average each gives, from {@code first} on; they add up to 1
 */
record Span(int first, float[] shares) {
  /** Spans that share out {@code from} pixels evenly among {@code to}. */
  static Span[] all(int from, int to) {
    double step = from / (double) to;
    Span[] spans = new Span[to];
    for (int i = 0; i < to; i++) {
      double start = i * step;
      double end = Math.min(from, start + step);
      int first = Math.min(from - 1, (int) Math.floor(start + 1e-9));
      int last = Math.max(first + 1, (int) Math.ceil(end - 1e-9));
      float[] shares = new float[last - first];
      for (int k = 0; k < shares.length; k++) {
        double covered = Math.min(end, first + k + 1) - Math.max(start, first + k);
        shares[k] = (float) (covered / (end - start));
      }
      spans[i] = new Span(first, shares);
    }
    return spans;
  }

  /** A plane averaged by area to {@code width} x {@code height}. */
  static Plane average(Plane plane, int width, int height) {
    Span[] columns = all(plane.width(), width);
    Span[] rows = all(plane.height(), height);
    Plane out = Plane.empty(width, height);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        float sum = 0;
        for (int j = 0; j < rows[y].shares.length; j++) {
          for (int i = 0; i < columns[x].shares.length; i++) {
            sum +=
                rows[y].shares[j]
                    * columns[x].shares[i]
                    * plane.at(columns[x].first + i, rows[y].first + j);
          }
        }
        out.values()[y * width + x] = sum;
      }
    }
    return out;
  }
}
