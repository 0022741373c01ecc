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

  private final double width;
  private final double height;
  private final boolean headed;

  CardLayout(PaperSize card) {
    this(card, CardStyle.Heading.DATE);
  }

  CardLayout(PaperSize card, CardStyle.Heading heading) {
    headed = heading != CardStyle.Heading.NONE;
    width = card.width().inPoints();
    height = card.height().inPoints();
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
    return width - 2 * MARGIN;
  }

  /** The line under the heading. */
  double headingRule() {
    return MARGIN + HEADING;
  }

  double textTop() {
    return headed ? headingRule() + 6 : MARGIN;
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
