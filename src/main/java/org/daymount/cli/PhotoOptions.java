package org.daymount.cli;

import java.nio.file.Path;
import java.time.YearMonth;
import java.time.ZoneId;
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
      description = "Folders, with all the folders in them, or single picture files.")
  List<Path> photos = new ArrayList<>();

  @Option(
      names = "--month",
      paramLabel = "2026-06",
      description = "The month of the album. Default: the one with most pictures.")
  YearMonth month;

  @Option(
      names = "--days",
      paramLabel = "1-30",
      description = "Only these days of the month, such as 1-14 or 3,5-9.")
  DayNumbers days;

  @Option(
      names = "--day-starts",
      paramLabel = "04:00",
      description =
          "A picture taken earlier than this belongs to the evening before. Default: 04:00.")
  DayStart dayStarts = DayStart.FOUR;

  @Option(
      names = "--clock",
      paramLabel = "\"MODEL=+1h\"",
      description =
          "Puts right the times of a camera whose clock was wrong: \"Tarn T4=+1h\", \"Tarn T4=-20m\"."
              + " May be given several times.")
  List<String> clocks = new ArrayList<>();

  @Option(
      names = "--zone",
      paramLabel = "Europe/Oslo",
      description =
          "Where names of files that tell UTC (PXL_...) were taken, if no picture near them names its"
              + " offset. Default: the computer's zone.")
  ZoneId zone;

  @Option(
      names = "--dates",
      paramLabel = "FILE",
      description =
          "A table of dates you know: a line 'file,date,time' for each picture. Default: dates.csv in"
              + " the first folder, if it is there.")
  Path dates;

  @Option(
      names = "--verbose-record",
      description =
          "Writes the model of each picture's camera, and the whole way to its folder, into month.json"
              + " too; otherwise they stay out.")
  boolean verboseRecord;

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description = "How many pictures are worked on at once. Default: one per processor.")
  Integer jobs;
}
