package org.daymount.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;

/** The command line in a test: a fixed day, zone and folder, no terminal. */
final class Shell {
  private final Path here;
  private final Locale locale;

  /** What a command left behind. */
  record Result(int code, String out, String err) {}

  Shell(Path here) {
    this(here, Locale.ENGLISH);
  }

  Shell(Path here, Locale locale) {
    this.here = here;
    this.locale = locale;
  }

  Result run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandContext around =
        new CommandContext(
            new PrintWriter(out),
            new PrintWriter(err),
            false,
            LocalDate.of(2026, 7, 4),
            ZoneOffset.UTC,
            locale,
            here);
    int code = CommandLines.run(around, arguments);
    return new Result(code, out.toString(), err.toString());
  }
}
