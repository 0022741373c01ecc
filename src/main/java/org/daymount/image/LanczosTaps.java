package org.daymount.image;

/**
 * One direction of a resampling: which source samples make up each target pixel, and their weights.
 *
 * <p>The filter is the sinc windowed by its own central lobe stretched over three lobes (Lanczos-3;
 * C. E. Duchon, "Lanczos filtering in one and two dimensions", Journal of Applied Meteorology 18,
 * 1979). For a reduction it is widened by the factor, which makes it the low-pass that keeps fine
 * detail from turning into false patterns. Pixels are areas: sample k covers k to k + 1, its centre
 * is at k + 0.5. Beyond the first and last sample the border sample is repeated.
 */
final class LanczosTaps {
  static final int LOBES = 3;

  private final int[] first;
  private final float[][] weights;

  /**
   * @param samples number of source samples there are
   * @param start where the target's first edge lies, in samples
   * @param length how many samples the target spans
   * @param target number of target pixels
   */
  LanczosTaps(int samples, double start, double length, int target) {
    double scale = length / target;
    double widening = Math.max(1, scale);
    first = new int[target];
    weights = new float[target][];
    for (int i = 0; i < target; i++) {
      place(i, start + (i + 0.5) * scale, widening, samples);
    }
  }

  private void place(int pixel, double centre, double widening, int samples) {
    int from = (int) Math.floor(centre - LOBES * widening);
    int to = (int) Math.ceil(centre + LOBES * widening);
    int firstKept = Math.min(Math.max(0, from), samples - 1);
    int lastKept = Math.min(Math.max(0, to - 1), samples - 1);
    double[] raw = new double[lastKept - firstKept + 1];
    double sum = 0;
    for (int k = from; k < to; k++) {
      double weight = lanczos((k + 0.5 - centre) / widening);
      raw[Math.min(Math.max(k, firstKept), lastKept) - firstKept] += weight;
      sum += weight;
    }
    float[] normal = new float[raw.length];
    for (int k = 0; k < raw.length; k++) {
      normal[k] = (float) (raw[k] / sum);
    }
    first[pixel] = firstKept;
    weights[pixel] = normal;
  }

  private static double lanczos(double t) {
    if (t == 0) {
      return 1;
    }
    if (Math.abs(t) >= LOBES) {
      return 0;
    }
    double x = Math.PI * t;
    return LOBES * Math.sin(x) * Math.sin(x / LOBES) / (x * x);
  }

  int targets() {
    return first.length;
  }

  /** The first source sample of a target pixel; the others follow it. */
  int first(int pixel) {
    return first[pixel];
  }

  /** The first source sample after those of a target pixel. */
  int end(int pixel) {
    return first[pixel] + weights[pixel].length;
  }

  /** Weights of a target pixel's samples, in order; their sum is 1. Not to be written to. */
  float[] weights(int pixel) {
    return weights[pixel];
  }
}
