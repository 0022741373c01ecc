package org.daymount.look.detect;

/** The detectors, loaded when they are first needed and kept until closed; then as at first. */
public final class DetectorsOnDemand implements AutoCloseable {
  private final int jobs;
  private Detectors loaded;
  private DetectorsUnavailable unavailable;

  /**
   * @param jobs threads that will look at once
   */
  public DetectorsOnDemand(int jobs) {
    this.jobs = jobs;
  }

  synchronized Detectors get() throws DetectorsUnavailable {
    if (unavailable != null) {
      throw unavailable;
    }
    if (loaded == null) {
      try {
        loaded = Detectors.load(jobs);
      } catch (DetectorsUnavailable e) {
        unavailable = e;
        throw e;
      }
    }
    return loaded;
  }

  @Override
  public synchronized void close() {
    if (loaded != null) {
      loaded.close();
      loaded = null;
    }
  }
}
