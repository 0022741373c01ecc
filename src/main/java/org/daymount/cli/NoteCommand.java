package org.daymount.cli;

import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;
import org.daymount.album.AlbumFile;
import org.daymount.album.AlbumFileParser;
import org.daymount.month.NoteJson;
import org.daymount.note.MonthNote;
import org.daymount.note.NoteParser;
import org.daymount.note.NoteTable;
import org.daymount.note.NoteWriter;
import org.daymount.pipeline.UserFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code daymount note}: an empty month note to fill in, or what was read in one. */
@Command(
    name = "note",
    mixinStandardHelpOptions = true,
    abbreviateSynopsis = true,
    headerHeading = "For example: daymount note --month 2026-06 > june.txt%n%n",
    header = "Prints an empty month note to fill in, or shows what is read in yours.",
    description = {
      "",
      "A line for each day and its spaces, and room below it for the day's story. Keep it as note.txt in the folder of the pictures and it is found by itself.",
      ""
    })
final class NoteCommand extends ContextCommand {
  @Option(
      names = "--month",
      paramLabel = "2026-06",
      description =
          "The month. Default: the one that has just ended, or soon will; of a note that is shown, its own.")
  YearMonth month;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "A month note: shows each day as it is read, and what was guessed.")
  Path file;

  @Option(
      names = "--album",
      paramLabel = "FILE",
      description =
          "What you wrote about the album: its ready-made pages are given to the days, as it says"
              + " or in turn.")
  Path album;

  @Option(names = "--json", description = "With FILE: prints what was read as one JSON document.")
  boolean json;

  NoteCommand(CommandContext context) {
    super(context);
  }

  @Override
  public Integer call() {
    if (file != null) {
      MonthNote note =
          NoteParser.parse(
              UserFiles.note(context.here().resolve(file)),
              album().names(),
              Optional.ofNullable(month),
              context.locale());
      if (json) {
        context.out().println(NoteJson.of(note));
      } else {
        NoteTable.lines(note).forEach(line -> context.out().println(TerminalEscaper.of(line)));
      }
      return ExitCode.DONE;
    }
    YearMonth wanted = month != null ? month : YearMonth.from(context.today().minusDays(14));
    AlbumFile written = album();
    written
        .remarks()
        .forEach(text -> context.err().println("note: " + TerminalEscaper.of(album + ", " + text)));
    context.out().print(NoteWriter.blank(wanted, written));
    return ExitCode.DONE;
  }

  private AlbumFile album() {
    return album == null
        ? AlbumFile.NONE
        : AlbumFileParser.parse(UserFiles.album(context.here().resolve(album)));
  }
}
