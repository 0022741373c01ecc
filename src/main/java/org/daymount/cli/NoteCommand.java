package org.daymount.cli;

import java.time.YearMonth;
import org.daymount.note.NoteWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code daymount note}: an empty month note to fill in. */
@Command(
    name = "note",
    mixinStandardHelpOptions = true,
    abbreviateSynopsis = true,
    headerHeading = "For example: daymount note --month 2026-06 > june.txt%n%n",
    header = "Prints an empty month note to fill in.",
    description = {
      "",
      "A line for each day and its spaces, and room below it for the day's story. Keep it as note.txt in the folder of the pictures and it is found by itself.",
      ""
    })
final class NoteCommand extends ContextCommand {
  @Option(
      names = "--month",
      paramLabel = "2026-06",
      description = "The month. Default: the one that has just ended, or soon will.")
  YearMonth month;

  NoteCommand(CommandContext around) {
    super(around);
  }

  @Override
  public Integer call() {
    YearMonth wanted = month != null ? month : YearMonth.from(around.today().minusDays(14));
    around.out().print(NoteWriter.blank(wanted));
    return ExitCode.DONE;
  }
}
