package org.daymount.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How much is said, and how, and what the process ends with. */
@Command(
    exitCodeListHeading = ExitCode.HEADING,
    exitCodeList = {ExitCode.IS_DONE, ExitCode.IS_FAILED, ExitCode.IS_WRONG, ExitCode.IS_SOME_LEFT})
final class ReportOptions extends OutputOptions {
  @Option(
      names = "--json",
      description = "Prints the result as data (as in month.json) to standard output.")
  boolean json;

  @Option(
      names = "--strict",
      description = "Takes any warning for a failure: nothing is written, exit code 1.")
  boolean strict;
}
