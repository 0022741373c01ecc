package org.daymount.cli;

import java.util.Locale;
import org.daymount.month.Settings;
import org.daymount.output.StripPaper;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;
import org.daymount.unit.Units;
import picocli.CommandLine.Option;

/** What is printed on, and how it is spoken of. */
final class PaperOptions {
  @Option(
      names = "--sheet",
      paramLabel = "4x6",
      description =
          "Size of the prints the lab or printer makes: 4x6, 5x7, 6x8, A6, 10x15cm; or letter or"
              + " a4, to cut the pieces straight out of a home printer's paper. Default: 4x6.",
      converter = Converters.Sheet.class)
  PaperSize sheet = PaperSize.inches(4, 6);

  @Option(
      names = "--margin",
      paramLabel = "1/4in",
      description =
          "What a printer at home leaves unprinted at each edge of --sheet; no piece lies there."
              + " Default: 1/4in on letter and a4, else 0.")
  Length margin;

  @Option(
      names = "--paper",
      paramLabel = "letter|a4",
      description =
          "Lays sheets.pdf out on this paper for a printer at home. Default: a page for each"
              + " sheet.")
  Settings.Paper paper = Settings.Paper.SHEET;

  @Option(
      names = "--ppi",
      paramLabel = "300",
      description = "Pixels per inch of the sheets. Default: 300.")
  Ppi ppi = new Ppi(300);

  @Option(
      names = "--units",
      paramLabel = "inches|cm",
      description =
          "The unit you read first in everything that is said; the other stands behind it."
              + " Default: as your country measures. Sizes you write have their own.")
  Units units;

  /** As told, or as printers at home usually need it (common practice, no source). */
  Length margin() {
    boolean atHome = sheet.equals(PaperSize.LETTER) || sheet.equals(PaperSize.A4);
    return margin != null ? margin : atHome ? Length.inchFraction(1, 4) : Length.ZERO;
  }

  /** For a test print. */
  StripPaper strip(Locale locale) {
    return new StripPaper(sheet, margin(), ppi, paper, units(locale));
  }

  /** As told, or as the country measures. */
  Units units(Locale locale) {
    return units != null ? units : Units.of(locale);
  }
}
