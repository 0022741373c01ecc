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
    for (int y = 0; y < luma.height(); y++) {
      int above = Math.max(0, y - 1);
      int below = Math.min(luma.height() - 1, y + 1);
      for (int x = 0; x < luma.width(); x++) {
        int left = Math.max(0, x - 1);
        int right = Math.min(luma.width() - 1, x + 1);
        out.values()[y * luma.width() + x] =
            smooth.at(left, y)
                + smooth.at(right, y)
                + smooth.at(x, above)
                + smooth.at(x, below)
                - 4 * smooth.at(x, y);
      }
    }
    return new Sharpness(out);
  }

  /** Each pixel counted by the square of how much the map says it matters. */
  double weighted(SubjectMap map) {
    double weights = 0;
    double sum = 0;
    double squares = 0;
    for (int y = 0; y < laplacian.height(); y++) {
      int row = (int) ((long) y * map.rows() / laplacian.height());
      for (int x = 0; x < laplacian.width(); x++) {
        double share = map.weight((int) ((long) x * map.columns() / laplacian.width()), row);
        double weight = share * share; // the map never falls to nothing on a busy background
        double value = laplacian.at(x, y);
        weights += weight;
        sum += weight * value;
        squares += weight * value * value;
      }
    }
    return variance(weights, sum, squares);
  }

  /**
   * On what a box is about: the middle of the box counts most (a Gaussian, sigma a quarter of each
   * side), and of that what the map says matters, because much of a box around a face or a boat
   * shows what is behind it.
   *
   * <p>Energy of the Laplacian in cells of 8 pixels, less that of the flattest tenth of them, which
   * is noise (as far as noise goes); averaged by its square root, so that a few hard edges of the
   * background do not outweigh a subject with gentle ones.
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
    double noise = Math.min(MOST_NOISE, quantile(energies, FLATTEST));
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
