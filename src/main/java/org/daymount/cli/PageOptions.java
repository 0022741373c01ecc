package org.daymount.cli;

import java.nio.file.Path;
import org.daymount.album.CommonPractice;
import org.daymount.card.CardStyle;
import org.daymount.image.Lightening;
import org.daymount.page.PageSettings;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;
import picocli.CommandLine.Mixin;
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
      names = "--reveal",
      paramLabel = "1/8in",
      description = "How wide the mat shows on each side of a picture. Default: 1/8in.")
  Length reveal = CommonPractice.REVEAL;

  @Option(
      names = "--min-ppi",
      paramLabel = "200",
      description =
          "Fewest pixels per inch a picture may print at; one with fewer is passed over, or"
              + " printed smaller. Default: 200.")
  Ppi minPpi = new Ppi(200);

  @Mixin PaperOptions print;

  @Option(
      names = "--lab-trim",
      paramLabel = "1/16in",
      description =
          "How much of each edge the lab may trim away; pieces keep clear of it where they can."
              + " Default: 0.")
  Length labTrim = Length.ZERO;

  @Option(
      names = "--lighter",
      paramLabel = "1/3",
      description =
          "Prints all pictures lighter by so many stops (EV), 0 to 1. Choose it by eye, from the"
              + " print that 'daymount strip PHOTO' makes. Default: as they are.")
  Lightening lighter = Lightening.NONE;

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
