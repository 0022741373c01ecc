package org.daymount.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/**
 * The manual page of one command, made from what its help is made from, in the macros of groff's
 * man(7). The same command gives the same text: no date stands in it.
 */
final class ManPage {
  private final CommandSpec command;
  private final UsageMessageSpec usage;
  private final String tool;
  private final StringBuilder page = new StringBuilder();

  ManPage(CommandSpec command, String tool) {
    this.command = command;
    this.usage = command.usageMessage();
    this.tool = tool;
    usage.width(Short.MAX_VALUE); // the page's reader breaks the lines
  }

  String text() {
    page.setLength(0);
    macro("TH", name(command).toUpperCase(Locale.ROOT), "1", "", tool, "User Commands");
    macro("SH", "NAME");
    line(name(command) + " - " + withoutStop(joined(usage.header())));
    macro("SH", "SYNOPSIS");
    line(oneLine(new CommandLine.Help(command, Ansi.OFF).synopsis(0)));
    macro("SH", "EXAMPLE");
    line(oneLine(usage.headerHeading()).replaceFirst("^For example: ", ""));
    if (!joined(usage.description()).isEmpty()) {
      macro("SH", "DESCRIPTION");
      line(joined(usage.description()));
    }
    arguments();
    options();
    commands();
    macro("SH", "EXIT STATUS");
    usage.exitCodeList().forEach((code, meaning) -> item("\\fB" + code + "\\fR", meaning));
    macro("SH", "SEE ALSO");
    line(others());
    return page.toString();
  }

  private void arguments() {
    if (command.positionalParameters().isEmpty()) {
      return;
    }
    macro("SH", "ARGUMENTS");
    for (PositionalParamSpec argument : command.positionalParameters()) {
      item("\\fI" + escaped(argument.paramLabel()) + "\\fR", joined(argument.description()));
    }
  }

  private void options() {
    macro("SH", "OPTIONS");
    for (OptionSpec option : command.options()) {
      if (option.hidden()) {
        continue;
      }
      String names =
          Arrays.stream(option.names())
              .map(name -> "\\fB" + escaped(name) + "\\fR")
              .collect(Collectors.joining(", "));
      boolean takesValue = option.arity().max() > 0;
      item(
          takesValue ? names + "=\\fI" + escaped(option.paramLabel()) + "\\fR" : names,
          joined(option.description()));
    }
  }

  private void commands() {
    Map<String, CommandSpec> shown = shown(command);
    if (shown.isEmpty()) {
      return;
    }
    macro("SH", "COMMANDS");
    shown.forEach(
        (name, spec) ->
            item("\\fB" + escaped(name) + "\\fR", joined(spec.usageMessage().header())));
  }

  private String others() {
    List<String> pages = new ArrayList<>();
    pages.add(name(command.root()));
    shown(command.root()).values().forEach(spec -> pages.add(name(spec)));
    pages.remove(name(command));
    pages.remove("daymount-help");
    return pages.stream().map(page -> page + "(1)").collect(Collectors.joining(", "));
  }

  private static Map<String, CommandSpec> shown(CommandSpec of) {
    Map<String, CommandSpec> shown = new TreeMap<>();
    of.subcommands()
        .forEach(
            (name, line) -> {
              if (!line.getCommandSpec().usageMessage().hidden()) {
                shown.put(name, line.getCommandSpec());
              }
            });
    return shown;
  }

  private static String name(CommandSpec of) {
    return of.qualifiedName("-");
  }

  private void item(String tag, String text) {
    page.append(".TP\n").append(tag).append('\n');
    line(text);
  }

  private void macro(String name, String... arguments) {
    page.append('.').append(name);
    for (String argument : arguments) {
      page.append(" \"").append(escaped(argument)).append('"');
    }
    page.append('\n');
  }

  private void line(String text) {
    page.append(escaped(text)).append('\n');
  }

  /** Backslashes and hyphens as themselves; no line of text is taken for a macro. */
  private static String escaped(String text) {
    String plain = text.replace("\\", "\\e").replace("-", "\\-").replace("\"", "\\(dq");
    return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
  }

  private static String joined(String[] lines) {
    return oneLine(String.join(" ", lines));
  }

  private static String oneLine(String text) {
    return text.replace("%n", " ").strip().replaceAll("\\s+", " ");
  }

  private static String withoutStop(String sentence) {
    String text = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }
}
