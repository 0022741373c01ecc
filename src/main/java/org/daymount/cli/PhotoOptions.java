package org.daymount.cli;

import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.daymount.day.DayNumbers;
import org.daymount.day.DayStart;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which pictures, and how their days are told. */
final class PhotoOptions {
  @Parameters(
      paramLabel = "PHOTOS",
      arity = "1..*",
      description = "Folders (looked through to the bottom) or single picture files.")
  List<Path> photos = new ArrayList<>();

  @Option(
      names = "--month",
      paramLabel = "2026-06",
      description = "The month of the album. Default: the month with most photos.")
  YearMonth month;

  @Option(
      names = "--days",
      paramLabel = "1-30",
      description = "Only these days of the month: 1-14 or 3,5-9.")
  DayNumbers days;

  @Option(
      names = "--day-starts",
      paramLabel = "04:00",
      description = "A picture taken earlier belongs to the evening before.")
  DayStart dayStarts = DayStart.FOUR;

  @Option(
      names = "--clock",
      paramLabel = "\"MODEL=+1h\"",
      description = "Sets right a camera whose clock was wrong; may be given several times.")
  List<String> clocks = new ArrayList<>();

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description = "How many pictures are worked on at once. Default: one per processor.")
  Integer jobs;
}
