package org.daymount.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.day.DayNumbers;
import org.daymount.day.DaySettings;
import org.daymount.day.DayStart;
import org.daymount.image.Pictures;
import org.daymount.ingest.ClockCorrections;
import org.daymount.ingest.IngestSettings;
import org.daymount.look.detect.Detectors;
import org.daymount.month.MonthPhoto;
import org.daymount.pipeline.DaysFinder;
import org.daymount.pipeline.Progress;
import org.daymount.review.MonthOpener;
import org.daymount.review.ReviewServer;
import org.daymount.start.MonthChoice;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** What is chosen on the start page, done as if it had been typed: by the review's own options. */
final class MonthOpening implements MonthOpener {
  private final CommandContext around;
  private final SystemOpener opener;

  MonthOpening(CommandContext around, SystemOpener opener) {
    this.around = around;
    this.opener = opener;
  }

  @Override
  public Dates dates(List<Path> folders) {
    DaysFinder.Sorted found =
        new DaysFinder(Progress.SILENT)
            .find(
                folders,
                new IngestSettings(
                    ClockCorrections.parse(List.of()), around.today(), around.zone()),
                new DaySettings(DayStart.FOUR, Optional.empty(), DayNumbers.ALL),
                Runtime.getRuntime().availableProcessors(),
                false);
    TreeMap<LocalDate, Integer> days = new TreeMap<>();
    int undated = 0;
    for (MonthPhoto photo : found.photos()) {
      if (photo.day().isPresent()) {
        days.merge(photo.day().get(), 1, Integer::sum);
      } else {
        undated++;
      }
    }
    return new Dates(days, undated);
  }

  @Override
  public List<String> missing() {
    return ProgramParts.missing(Detectors.runHere(), Pictures.bringsHeif());
  }

  @Override
  public Optional<String> wrong(MonthChoice choice) {
    try {
      command(choice).request();
      return Optional.empty();
    } catch (ParameterException e) {
      return Optional.of(e.getMessage());
    }
  }

  @Override
  public void open(MonthChoice choice, ReviewServer server) {
    ReviewCommand command = command(choice);
    command.open(server, command.request());
  }

  @Override
  public boolean show(Path file) {
    return opener.open(file.toString());
  }

  private ReviewCommand command(MonthChoice choice) {
    List<String> words =
        new ArrayList<>(List.of("review", "--quiet", "--out", choice.out().toString()));
    words.addAll(List.of("--month", choice.month()));
    choice.note().ifPresent(note -> words.addAll(List.of("--note", note.toString())));
    CommandLine all = CommandLines.line(around); // picocli parses from the top only
    CommandLine line = all.getSubcommands().get("review");
    for (Map.Entry<String, String> option : choice.album().entrySet()) {
      if (line.getCommandSpec().findOption("--" + option.getKey()) == null) {
        throw new ParameterException(line, "there is no setting '" + option.getKey() + "'");
      }
      words.addAll(List.of("--" + option.getKey(), option.getValue()));
    }
    words.add("--");
    choice.folders().forEach(folder -> words.add(folder.toString()));
    all.parseArgs(words.toArray(new String[0]));
    return line.getCommand();
  }
}
