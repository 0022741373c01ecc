package org.daymount.unit;

import java.util.Locale;
import java.util.stream.Stream;

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

  /**
   * The orientation of a {@link #word}, in any case.
   *
   * @throws IllegalArgumentException for any other word; the message is for a person
   */
  public static Orientation parse(String word) {
    return Stream.of(values())
        .filter(each -> each.word().equals(word.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'" + word + "' is not landscape, portrait or square"));
  }
}
