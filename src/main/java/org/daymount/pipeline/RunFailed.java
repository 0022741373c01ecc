package org.daymount.pipeline;

/** The run cannot go on; the message is one sentence with the fact and the next step. */
public final class RunFailed extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public RunFailed(String message) {
    super(message);
  }
}
