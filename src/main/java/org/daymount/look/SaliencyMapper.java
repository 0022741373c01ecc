package org.daymount.look;

/**
 * Where the subject probably is, from the pixels alone: what is cut off from the border by a step
 * in colour (minimum barrier) and what is coloured unlike it, in equal parts.
 */
final class SaliencyMapper {
  /** Cells along the longer side; a month of 10,000 photos then stays near 70 MB of maps. */
  private static final int LONGER_SIDE_CELLS = 48;

  private SaliencyMapper() {}

  /**
   * @param small a copy of the picture, long edge about 160
   */
  static SaliencyMap map(Rgb small) {
    Lab lab = Lab.of(small);
    Plane barrier = MinimumBarrierDistance.of(lab);
    Plane border = Backgroundness.of(lab);
    double barrierMean = barrier.mean() + 1e-6;
    double borderMean = border.mean() + 1e-6;
    Plane sum = Plane.empty(small.width(), small.height());
    for (int i = 0; i < sum.values().length; i++) {
      sum.values()[i] =
          (float) (barrier.values()[i] / barrierMean + border.values()[i] / borderMean);
    }
    return onGrid(sum);
  }

  private static SaliencyMap onGrid(Plane weights) {
    int longer = Math.max(weights.width(), weights.height());
    double scale = Math.min(1, LONGER_SIDE_CELLS / (double) longer);
    int columns = Math.max(1, (int) Math.round(weights.width() * scale));
    int rows = Math.max(1, (int) Math.round(weights.height() * scale));
    return new SaliencyMap(columns, rows, Span.average(weights, columns, rows).values());
  }
}
