package org.daymount.card;

import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;

/**
 * Where things stand on a card. All lengths in points (1/72 in) from the card's top left corner.
 *
 * <p>The type sizes and margins are common practice, no source: captions are seldom set below 7 pt,
 * hand-ruled paper has lines 7 mm apart.
 */
final class CardLayout {
  /** Keeps clear of what a lab may trim (common practice: up to 1/8 in) and of an uneven cut. */
  static final double MARGIN = 15;

  static final double LARGEST_TYPE = 13;
  static final double SMALLEST_TYPE = 7;
  static final double TYPE_STEP = 0.5;

  /** From baseline to baseline, in type sizes. */
  static final double LEADING = 1.4;

  static final double RULE_SPACING = Length.millimetres(7).inPoints();
  static final double DAY_NUMBER_TYPE = 30;
  static final double DATE_TYPE = 8.5;
  private static final double HEADING = 34;

  /** A card lower than this and twice as wide has its heading beside the story, not above it. */
  private static final double LOW = Length.inchFraction(7, 4).inPoints();

  private static final double HEADING_COLUMN = 76;
  private static final double COLUMN_GAP = 12;

  /** Of a few words on a large card; they would look lost in the type of a small one. */
  private static final double LARGEST_SHORT_TYPE = 20;

  private static final PaperSize SMALL_CARD = PaperSize.inches(3, 4);

  private final double width;
  private final double height;
  private final double largestShortType;
  private final boolean headed;

  CardLayout(PaperSize card) {
    this(card, CardStyle.Heading.DATE);
  }

  CardLayout(PaperSize card, CardStyle.Heading heading) {
    headed = heading != CardStyle.Heading.NONE;
    width = card.width().inPoints();
    height = card.height().inPoints();
    double larger = Math.sqrt(card.squareInches() / SMALL_CARD.squareInches());
    largestShortType =
        Math.max(LARGEST_TYPE, Math.min(LARGEST_SHORT_TYPE, Math.floor(LARGEST_TYPE * larger)));
    if (linesOf(SMALLEST_TYPE) < 2 || textWidth() < 10 * SMALLEST_TYPE) {
      throw new IllegalArgumentException(
          "a card of " + card + " in is too small for text; the smallest is about 1.5x1.5");
    }
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }

  double textWidth() {
    return width - MARGIN - textLeft();
  }

  double textLeft() {
    return isHeadedBeside() ? MARGIN + HEADING_COLUMN + COLUMN_GAP : MARGIN;
  }

  /** Whether the heading stands to the left of the text. */
  boolean isHeadedBeside() {
    return headed && height < LOW && width >= 2 * height;
  }

  /** Where the heading ends. */
  double headingRight() {
    return isHeadedBeside() ? MARGIN + HEADING_COLUMN : width - MARGIN;
  }

  /** The line under the heading; beside the text it is as high as the card lets it. */
  double headingRule() {
    return MARGIN + HEADING;
  }

  double textTop() {
    return headed && !isHeadedBeside() ? headingRule() + 6 : MARGIN;
  }

  /** The most that a story of a few lines is set in. */
  double largestShortType() {
    return largestShortType;
  }

  double textBottom() {
    return height - MARGIN;
  }

  /** How many lines of this type size there is room for. */
  int linesOf(double typeSize) {
    return (int) Math.floor((textBottom() - textTop()) / (typeSize * LEADING) + 1e-9);
  }

  static Length lineDistance(double typeSize) {
    return Length.inches(typeSize * LEADING / 72);
  }

  static double typeSize(Length lineDistance) {
    return lineDistance.inPoints() / LEADING;
  }
}
