package org.daymount.cli;

/** What the process ends with. */
final class ExitCode {
  static final int DONE = 0;
  static final int FAILED = 1;
  static final int WRONG_COMMAND_LINE = 2;
  static final int SOME_PHOTOS_UNUSABLE = 3;

  static final String HEADING = "%nExit codes:%n";
  static final String IS_DONE = DONE + ":done";
  static final String IS_FAILED = FAILED + ":failed; earlier output is untouched";
  static final String IS_WRONG = WRONG_COMMAND_LINE + ":wrong command line";
  static final String IS_SOME_LEFT =
      SOME_PHOTOS_UNUSABLE + ":done, but some pictures could not be used (each is named)";

  private ExitCode() {}
}
