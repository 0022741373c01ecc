package org.daymount.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import org.daymount.day.PhotoDay;
import org.daymount.month.MonthJson;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.pipeline.DaysFinder;
import org.daymount.pipeline.DaysFinder.Sorted;
import org.daymount.pipeline.Progress;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code daymount days}: what was taken on which day. */
@Command(
    name = "days",
    mixinStandardHelpOptions = true,
    abbreviateSynopsis = true,
    headerHeading = "For example: daymount days Pictures/June%n%n",
    header = "Lists what was taken on which day, and writes nothing.",
    description = "",
    sortOptions = false)
final class DaysCommand extends ContextCommand {
  @Spec CommandSpec spec;
  @Mixin PhotoOptions photos;
  @Mixin ReportOptions talk;

  DaysCommand(CommandContext context) {
    super(context);
  }

  @Override
  public Integer call() {
    Progress progress =
        talk.quiet ? Progress.SILENT : new TerminalProgress(context.err(), context.terminal());
    Sorted sorted =
        new DaysFinder(progress)
            .find(
                Requests.photos(spec, context, photos),
                Requests.ingest(spec, context, photos, Requests.photos(spec, context, photos)),
                Requests.days(photos),
                Requests.jobs(spec, photos),
                talk.json);
    WarningPrinter told = new WarningPrinter(context, talk);
    told.warnings(sorted.warnings());
    if (talk.json) {
      String month = sorted.month().map(Object::toString).orElse(null);
      byte[] json =
          new MonthJson(Version.tool(), photos.verboseRecord)
              .writeDays(month, sorted.photos(), sorted.monthDays(), sorted.warnings());
      context.out().print(new String(json, StandardCharsets.UTF_8));
    } else {
      print(context.out(), sorted);
    }
    if (talk.strict && told.anyWarning(sorted.warnings())) {
      return ExitCode.FAILED;
    }
    return WarningPrinter.anyUnusable(sorted.warnings())
        ? ExitCode.SOME_PHOTOS_UNUSABLE
        : ExitCode.DONE;
  }

  private static void print(PrintWriter out, Sorted sorted) {
    DateTimeFormatter day = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    for (PhotoDay photoDay : sorted.days()) {
      List<Photo> taken = photoDay.photos();
      out.printf(
          Locale.ROOT,
          "%-15s  %s%n",
          photoDay.day().format(day),
          taken.isEmpty()
              ? "nothing"
              : taken.size() + (taken.size() == 1 ? " picture" : " pictures"));
      for (Photo photo : taken) {
        out.printf(
            Locale.ROOT,
            "    %s  %s%s%n",
            time(photo.taken()),
            TerminalEscaper.of(photo.file().name()),
            photo.taken().from() == TakenFrom.ORIGINAL
                ? ""
                : "  (date from " + photo.taken().from().word() + ")");
      }
    }
  }

  private static String time(Taken taken) {
    return taken.hourKnown()
        ? taken
            .local()
            .orElseThrow()
            .toLocalTime()
            .truncatedTo(ChronoUnit.SECONDS)
            .format(DateTimeFormatter.ofPattern("HH:mm:ss"))
        : "        ";
  }
}
