package org.daymount.cli;

import picocli.CommandLine.Option;

/** How much is said, and how. */
final class TalkOptions {
  @Option(names = "--json", description = "month.json on standard output.")
  boolean json;

  @Option(
      names = {"-q", "--quiet"},
      description = "Only errors, and files that could not be used.")
  boolean quiet;

  @Option(
      names = {"-v", "--verbose"},
      description = "Everything that was noticed, and the whole story of an error.")
  boolean verbose;

  @Option(names = "--no-color", description = "No colour at a terminal.")
  boolean noColor;

  @Option(names = "--strict", description = "Any warning ends the run with exit code 1.")
  boolean strict;
}
