package org.daymount.output;

import java.io.IOException;

/** The output cannot be written; the message is one sentence with the fact and the next step. */
public final class OutputException extends IOException {
  private static final long serialVersionUID = 1L;

  public OutputException(String message) {
    super(message);
  }
}
