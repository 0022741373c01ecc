package org.daymount.cli;

import java.nio.file.Path;
import org.daymount.album.CommonPractice;
import org.daymount.card.CardStyle;
import org.daymount.month.Settings;
import org.daymount.page.PageSettings;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;
import org.daymount.unit.Units;
import picocli.CommandLine.Option;

/** What the pages ask for, and what they are printed on. */
final class PageOptions {
  @Option(
      names = "--note",
      paramLabel = "FILE",
      description =
          "The month note: for each day its spaces and its story. Default: note.txt in the first"
              + " PHOTOS folder, if there is one.")
  Path note;

  @Option(
      names = "--space",
      paramLabel = "\"4x6\"",
      description =
          "What a page holds when the note does not say: 4x6, \"4x6 portrait on mat\", \"two 3x4\"."
              + " Default: 4x6.")
  String space = "4x6";

  @Option(
      names = "--page",
      paramLabel = "6x8",
      description =
          "Size of the album's pages, as they are read. Default: as --album says, or 6x8.")
  PaperSize page;

  @Option(
      names = "--album",
      paramLabel = "FILE",
      description =
          "What you wrote about the album: its page, the kinds of page at hand, ready-made pages"
              + " that the note names. Default: album.txt beside the note, if there is one.")
  Path album;

  @Option(
      names = "--start",
      paramLabel = "right|left",
      description =
          "The side of the open album that the first day lies on. Default: right, the front of"
              + " the first leaf.")
  PageSettings.Start start = PageSettings.Start.RIGHT;

  @Option(
      names = "--units",
      paramLabel = "inches|cm",
      description =
          "The unit you read first in everything that is said; the other stands behind it."
              + " Default: as your country measures. Sizes you write have their own.")
  Units units;

  @Option(
      names = "--reveal",
      paramLabel = "1/8in",
      description = "How wide the mat shows on each side of a picture. Default: 1/8in.")
  Length reveal = CommonPractice.REVEAL;

  @Option(
      names = "--ppi",
      paramLabel = "300",
      description = "Pixels per inch of the sheets. Default: 300.")
  Ppi ppi = new Ppi(300);

  @Option(
      names = "--min-ppi",
      paramLabel = "200",
      description =
          "Fewest pixels per inch a picture may print at; one with fewer is passed over, or"
              + " printed smaller. Default: 200.")
  Ppi minPpi = new Ppi(200);

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

  /** As told, or as printers at home usually need it (common practice, no source). */
  Length margin() {
    boolean atHome = sheet.equals(PaperSize.LETTER) || sheet.equals(PaperSize.A4);
    return margin != null ? margin : atHome ? Length.inchFraction(1, 4) : Length.ZERO;
  }

  @Option(
      names = "--lab-trim",
      paramLabel = "1/16in",
      description =
          "How much of each edge the lab may trim away; pieces keep clear of it where they can."
              + " Default: 0.")
  Length labTrim = Length.ZERO;

  @Option(
      names = "--paper",
      paramLabel = "letter|a4",
      description =
          "Lays sheets.pdf out on this paper for a printer at home. Default: a page for each"
              + " sheet.")
  Settings.Paper paper = Settings.Paper.SHEET;

  @Option(
      names = "--cards",
      paramLabel = "3x4|auto",
      description =
          "Adds a story card of this size for every day with a page; auto: for every day with a"
              + " story, as large as the place that is left on its page.",
      converter = Converters.Cards.class)
  Converters.CardChoice cards;

  @Option(
      names = "--card-heading",
      paramLabel = "date|number|none",
      description =
          "What stands at the top of a story card: the date, the day's number alone, or nothing,"
              + " so that pages can be moved. Default: date.")
  CardStyle.Heading cardHeading = CardStyle.Heading.DATE;

  @Option(
      names = "--card-rules",
      description = "Lines to write on below a story that leaves room on its card.")
  boolean cardRules;

  /** How the cards look. */
  CardStyle cardStyle() {
    return new CardStyle(cards != null && cards.size().isEmpty(), cardHeading, cardRules);
  }
}
