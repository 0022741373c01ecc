package org.daymount.output;

import java.io.IOException;

/** The output cannot be written; the message is one sentence with the fact and the next step. */
public final class OutputException extends IOException {
  private static final long serialVersionUID = 1L;

  private final boolean inTheWay;

  public OutputException(String message) {
    this(message, false);
  }

  /**
   * @param inTheWay whether a file that this program did not make lies where one is to be written
   */
  public OutputException(String message, boolean inTheWay) {
    super(message);
    this.inTheWay = inTheWay;
  }

  public boolean isInTheWay() {
    return inTheWay;
  }
}
