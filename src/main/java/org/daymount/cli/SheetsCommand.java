package org.daymount.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.daymount.cache.Cache;
import org.daymount.image.Pictures;
import org.daymount.month.Month;
import org.daymount.month.MonthJson;
import org.daymount.note.NoteTable;
import org.daymount.output.Finished;
import org.daymount.output.SmallCopies;
import org.daymount.pipeline.MonthMaker;
import org.daymount.pipeline.MonthWriter;
import org.daymount.pipeline.NoteInUse;
import org.daymount.pipeline.Progress;
import org.daymount.pipeline.Request;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code daymount sheets}: the whole job. */
@Command(
    name = "sheets",
    mixinStandardHelpOptions = true,
    abbreviateSynopsis = true,
    headerHeading = "For example: daymount sheets Pictures/June --note june.txt --out June%n%n",
    header = "Makes the prints of a month: the whole job.",
    description = {
      "",
      "Sorts the pictures into days, chooses and crops one for every space, and lays them out on"
          + " sheets to print, with a guide for cutting and mounting.",
      ""
    },
    sortOptions = false)
final class SheetsCommand extends ContextCommand {
  @Spec CommandSpec spec;
  @Mixin PhotoOptions photos;

  @Mixin OutOptions out;
  @Mixin PageOptions pages;

  @Option(
      names = {"-n", "--dry-run"},
      description = "Decides everything, writes nothing.")
  boolean dryRun;

  @Option(
      names = "--force",
      description = "Replaces files in --out even when daymount did not make them.")
  boolean force;

  @Mixin ReportOptions talk;

  SheetsCommand(CommandContext context) {
    super(context);
  }

  @Override
  public Integer call() throws IOException {
    Request request = Requests.of(spec, context, photos, pages, Optional.ofNullable(out.out));
    Progress progress =
        talk.quiet ? Progress.SILENT : new TerminalProgress(context.err(), context.terminal());
    Pictures pictures = new Pictures();
    Cache cache = out.cache(context, request);
    SmallCopies copies = new SmallCopies(pictures, cache);
    AtomicReference<NoteInUse.Reading> note = new AtomicReference<>();
    Month month = new MonthMaker(pictures, progress, cache, copies::add).make(request, note::set);
    if (!talk.json && !talk.quiet && note.get() != null) {
      noteRead(context.out(), note.get());
    }
    WarningPrinter told = new WarningPrinter(context, talk);
    cache.notes().forEach(told::note);
    told.warnings(month);
    if (talk.strict && told.anyWarning(month)) {
      context
          .err()
          .println("error: there are warnings, and --strict was asked for; nothing was written");
      return ExitCode.FAILED;
    }
    MonthJson json = new MonthJson(Version.tool(), photos.verboseRecord);
    Path folder = request.out().name(month.month());
    List<String> changed = List.of();
    if (!dryRun) {
      Finished finished =
          new MonthWriter(pictures, json, progress, cache, copies)
              .write(month, request.out().folder(month.month()), force, request.jobs());
      changed = finished.changed();
      finished.notes().forEach(told::note);
      OutOptions.keep(cache, request.out().folder(month.month())).ifPresent(told::note);
    }
    if (talk.json) {
      context.out().print(new String(json.write(month), StandardCharsets.UTF_8));
    } else if (!talk.quiet) {
      summary(context.out(), month, folder, changed);
    }
    return told.anyUnusable(month) ? ExitCode.SOME_PHOTOS_UNUSABLE : ExitCode.DONE;
  }

  /** What was read in the note, before anything is written. */
  private static void noteRead(PrintWriter print, NoteInUse.Reading read) {
    List<String> lines = NoteTable.shortLines(read.note());
    print.println(
        "read in the note" + (read.mended() ? ", as mended in the review: " : ": ") + lines.get(0));
    lines.stream().skip(1).forEach(line -> print.println(TerminalEscaper.of(line)));
    print.println("  (daymount note FILE shows every day as it was read)");
  }

  private void summary(PrintWriter print, Month month, Path folder, List<String> changed) {
    print.println(WarningPrinter.summary(month));
    if (dryRun) {
      print.println("nothing was written (--dry-run)");
      return;
    }
    if (changed.isEmpty()) {
      print.println("everything in " + folder + " is up to date; nothing was rewritten");
    } else {
      print.println("written to " + folder + " (" + changed.size() + " files new or changed):");
    }
    int sheets = month.sheets().size();
    place(print, folder, "index.html", "the month at a glance: open it first");
    place(
        print,
        folder,
        "sheets",
        sheets + (sheets == 1 ? " picture" : " pictures") + " for a lab or printer");
    place(print, folder, "sheets.pdf", "the same at true size");
    place(print, folder, "pages.pdf", "the album as it will look, at true size");
    place(print, folder, "guide.pdf", "how to cut and mount them, and what is missing");
    place(print, folder, "month.json", "everything as data");
  }

  private static void place(PrintWriter print, Path folder, String name, String what) {
    String padding = " ".repeat("index.html".length() - name.length() + 3);
    print.println("  " + folder.resolve(name) + padding + what);
  }
}
