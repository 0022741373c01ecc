package org.daymount.problem;

import java.util.Locale;

/** What a warning is about: a {@link Problem.Kind} of one file, or a {@link Warning.Kind}. */
public sealed interface WarningKind permits Problem.Kind, Warning.Kind {
  /** Of the enum's constant. */
  String name();

  /** The code used in month.json: one or two words with a hyphen, stable. */
  default String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
