package org.daymount.cli;

import java.nio.file.Path;
import org.daymount.album.CommonPractice;
import org.daymount.month.Settings;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;
import picocli.CommandLine.Option;

/** What the pages ask for, and what they are printed on. */
final class PageOptions {
  @Option(
      names = "--note",
      paramLabel = "FILE",
      description =
          "The month note: a line per day with its spaces, and its story. Default: note.txt in"
              + " the first PHOTOS folder, if there is one.")
  Path note;

  @Option(
      names = "--space",
      paramLabel = "\"4x6\"",
      description =
          "The space on a page the note says nothing about: 4x6, \"4x6 portrait on mat\", \"two 3x4\".")
  String space = "4x6";

  @Option(
      names = "--reveal",
      paramLabel = "1/8in",
      description = "Width of mat left showing on each side.")
  Length reveal = CommonPractice.REVEAL;

  @Option(names = "--ppi", paramLabel = "300", description = "Pixels per inch of the sheets.")
  Ppi ppi = new Ppi(300);

  @Option(
      names = "--min-ppi",
      paramLabel = "200",
      description = "A picture with fewer pixels per inch is passed over, or printed smaller.")
  Ppi minPpi = new Ppi(200);

  @Option(
      names = "--sheet",
      paramLabel = "4x6",
      description = "The print a lab or printer makes: 4x6, 5x7, 6x8, A6, 10x15cm.")
  PaperSize sheet = PaperSize.inches(4, 6);

  @Option(
      names = "--lab-trim",
      paramLabel = "1/16in",
      description =
          "How much of each edge the lab may lose; pieces keep away from it where they can.")
  Length labTrim = Length.ZERO;

  @Option(
      names = "--paper",
      paramLabel = "letter|a4",
      description = "Lays sheets.pdf out on a home printer's paper. Default: one page a sheet.")
  Settings.Paper paper = Settings.Paper.SHEET;

  @Option(
      names = "--cards",
      paramLabel = "3x4",
      description = "Adds a story card of this size for every day with a page.")
  PaperSize cards;
}
