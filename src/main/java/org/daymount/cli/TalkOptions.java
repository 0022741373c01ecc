package org.daymount.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How much is said, and how, and what the process ends with. */
@Command(
    exitCodeListHeading = ExitCode.HEADING,
    exitCodeList = {ExitCode.IS_DONE, ExitCode.IS_FAILED, ExitCode.IS_WRONG, ExitCode.IS_SOME_LEFT})
final class TalkOptions {
  @Option(
      names = "--json",
      description = "Prints the result as data (as in month.json) to standard output.")
  boolean json;

  @Option(
      names = {"-q", "--quiet"},
      description = "Says only errors, and which files could not be used.")
  boolean quiet;

  @Option(
      names = {"-v", "--verbose"},
      description = "Names every file that was left out, and tells the whole story of an error.")
  boolean verbose;

  @Option(names = "--no-color", description = "No colour at the terminal, not even in the help.")
  boolean noColor;

  @Option(
      names = "--strict",
      description = "Takes any warning for a failure: nothing is written, exit code 1.")
  boolean strict;
}
