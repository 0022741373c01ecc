package org.daymount.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;
import org.daymount.album.AlbumDefaults;
import org.daymount.album.AlbumFile;
import org.daymount.month.Month;
import org.daymount.note.NoteParser;
import org.daymount.note.NoteWriter;
import org.daymount.output.Finished;
import org.daymount.output.GuidePdf;
import org.daymount.output.OutputFolder;
import org.daymount.output.PagePictures;
import org.daymount.output.PagesPdf;
import org.daymount.pipeline.AlbumAhead;
import org.daymount.pipeline.UserFiles;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.problem.Warning;
import org.daymount.sheet.MatPlan;
import org.daymount.unit.PaperSize;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code daymount pages}: an album made ahead, before there are pictures. */
@Command(
    name = "pages",
    mixinStandardHelpOptions = true,
    abbreviateSynopsis = true,
    headerHeading = "For example: daymount pages --album album.txt --month 2026-12%n%n",
    header = "Draws the pages of an album made ahead, and how to cut its papers and mats.",
    description = {
      "",
      "Takes ready-made pages from album.txt and the days they are for from the note, or in turn"
          + " without one. Writes pages.pdf, the drawn pages, and papers.pdf, one cutting plan of"
          + " all papers and mats.",
      ""
    },
    sortOptions = false)
final class PagesCommand extends ContextCommand {
  @Spec CommandSpec spec;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description =
          "The folder to write to. Default: one named after the month, such as"
              + " daymount-pages-2026-12, in the folder you are in.")
  Path out;

  @Option(
      names = "--month",
      paramLabel = "2026-12",
      description = "The month. Default: as the note says, or the one that begins next.")
  YearMonth month;

  @Option(
      names = "--card-sheet",
      paramLabel = "12x12",
      description = "Size of the card that papers and mats are cut from. Default: 12x12.")
  PaperSize card = MatPlan.CARD;

  @Mixin PageOptions pages;

  @Option(
      names = "--force",
      description = "Replaces files in --out even when daymount did not make them.")
  boolean force;

  PagesCommand(CommandContext context) {
    super(context);
  }

  @Override
  public Integer call() throws IOException {
    AlbumAhead ahead = plan();
    for (Warning warning : ahead.month().warnings()) {
      context
          .err()
          .println(
              TerminalEscaper.of(
                  "note: " + warning.day().map(day -> day + ": ").orElse("") + warning.text()));
    }
    ahead
        .papers()
        .tooLargeBySize()
        .forEach(
            (size, count) ->
                context
                    .err()
                    .println(
                        "note: "
                            + count
                            + " × "
                            + ahead.month().units().sized(size)
                            + ": too large for card of "
                            + ahead.month().units().sized(card)
                            + "; buy larger card and say so with --card-sheet, or buy them cut"));
    YearMonth made = ahead.month().month();
    Path name = out != null ? out : Path.of("daymount-pages-" + made);
    Finished finished = write(ahead, context.here().resolve(name));
    int sheets = ahead.papers().packing().sheets().size();
    context
        .out()
        .println(
            made
                + ": "
                + ahead.month().album().pages().size()
                + " pages on "
                + ahead.month().album().leaves().size()
                + " leaves, papers and mats from "
                + sheets
                + (sheets == 1 ? " sheet of " : " sheets of ")
                + ahead.month().units().sized(card));
    context
        .out()
        .println(
            finished.changed().isEmpty()
                ? "everything in " + name + " is up to date; nothing was rewritten"
                : "written to " + name + ": " + String.join(", ", finished.changed()));
    return ExitCode.DONE;
  }

  private AlbumAhead plan() {
    try {
      Optional<Path> notePath = Optional.ofNullable(pages.note);
      AlbumFile album = TextFiles.album(spec, context, pages.album, beside(notePath));
      if (album.bases().isEmpty() && notePath.isEmpty()) {
        throw new ParameterException(
            spec.commandLine(),
            "there is no ready-made page to plan; describe one in album.txt (base quay, and a line"
                + " for each place), or give a note with --note");
      }
      Optional<String> typed = notePath.map(path -> UserFiles.note(context.here().resolve(path)));
      YearMonth wanted = month(typed, album);
      String note = typed.orElseGet(() -> NoteWriter.blank(wanted, album));
      return AlbumAhead.plan(
          wanted,
          note,
          context.locale(),
          AlbumDefaults.of(pages.space, pages.reveal),
          Requests.pageSettings(context, pages, album),
          Requests.settings(pages),
          card);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage());
    }
  }

  /** The album lies beside the note, or here. */
  private Optional<Path> beside(Optional<Path> note) {
    note.filter(path -> !TextFiles.isThere(context, path))
        .ifPresent(
            path -> {
              throw new ParameterException(
                  spec.commandLine(), "there is no note " + path + "; look at its spelling");
            });
    return note.or(() -> Optional.of(Path.of("note.txt")));
  }

  private YearMonth month(Optional<String> note, AlbumFile album) {
    if (month != null) {
      return month;
    }
    return note.flatMap(text -> NoteParser.parse(text, album.names(), context.locale()).month())
        .orElseGet(() -> YearMonth.from(context.today()).plusMonths(1));
  }

  private Finished write(AlbumAhead ahead, Path folder) throws IOException {
    Month month = ahead.month();
    PagePictures none =
        new PagePictures(
            (photo, window, target) -> {
              throw new UnusablePicture(Problem.Kind.UNREADABLE, "there are no pictures yet");
            });
    try (OutputFolder output = OutputFolder.open(folder, force)) {
      output.stage("pages.pdf", new PagesPdf(none).write(month));
      output.stage("papers.pdf", new GuidePdf(none).write(month, ahead.papers()));
      return output.finish();
    }
  }
}
