package org.daymount.look;

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
   * Inside a box alone, its middle counting most (a Gaussian, sigma a quarter of each side): the
   * corners of a box around a face or a boat show what is behind it. What of the box lies outside
   * the picture does not count.
   */
  double inside(PixelBox box) {
    PixelBox part = box.within(new PixelSize(laplacian.width(), laplacian.height()));
    double weights = 0;
    double sum = 0;
    double squares = 0;
    for (int y = part.y(); y < part.bottom(); y++) {
      double down = fromMiddle(y, box.centreY(), box.height());
      for (int x = part.x(); x < part.right(); x++) {
        double weight = down * fromMiddle(x, box.centreX(), box.width());
        double value = laplacian.at(x, y);
        weights += weight;
        sum += weight * value;
        squares += weight * value * value;
      }
    }
    return variance(weights, sum, squares);
  }

  private static double fromMiddle(int pixel, double centre, int side) {
    double off = (pixel + 0.5 - centre) / (MIDDLE_SIGMA * side);
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
