package org.daymount.look;

import java.util.Arrays;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Sharpness as the variance of the Laplacian (Pech-Pacheco et al. 2000) after a blur of sigma 1,
 * without which the noise of a dim picture passes for detail. Squared luma steps of 8-bit pictures;
 * from 0, without an upper end; comparable only between pictures of one scene at one size.
 */
final class Sharpness {
  private static final double NOISE_BLUR = 1;
  private static final double MIDDLE_SIGMA = 0.25;
  private static final int CELL = 8; // pixels
  private static final double FLATTEST = 0.1; // of the cells

  /**
   * Where nothing but white noise is, the flattest tenth of the cells lies at this part of their
   * mean (4,000 cells of Gaussian noise put through the same blur and Laplacian).
   */
  private static final double FLATTEST_OF_MEAN_NOISE = 0.68;

  /**
   * What luma noise of sigma 12 comes to after the blur: 0.112 of its square (the kernel's sum).
   */
  private static final double MOST_NOISE = 16;

  private final Plane laplacian;

  private Sharpness(Plane laplacian) {
    this.laplacian = laplacian;
  }

  static Sharpness of(Plane luma) {
    Plane smooth = luma.blurred(NOISE_BLUR);
    Plane out = Plane.empty(luma.width(), luma.height());
    int width = luma.width();
    float[] from = smooth.values();
    float[] to = out.values();
    for (int y = 0; y < luma.height(); y++) {
      int row = y * width;
      int above = Math.max(0, y - 1) * width;
      int below = Math.min(luma.height() - 1, y + 1) * width;
      for (int x = 1; x < width - 1; x++) {
        to[row + x] =
            from[row + x - 1]
                + from[row + x + 1]
                + from[above + x]
                + from[below + x]
                - 4 * from[row + x];
      }
      for (int x : new int[] {0, width - 1}) {
        to[row + x] =
            from[row + Math.max(0, x - 1)]
                + from[row + Math.min(width - 1, x + 1)]
                + from[above + x]
                + from[below + x]
                - 4 * from[row + x];
      }
    }
    return new Sharpness(out);
  }

  /** Each pixel counted by the square of how much the map says it matters. */
  double weighted(SaliencyMap map) {
    int width = laplacian.width();
    int[] columnOf = new int[width];
    for (int x = 0; x < width; x++) {
      columnOf[x] = (int) ((long) x * map.columns() / width);
    }
    double weights = 0;
    double sum = 0;
    double squares = 0;
    for (int y = 0; y < laplacian.height(); y++) {
      double[] rowWeights = squaredWeights(map, (int) ((long) y * map.rows() / laplacian.height()));
      for (int x = 0; x < width; x++) {
        double weight = rowWeights[columnOf[x]];
        double value = laplacian.values()[y * width + x];
        weights += weight;
        sum += weight * value;
        squares += weight * value * value;
      }
    }
    return variance(weights, sum, squares);
  }

  /** Squared, for the map never falls to nothing on a busy background. */
  private static double[] squaredWeights(SaliencyMap map, int row) {
    double[] weights = new double[map.columns()];
    for (int column = 0; column < weights.length; column++) {
      weights[column] = map.weight(column, row) * map.weight(column, row);
    }
    return weights;
  }

  /**
   * On what a box is about: the middle of the box counts most (a Gaussian, sigma a quarter of each
   * side), and of that what the map says matters, because much of a box around a face or a boat
   * shows what is behind it.
   *
   * <p>Energy of the Laplacian in cells of 8 pixels, less that of noise (as far as noise goes),
   * which the flattest tenth of them tells; averaged by its square root, so that a few hard edges
   * of the background do not outweigh a subject with gentle ones.
   *
   * @param box what of it lies outside this plane does not count
   * @param weight how much a pixel matters, at least 0
   */
  double inside(PixelBox box, PixelWeight weight) {
    PixelBox part = box.within(new PixelSize(laplacian.width(), laplacian.height()));
    int columns = Math.max(1, part.width() / CELL);
    int rows = Math.max(1, part.height() / CELL);
    double[] energies = new double[columns * rows];
    double[] weights = new double[columns * rows];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int cell = row * columns + column;
        int x = part.x() + column * CELL;
        int y = part.y() + row * CELL;
        int right = Math.min(part.right(), x + CELL);
        int bottom = Math.min(part.bottom(), y + CELL);
        energies[cell] = energy(x, y, right, bottom);
        int middleX = (x + right) / 2;
        int middleY = (y + bottom) / 2;
        weights[cell] =
            fromMiddle(middleX, box.centreX(), box.width())
                * fromMiddle(middleY, box.centreY(), box.height())
                * Math.pow(weight.at(middleX, middleY), 2);
      }
    }
    double noise = Math.min(MOST_NOISE, quantile(energies, FLATTEST) / FLATTEST_OF_MEAN_NOISE);
    double sum = 0;
    double all = 0;
    for (int cell = 0; cell < energies.length; cell++) {
      sum += weights[cell] * Math.sqrt(Math.max(0, energies[cell] - noise));
      all += weights[cell];
    }
    return all > 0 ? Math.pow(sum / all, 2) : 0;
  }

  /** How much a pixel of this plane matters. */
  interface PixelWeight {
    double at(int x, int y);
  }

  private double energy(int left, int top, int right, int bottom) {
    double squares = 0;
    for (int y = top; y < bottom; y++) {
      for (int x = left; x < right; x++) {
        squares += laplacian.at(x, y) * laplacian.at(x, y);
      }
    }
    return squares / ((right - left) * (bottom - top));
  }

  private static double quantile(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted.length == 1 ? 0 : sorted[(int) (share * (sorted.length - 1))];
  }

  private static double fromMiddle(int pixel, double centre, int side) {
    double off = (pixel - centre) / (MIDDLE_SIGMA * side);
    return Math.exp(-off * off / 2);
  }

  private static double variance(double weights, double sum, double squares) {
    if (weights <= 0) {
      return 0;
    }
    double mean = sum / weights;
    return Math.max(0, squares / weights - mean * mean);
  }
}
