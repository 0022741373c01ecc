package org.daymount.cli;

import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;

/** The program's name and its commands. */
@Command(
    name = "daymount",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    headerHeading = "For example: daymount sheets Pictures/June --note june.txt%n%n",
    header =
        "From a month of phone pictures to the prints, cuts and stories of a page-a-day album.",
    description = {
      "",
      "Your pictures are only ever read, and nothing leaves this computer. 'daymount help sheets'"
          + " tells all about a command.",
      ""
    },
    subcommands = {
      SheetsCommand.class,
      ReviewCommand.class,
      OpenCommand.class,
      DaysCommand.class,
      LookCommand.class,
      NoteCommand.class,
      PagesCommand.class,
      StripCommand.class,
      HelpCommand.class,
      GenerateCompletion.class,
      ManPageCommand.class,
      ReadTilesCommand.class
    },
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n",
    exitCodeListHeading = ExitCode.HEADING,
    exitCodeList = {ExitCode.IS_DONE, ExitCode.IS_FAILED, ExitCode.IS_WRONG, ExitCode.IS_SOME_LEFT})
final class Daymount {}
