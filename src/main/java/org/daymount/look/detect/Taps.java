package org.daymount.look.detect;

/**
 * Which old pixels of a line make one new pixel, and how much of each: the mean over the area when
 * the line gets shorter, the two nearest when it gets longer.
 *
 * @param first the first old pixel; the others follow, but none beyond {@code last}
 * @param weights add up to 1
 */
record Taps(int first, int last, float[] weights) {

  static Taps[] across(int oldLength, int newLength) {
    double step = oldLength / (double) newLength;
    Taps[] taps = new Taps[newLength];
    for (int i = 0; i < newLength; i++) {
      taps[i] = step > 1 ? mean(i * step, step, oldLength) : between((i + 0.5) * step, oldLength);
    }
    return taps;
  }

  private static Taps mean(double from, double step, int length) {
    double to = Math.min(length, from + step);
    int first = (int) Math.floor(from);
    int end = Math.max(first + 1, (int) Math.ceil(to - 1e-9));
    float[] weights = new float[end - first];
    for (int i = first; i < end; i++) {
      weights[i - first] = (float) ((Math.min(to, i + 1) - Math.max(from, i)) / (to - from));
    }
    return new Taps(first, length - 1, weights);
  }

  private static Taps between(double middle, int length) {
    double from = Math.max(0, middle - 0.5);
    int first = Math.min(length - 1, (int) Math.floor(from));
    float second = (float) (from - first);
    return new Taps(first, length - 1, new float[] {1 - second, second});
  }

  int at(int i) {
    return Math.min(first + i, last);
  }
}
