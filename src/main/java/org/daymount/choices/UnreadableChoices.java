package org.daymount.choices;

import java.io.IOException;

/** Choices that cannot be read; the message says where, why, and what to do. */
public final class UnreadableChoices extends IOException {
  private static final long serialVersionUID = 1L;

  UnreadableChoices(String message) {
    super(message);
  }
}
