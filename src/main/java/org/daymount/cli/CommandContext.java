package org.daymount.cli;

import java.io.Console;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;

/**
 * What a command takes from the computer it runs on: everything that is read from outside comes in
 * here, so that a test can set it.
 *
 * @param out what was asked for
 * @param err progress, warnings and errors
 * @param terminal whether a person is watching
 * @param today for telling dates that cannot be true yet
 * @param zone for the file's own time, when nothing better is known
 * @param here the working directory
 */
record CommandContext(
    PrintWriter out,
    PrintWriter err,
    boolean terminal,
    LocalDate today,
    ZoneId zone,
    Locale locale,
    Path here) {

  static CommandContext ofThisComputer(PrintStream out, PrintStream err) {
    return new CommandContext(
        new PrintWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8), false),
        new PrintWriter(new OutputStreamWriter(err, StandardCharsets.UTF_8), true),
        isTerminal(),
        LocalDate.now(),
        ZoneId.systemDefault(),
        Locale.getDefault(),
        Path.of(""));
  }

  /**
   * Up to Java 21 a console means that input and output are both a terminal; from 22 there is
   * always one, and it says itself whether it is.
   */
  private static boolean isTerminal() {
    Console console = System.console();
    if (console == null || "dumb".equals(System.getenv("TERM"))) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true; // before Java 22
    }
  }
}
