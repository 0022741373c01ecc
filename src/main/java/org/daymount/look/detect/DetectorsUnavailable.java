package org.daymount.look.detect;

/**
 * The detectors cannot run on this computer. The message says why, in words for a person; a run
 * goes on without them.
 */
public final class DetectorsUnavailable extends Exception {
  private static final long serialVersionUID = 1L;

  DetectorsUnavailable(String message, Throwable cause) {
    super(message, cause);
  }
}
