package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.daymount.cli.Shell.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The hidden commands that make the shell's completion and the manual pages. */
class PackagersCommandsTest {
  @TempDir Path home;

  @Test
  void theyDoNotStandInTheHelp() {
    String help = run("--help").out();
    assertFalse(help.contains("generate-completion"), help);
    assertFalse(help.contains("man-page"), help);
  }

  @Test
  void completionIsAScriptTheShellAcceptsAndKnowsEveryCommand() throws Exception {
    Result result = run("generate-completion");
    assertEquals(0, result.code(), result.err());
    for (String word : List.of("sheets", "days", "look", "note", "--min-ppi", "--dry-run")) {
      assertTrue(result.out().contains(word), word);
    }
    Path bash = Path.of("/bin/bash");
    assumeTrue(Files.isExecutable(bash), "no bash here");
    Path script = Files.writeString(home.resolve("daymount.bash"), result.out());
    assertEquals("", complaints(bash.toString(), "-n", script.toString()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "sheets", "days", "look", "note"})
  void theManualPageNamesEveryOptionAndSetsWithoutAComplaint(String command) throws Exception {
    Result result = command.isEmpty() ? run("man-page") : run("man-page", command);
    assertEquals(0, result.code(), result.err());
    CommandLine line = command.isEmpty() ? root() : root().getSubcommands().get(command);
    for (OptionSpec option : line.getCommandSpec().options()) {
      String name = "\\fB" + option.longestName().replace("-", "\\-") + "\\fR";
      assertTrue(result.out().contains(name), option.longestName());
    }
    Path groff = Path.of("/usr/bin/groff");
    assumeTrue(Files.isExecutable(groff), "no groff here to set the page with");
    Path page = Files.writeString(home.resolve("page.1"), result.out());
    assertEquals("", complaints(groff.toString(), "-man", "-Tutf8", "-ww", "-z", page.toString()));
  }

  @Test
  void everyCommandsHelpSaysWhatItDoesInOneLineAndGivesAnExampleThatParses() {
    for (CommandLine line : root().getSubcommands().values()) {
      CommandLine.Model.UsageMessageSpec usage = line.getCommandSpec().usageMessage();
      if (usage.hidden() || line.getCommandName().equals("help")) {
        continue;
      }
      assertEquals(1, usage.header().length, line.getCommandName());
      assertTrue(usage.header()[0].endsWith("."), usage.header()[0]);
      String example = usage.headerHeading().replaceAll("%n|^For example: daymount | >.*$", "");
      root().parseArgs(example.strip().split(" "));
    }
  }

  private static CommandLine root() {
    return CommandLines.line(CommandContext.ofThisComputer(System.out, System.err));
  }

  private Result run(String... arguments) {
    return new Shell(home).run(arguments);
  }

  private static String complaints(String... command) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(new ArrayList<>(List.of(command))).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes());
    return process.waitFor() == 0 ? said : "exit code " + process.exitValue() + ": " + said;
  }
}
