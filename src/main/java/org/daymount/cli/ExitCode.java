package org.daymount.cli;

/** What the process ends with. */
final class ExitCode {
  static final int DONE = 0;
  static final int FAILED = 1;
  static final int WRONG_COMMAND_LINE = 2;
  static final int SOME_PHOTOS_UNUSABLE = 3;

  private ExitCode() {}
}
