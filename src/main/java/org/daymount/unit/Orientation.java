package org.daymount.unit;

import java.util.Locale;

/** Which way up a picture, a space or a piece of paper is. */
public enum Orientation {
  LANDSCAPE,
  PORTRAIT,
  SQUARE;

  public Orientation other() {
    return switch (this) {
      case LANDSCAPE -> PORTRAIT;
      case PORTRAIT -> LANDSCAPE;
      case SQUARE -> SQUARE;
    };
  }

  /** The word used in month.json and in sentences. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
