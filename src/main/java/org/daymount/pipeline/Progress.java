package org.daymount.pipeline;

/** Hears how far a run has come. Steps may come from several threads at once. */
public interface Progress {
  Progress SILENT =
      new Progress() {
        @Override
        public void stage(String what, int steps) {}

        @Override
        public void step() {}
      };

  /**
   * A new stage begins; the one before has ended.
   *
   * @param what in words: "looking at pictures"
   * @param steps how many {@link #step}s will follow; 0 when it cannot be known
   */
  void stage(String what, int steps);

  /** One more is done. */
  void step();

  /** Everything is done, or has failed. */
  default void end() {}

  /** Tells another one too. */
  default Progress and(Progress other) {
    Progress one = this;
    return new Progress() {
      @Override
      public void stage(String what, int steps) {
        one.stage(what, steps);
        other.stage(what, steps);
      }

      @Override
      public void step() {
        one.step();
        other.step();
      }

      @Override
      public void end() {
        one.end();
        other.end();
      }
    };
  }
}
