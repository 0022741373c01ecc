package org.daymount.clip;

/** A table of runs (how many, which value), read one sample after the other. */
final class Runs {
  private final Box box;
  private final long runs;
  private long run;
  private long left;
  private int value;

  /**
   * @param box full box: a count, then pairs of 32 bits (stts, ctts); only the pairs that lie
   *     inside it are read
   */
  Runs(Box box) {
    this.box = box;
    this.runs = Math.min(box.u32(4), (box.body().limit() - 8) / 8);
  }

  /** The value of the next sample; behind the last run 0. */
  int next() {
    while (left == 0) {
      if (run == runs) {
        return 0;
      }
      int at = 8 + (int) run * 8;
      left = box.u32(at);
      value = box.body().getInt(at + 4);
      run++;
    }
    left--;
    return value;
  }
}
