package org.daymount.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;

/** The program's name and its commands. */
@Command(
    name = "daymount",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    header = {
      "For example: daymount sheets Pictures/June --note june.txt",
      "",
      "From a month of phone pictures to the prints, cuts and stories of a page-a-day album."
    },
    subcommands = {
      SheetsCommand.class,
      ReviewCommand.class,
      DaysCommand.class,
      LookCommand.class,
      NoteCommand.class,
      HelpCommand.class
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:failed; earlier output is untouched",
      "2:wrong command line",
      "3:done, but some photos could not be used (each is named)"
    })
final class Daymount {}
