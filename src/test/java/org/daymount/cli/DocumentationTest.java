package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Links in the documents lead somewhere, and the commands in them are commands. */
class DocumentationTest {
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
  private static final Pattern SPAN = Pattern.compile("`([^`\\n]+)`");
  private static final Pattern EXEC_ARGS = Pattern.compile("-Dexec\\.args=(\"[^\"]*\"|'[^']*')");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");
  private static final List<String> STARTS =
      List.of("daymount ", "java -jar target/daymount.jar ", "bin/daymount ");

  static List<Path> documents() throws IOException {
    List<Path> documents = new ArrayList<>();
    for (String folder : List.of(".", "docs", "sample-photos")) {
      try (Stream<Path> files = Files.list(Path.of(folder))) {
        files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(documents::add);
      }
    }
    return documents;
  }

  @ParameterizedTest
  @MethodSource("documents")
  void everyRelativeLinkLeadsSomewhere(Path document) throws IOException {
    TreeSet<String> broken = new TreeSet<>();
    Matcher link = LINK.matcher(Files.readString(document));
    while (link.find()) {
      String target = link.group(1);
      if (target.matches("[a-z]+:.*")) {
        continue;
      }
      String[] parts = target.split("#", 2);
      Path file = parts[0].isEmpty() ? document : document.resolveSibling(parts[0]).normalize();
      if (!Files.exists(file) || parts.length == 2 && !headings(file).contains(parts[1])) {
        broken.add(target);
      }
    }
    assertEquals(new TreeSet<>(), broken);
  }

  @ParameterizedTest
  @MethodSource("documents")
  void everyCommandOfOursParses(Path document) throws IOException {
    List<String> wrong = new ArrayList<>();
    for (String command : commands(Files.readString(document))) {
      if (line().getSubcommands().containsKey(command)) {
        continue; // a sentence names the command
      }
      try {
        line().parseArgs(words(command).toArray(new String[0]));
      } catch (ParameterException e) {
        wrong.add(command + ": " + e.getMessage());
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void commandsAreFoundInLinesAndInSentences() {
    assertEquals(
        List.of("days \"June 1\"", "look a.jpg", "note --month 2026-06", "sheets p --cards 3x4"),
        commands(
            "Type:\n\n    daymount days \"June 1\"   # what is there\n\n"
                + "then `daymount look a.jpg`, and\n\n"
                + "    daymount note --month 2026-06 > june.txt\n"
                + "    mvn -q compile exec:java -Dexec.args=\"sheets p --cards 3x4\"\n"));
    assertEquals(List.of("days", "June 1"), words("days \"June 1\""));
  }

  @Test
  void theGuidesNameEveryCommandThatAPersonCanGive() throws IOException {
    String all = "";
    for (Path document : documents()) {
      all += Files.readString(document);
    }
    for (CommandLine command : line().getSubcommands().values()) {
      if (!command.getCommandSpec().usageMessage().hidden()
          && !command.getCommandName().equals("help")) {
        assertTrue(all.contains(" " + command.getCommandName() + " "), command.getCommandName());
      }
    }
  }

  /** What follows the program's name, in lines of their own and in code within sentences. */
  private static List<String> commands(String document) {
    List<String> found = new ArrayList<>();
    for (String line : document.lines().toList()) {
      Matcher arguments = EXEC_ARGS.matcher(line);
      if (arguments.find()) {
        found.add(arguments.group(1).substring(1, arguments.group(1).length() - 1));
        continue;
      }
      boolean alone = add(found, line.strip().replaceFirst("^\\$ ", ""));
      Matcher span = SPAN.matcher(line);
      while (!alone && span.find()) {
        add(found, span.group(1));
      }
    }
    return found;
  }

  private static boolean add(List<String> found, String code) {
    for (String start : STARTS) {
      if (code.startsWith(start)) {
        found.add(code.substring(start.length()).replaceFirst("\\s+[>#|].*$", "").strip());
        return true;
      }
    }
    return false;
  }

  private static List<String> words(String command) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(command);
    while (word.find()) {
      words.add(
          word.group(1) != null
              ? word.group(1)
              : word.group(2) != null ? word.group(2) : word.group(3));
    }
    return words;
  }

  /** The anchors that headings are given on the pages where Markdown is shown. */
  private static List<String> headings(Path document) throws IOException {
    return Files.readString(document)
        .lines()
        .filter(line -> line.startsWith("#"))
        .map(line -> line.replaceFirst("^#+\\s*", "").toLowerCase(Locale.ROOT))
        .map(line -> line.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
        .toList();
  }

  private static CommandLine line() {
    return CommandLines.line(CommandContext.ofThisComputer(System.out, System.err));
  }
}
