package org.daymount.look.detect;

/**
 * The detectors cannot run on this computer. The message says why, in words for a person; a run
 * goes on without them.
 */
public final class DetectorsUnavailable extends Exception {
  private static final long serialVersionUID = 1L;

  DetectorsUnavailable(String why) {
    super("faces and subjects are not looked for: " + why);
  }

  DetectorsUnavailable(String why, Throwable cause) {
    super("faces and subjects are not looked for: " + why + " (" + detail(cause) + ")", cause);
  }

  /** What the first thing that went wrong says. */
  private static String detail(Throwable cause) {
    Throwable first = cause;
    while (first.getCause() != null) {
      first = first.getCause();
    }
    return first.getMessage() == null ? first.getClass().getSimpleName() : first.getMessage();
  }
}
