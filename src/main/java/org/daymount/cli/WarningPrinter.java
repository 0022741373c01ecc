package org.daymount.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSpace;
import org.daymount.problem.Problem;
import org.daymount.problem.Warning;

/** What a finished month has to say to the person at the terminal. */
final class WarningPrinter {
  /** Named one by one only when asked; else counted. */
  private static final Set<Problem.Kind> COUNTED =
      Set.of(
          Problem.Kind.OTHER_MONTH,
          Problem.Kind.OTHER_DAYS,
          Problem.Kind.NOT_WANTED,
          Problem.Kind.COPY,
          Problem.Kind.SMALLER_COPY,
          Problem.Kind.SCREENSHOT,
          Problem.Kind.VIDEO);

  private final PrintWriter err;
  private final ReportOptions talk;

  WarningPrinter(CommandContext context, ReportOptions talk) {
    this.err = context.err();
    this.talk = talk;
  }

  void warnings(Month month) {
    warnings(month.warnings());
  }

  void warnings(List<Warning> warnings) {
    Map<Problem.Kind, List<Warning>> counted = new LinkedHashMap<>();
    Map<String, List<LocalDate>> sameOnDays = new LinkedHashMap<>();
    for (Warning warning : warnings) {
      if (warning.kind() == Warning.Kind.MISSING_PICTURE && warning.day().isPresent()) {
        sameOnDays
            .computeIfAbsent(warning.text(), text -> new ArrayList<>())
            .add(warning.day().get());
        continue;
      }
      if (warning.kind() instanceof Problem.Kind kind && COUNTED.contains(kind) && !talk.verbose) {
        counted.computeIfAbsent(kind, of -> new ArrayList<>()).add(warning);
      } else if (!talk.quiet || isUnusable(warning)) {
        err.println(line(warning));
      }
    }
    if (!talk.quiet) {
      sameOnDays.forEach((text, days) -> err.println("note: " + DayRuns.of(days) + ": " + text));
      counted.forEach((kind, list) -> err.println(counted(kind, list)));
    }
    err.flush();
  }

  void note(String text) {
    if (!talk.quiet) {
      err.println("note: " + TerminalEscaper.of(text));
      err.flush();
    }
  }

  boolean anyWarning(Month month) {
    return anyWarning(month.warnings());
  }

  boolean anyWarning(List<Warning> warnings) {
    return warnings.stream().anyMatch(warning -> !COUNTED.contains(warning.kind()));
  }

  boolean anyUnusable(Month month) {
    return anyUnusable(month.warnings());
  }

  static boolean anyUnusable(List<Warning> warnings) {
    return warnings.stream().anyMatch(WarningPrinter::isUnusable);
  }

  static String summary(Month month) {
    int spaces = 0;
    int filled = 0;
    int pages = 0;
    for (MonthDay day : month.days()) {
      pages += day.state() == MonthDay.State.LEFT_OUT ? 0 : 1;
      for (MonthSpace space : day.spaces()) {
        spaces++;
        filled += space.pick().hero().isPresent() ? 1 : 0;
      }
    }
    return month.month()
        + ": "
        + read(month)
        + " read, "
        + pages
        + " day pages, "
        + filled
        + " of "
        + spaces
        + " spaces filled, "
        + month.sheets().size()
        + (month.sheets().size() == 1 ? " sheet of " : " sheets of ")
        + month.units().sized(month.settings().sheet());
  }

  /** Stills from one clip are one clip. */
  private static String read(Month month) {
    long pictures = month.photos().stream().filter(photo -> photo.file().frame().isEmpty()).count();
    long clips =
        month.photos().stream()
            .filter(photo -> photo.file().frame().isPresent())
            .map(photo -> photo.file().path())
            .distinct()
            .count();
    return pictures
        + " pictures"
        + (clips == 0 ? "" : " and " + clips + (clips == 1 ? " clip" : " clips"));
  }

  private static boolean isUnusable(Warning warning) {
    return warning.kind() instanceof Problem.Kind kind && kind.isUnusable();
  }

  /** Said of a picture that can be used all the same. */
  private static boolean isUsed(Warning warning) {
    return warning.kind() == Problem.Kind.COLOUR_PROFILE_IGNORED
        || warning.kind() == Problem.Kind.CLIP_TIME
        || warning.kind() == Problem.Kind.SIDECAR_IGNORED
        || warning.kind() == Problem.Kind.DAMAGED;
  }

  private static String line(Warning warning) {
    StringBuilder line = new StringBuilder();
    line.append(warning.file().isPresent() && !isUsed(warning) ? "left out: " : "note: ");
    warning.file().ifPresent(file -> line.append(TerminalEscaper.of(file.name())).append(' '));
    warning.day().ifPresent(day -> line.append(day).append(": "));
    return line.append(TerminalEscaper.of(warning.text())).toString();
  }

  private static String counted(Problem.Kind kind, List<Warning> list) {
    boolean one = list.size() == 1;
    String what =
        switch (kind) {
          case OTHER_MONTH -> one ? "of another month" : "of other months";
          case NOT_WANTED -> "that you left out";
          case OTHER_DAYS -> "of other days";
          case COPY -> one ? "copy of another file" : "copies of other files";
          case SMALLER_COPY ->
              one ? "smaller copy of another picture" : "smaller copies of other pictures";
          case SCREENSHOT -> one ? "picture of a screen" : "pictures of a screen";
          default -> one ? "video" : "videos";
        };
    String first = list.get(0).file().map(file -> TerminalEscaper.of(file.name())).orElse("");
    return "left out: "
        + list.size()
        + " "
        + what
        + " ("
        + first
        + (one ? ")" : " and others; --verbose names them)");
  }
}
