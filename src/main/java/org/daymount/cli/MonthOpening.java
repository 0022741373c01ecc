package org.daymount.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
import org.daymount.pipeline.Request;
import org.daymount.pipeline.RunFailed;
import org.daymount.pipeline.UserFiles;
import org.daymount.review.MonthOpener;
import org.daymount.review.ReviewServer;
import org.daymount.start.MonthChoice;
import org.daymount.unit.Units;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** What is chosen on the start page, done as if it had been typed: by the review's own options. */
final class MonthOpening implements MonthOpener {
  /** What the start page has questions of its own for, and what is the terminal's. */
  private static final Set<String> ASKED_OTHERWISE =
      Set.of(
          "month",
          "note",
          "album",
          "dates",
          "out",
          "port",
          "quiet",
          "verbose",
          "no-color",
          "help",
          "version");

  private final CommandContext context;
  private final SystemOpener opener;

  MonthOpening(CommandContext context, SystemOpener opener) {
    this.context = context;
    this.opener = opener;
  }

  @Override
  public Dates dates(List<Path> folders) {
    DaysFinder.Sorted found =
        new DaysFinder(Progress.SILENT)
            .find(
                folders,
                new IngestSettings(ClockCorrections.NONE, context.today(), context.zone()),
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
      Request request = command(choice).request();
      YearMonth month = YearMonth.parse(choice.month());
      // now, while what was chosen still stands on the page; opening would find it too
      UserFiles.choices(request, month);
      return Optional.empty();
    } catch (ParameterException | RunFailed e) {
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

  @Override
  public List<Setting> settings() {
    return review(CommandLines.line(context)).getCommandSpec().options().stream()
        .filter(option -> !ASKED_OTHERWISE.contains(name(option)))
        .map(MonthOpening::setting)
        .toList();
  }

  @Override
  public Units units() {
    return Units.of(context.locale());
  }

  private static Setting setting(OptionSpec option) {
    Setting.Kind kind =
        option.isMultiValue()
            ? Setting.Kind.SEVERAL
            : option.arity().max() == 0 ? Setting.Kind.SWITCH : Setting.Kind.ONE;
    List<String> among = new ArrayList<>();
    if (option.completionCandidates() != null) {
      option.completionCandidates().forEach(word -> among.add(word.toLowerCase(Locale.ROOT)));
    }
    return new Setting(
        name(option),
        kind,
        option.paramLabel().replace("\"", ""),
        String.join(" ", option.description()),
        among);
  }

  private static String name(OptionSpec option) {
    return option.longestName().replaceFirst("^--", "");
  }

  private static CommandLine review(CommandLine all) {
    return all.getSubcommands().get("review");
  }

  private ReviewCommand command(MonthChoice choice) {
    List<String> words =
        new ArrayList<>(List.of("review", "--quiet", "--out", choice.out().toString()));
    words.addAll(List.of("--month", choice.month()));
    choice
        .texts()
        .forEach((text, file) -> words.addAll(List.of("--" + text.option(), file.toString())));
    CommandLine all = CommandLines.line(context); // picocli parses from the top only
    Map<String, Setting> known =
        settings().stream().collect(Collectors.toMap(Setting::name, one -> one));
    for (Map.Entry<String, String> option : choice.album().entrySet()) {
      Setting setting = known.get(option.getKey());
      if (setting == null) {
        throw new ParameterException(review(all), "there is no setting '" + option.getKey() + "'");
      }
      switch (setting.kind()) {
        case ONE -> words.add("--" + setting.name() + "=" + option.getValue());
        case SWITCH -> words.add("--" + setting.name());
        case SEVERAL ->
            option
                .getValue()
                .lines()
                .filter(line -> !line.isBlank())
                .forEach(line -> words.add("--" + setting.name() + "=" + line.strip()));
      }
    }
    words.add("--");
    choice.folders().forEach(folder -> words.add(folder.toString()));
    all.parseArgs(words.toArray(new String[0]));
    return review(all).getCommand();
  }
}
