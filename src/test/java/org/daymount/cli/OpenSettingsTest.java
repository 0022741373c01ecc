package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.daymount.review.MonthOpener;
import org.daymount.start.MonthChoice;
import org.daymount.start.MonthText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.Model.OptionSpec;

/** What {@code daymount sheets} can do can be done on the start page. */
class OpenSettingsTest {
  /** Asked by the page's own questions: the month, the texts, the folder, and replacing a file. */
  private static final Set<String> OWN_QUESTION =
      Set.of("month", "note", "album", "dates", "out", "force");

  /** How a terminal is talked to, and what the open month is already: nothing is written. */
  private static final Set<String> OF_THE_TERMINAL =
      Set.of("quiet", "verbose", "no-color", "json", "strict", "dry-run", "help", "version");

  @TempDir Path home;

  private final MonthOpening opening =
      new MonthOpening(
          CommandContext.ofThisComputer(
              new PrintStream(OutputStream.nullOutputStream()),
              new PrintStream(OutputStream.nullOutputStream())),
          new SystemOpener("none"));

  @Test
  void everyOptionOfSheetsIsOnThePageOrIsTheTerminals() {
    Set<String> options = new TreeSet<>();
    for (OptionSpec option :
        CommandLines.line(
                CommandContext.ofThisComputer(
                    new PrintStream(OutputStream.nullOutputStream()),
                    new PrintStream(OutputStream.nullOutputStream())))
            .getSubcommands()
            .get("sheets")
            .getCommandSpec()
            .options()) {
      options.add(option.longestName().replaceFirst("^--", ""));
    }
    options.removeAll(OWN_QUESTION);
    options.removeAll(OF_THE_TERMINAL);
    Set<String> onThePage =
        opening.settings().stream().map(MonthOpener.Setting::name).collect(Collectors.toSet());
    assertEquals(options, new TreeSet<>(onThePage));
  }

  @Test
  void whatIsSetOnThePageIsReadAsIfItHadBeenTyped() throws Exception {
    Path photos = Files.createDirectories(home.resolve("photos"));
    Path dates = Files.writeString(home.resolve("dates.csv"), "a.jpg,2026-06-03,10:00\n");
    MonthChoice choice =
        new MonthChoice(
            List.of(photos),
            "2026-06",
            Map.of(MonthText.DATES, dates),
            Map.of("clock", "Tarn T4=+1h\n\nOrrery 9=-20m", "card-rules", "yes", "cards", "auto"),
            home.resolve("out"));
    assertEquals(Optional.empty(), opening.wrong(choice));
    assertFalse(opening.wrong(with(choice, "clock", "Tarn T4")).isEmpty(), "half a correction");
  }

  /**
   * Only the questions of the page are passed on: no port, no second place, no file by its path.
   */
  @Test
  void noOtherOptionIsLetThrough() {
    MonthChoice choice =
        new MonthChoice(List.of(home), "2026-06", Map.of(), Map.of(), home.resolve("out"));
    for (String option : Set.of("port", "out", "note", "album", "dates", "month", "quiet", "-o")) {
      assertEquals(
          "there is no setting '" + option + "'",
          opening.wrong(with(choice, option, "1")).orElse(""),
          option);
    }
    assertFalse(
        opening.wrong(with(choice, "sheet", "4x6 --port=1")).isEmpty(), "a value stays a value");
  }

  private static MonthChoice with(MonthChoice choice, String option, String value) {
    return new MonthChoice(
        choice.folders(), choice.month(), choice.texts(), Map.of(option, value), choice.out());
  }
}
