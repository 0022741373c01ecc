package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.daymount.cli.CommandLines;

/** The sheets of what was chosen, made in this process. */
final class SheetsMadeHere {
  private SheetsMadeHere() {}

  static void of(String... arguments) {
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(told, true, StandardCharsets.UTF_8);
    String[] all = Stream.concat(Stream.of("sheets"), Stream.of(arguments)).toArray(String[]::new);
    assertEquals(0, CommandLines.runHere(print, print, all), told.toString(StandardCharsets.UTF_8));
  }
}
