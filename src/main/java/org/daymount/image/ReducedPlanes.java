package org.daymount.image;

import java.util.Arrays;

/**
 * A decoded frame in which each sample is the mean of several: for looking at, not for printing.
 */
final class ReducedPlanes {
  private static final int MOST = 8;

  private ReducedPlanes() {}

  /** The greatest reduction (1, 2, 4, 8) that leaves at least {@code least} of {@code pixels}. */
  static int times(int pixels, int least) {
    int times = MOST;
    while (times > 1 && pixels / times < least) {
      times /= 2;
    }
    return times;
  }

  /**
   * @param times 1, 2, 4 or 8 pixels each way become one; what is left over at the right and below
   *     counts nowhere
   * @return of 8 bits, unless {@code times} is 1; colours are shared by no more pixels than before
   */
  static YuvFrame of(YuvFrame planes, int times) {
    if (times == 1) {
      return planes;
    }
    int width = planes.width() / times;
    int height = planes.height() / times;
    int across = shared(planes.chromaAcross(), times);
    int down = shared(planes.chromaDown(), times);
    PlaneLayout layout =
        new PlaneLayout(width, height, planes.isGrey() ? 1 : 3, 8, across, down, planes.colour());
    byte[][] reduced = new byte[layout.planes()][];
    int[] strides = new int[reduced.length];
    for (int i = 0; i < reduced.length; i++) {
      strides[i] = layout.width(i);
      reduced[i] =
          i == 0
              ? mean(planes, 0, layout, times, times)
              : mean(
                  planes,
                  i,
                  layout,
                  Math.max(1, times >> planes.chromaAcross()),
                  Math.max(1, times >> planes.chromaDown()));
    }
    return new YuvFrame(layout, reduced, strides);
  }

  private static int shared(int log2, int times) {
    int left = log2;
    for (int t = times; t > 1 && left > 0; t /= 2) {
      left--;
    }
    return left;
  }

  private static byte[] mean(YuvFrame planes, int plane, PlaneLayout layout, int across, int down) {
    int width = layout.width(plane);
    int height = layout.height(plane);
    byte[] means = new byte[width * height];
    int[] row = new int[plane == 0 ? planes.width() : planes.chromaWidth()];
    int[] sums = new int[row.length];
    int count = across * down << planes.bits() - 8;
    for (int y = 0; y < height; y++) {
      Arrays.fill(sums, 0);
      for (int i = 0; i < down; i++) {
        planes.row(plane, y * down + i, row);
        for (int x = 0; x < row.length; x++) {
          sums[x] += row[x];
        }
      }
      for (int x = 0, from = 0; x < width; x++) {
        int sum = count / 2;
        for (int end = from + across; from < end; from++) {
          sum += sums[from];
        }
        means[y * width + x] = (byte) Math.min(255, sum / count);
      }
    }
    return means;
  }
}
