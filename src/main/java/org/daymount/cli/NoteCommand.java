package org.daymount.cli;

import java.time.YearMonth;
import org.daymount.album.NoteWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code daymount note}: an empty month note to fill in. */
@Command(
    name = "note",
    mixinStandardHelpOptions = true,
    header = {
      "For example: daymount note --month 2026-06 > june.txt",
      "",
      "Prints an empty month note to fill in: a line per day for its spaces, and room for its story."
    })
final class NoteCommand extends SurroundedCommand {
  @Option(
      names = "--month",
      paramLabel = "2026-06",
      description = "The month. Default: the one that has just ended, or is about to.")
  YearMonth month;

  NoteCommand(Surroundings around) {
    super(around);
  }

  @Override
  public Integer call() {
    YearMonth wanted = month != null ? month : YearMonth.from(around.today().minusDays(14));
    around.out().print(NoteWriter.blank(wanted));
    return ExitCode.DONE;
  }
}
