package org.daymount.cli;

import picocli.CommandLine.Option;

/** How much is said, and how: the same for every command that works on pictures. */
class OutputOptions {
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
}
