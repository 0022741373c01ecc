package org.daymount.card;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.daymount.unit.Length;

/** Paints a story card: heading, and text or ruled lines, as filled outlines. */
public final class CardPainter {
  private static final Color PAPER = Color.WHITE;
  private static final Color INK = new Color(0x26, 0x2B, 0x33);
  private static final Color QUIET_INK = new Color(0x6B, 0x72, 0x7B);
  private static final Color RULE = new Color(0xB9, 0xC0, 0xC7);
  private static final DateTimeFormatter WEEKDAY =
      DateTimeFormatter.ofPattern("EEEE", Locale.ENGLISH);
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

  /** Of the white that a short story leaves; what is centred looks too low. */
  private static final double ABOVE = 0.38;

  private final TextShaper text = new TextShaper(Typeface.SERIF, Typeface.SANS);
  private final TextShaper bold = new TextShaper(Typeface.SANS_BOLD);
  private final TextShaper plain = new TextShaper(Typeface.SANS);

  /**
   * Paints the card with its top left corner at the graphics' origin.
   *
   * @param graphics its unit is the point, 1/72 in; left as it was found
   */
  public void paint(StoryCard card, Graphics2D graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    CardLayout layout = new CardLayout(card.size(), card.style().heading());
    g.setColor(PAPER);
    g.fill(new Rectangle2D.Double(0, 0, layout.width(), layout.height()));
    if (card.style().heading() != CardStyle.Heading.NONE) {
      paintHeading(card, layout, g);
    }
    if (card.isRuled()) {
      paintRules(layout, layout.textTop(), g);
    } else {
      paintText(card, layout, g);
    }
    g.dispose();
  }

  /**
   * Paints a story lightly, its place's top left corner at the graphics' origin; no background.
   *
   * @param graphics its unit is the point, 1/72 in; left as it was found
   */
  public void paint(StoryNote note, Graphics2D graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(QUIET_INK);
    double width = note.size().width().inPoints();
    double margin = Math.min(CardLayout.MARGIN, width / 10);
    paintLines(note.lines(), note.lineDistance(), margin, margin, width - 2 * margin, g);
    g.dispose();
  }

  private void paintHeading(StoryCard card, CardLayout layout, Graphics2D g) {
    String number = Integer.toString(card.day().getDayOfMonth());
    double baseline = layout.headingRule() - 8;
    double left = CardLayout.MARGIN;
    double numberType = CardLayout.DAY_NUMBER_TYPE;
    g.setColor(INK);
    draw(bold.layout(number), left, baseline, numberType, g);
    boolean beside = layout.isHeadedBeside();
    double textLeft = beside ? left : left + bold.width(number) * numberType + 8;
    double type = dateType(card, layout, textLeft);
    if (card.style().heading() == CardStyle.Heading.DATE) {
      baseline += beside ? type * 2.8 : 0; // under the number, not beside it
      draw(bold.layout(WEEKDAY.format(card.day())), textLeft, baseline - type * 1.4, type, g);
      g.setColor(QUIET_INK);
      draw(plain.layout(DATE.format(card.day())), textLeft, baseline, type, g);
    }
    g.setColor(QUIET_INK);
    if (card.count() > 1) {
      String part = part(card);
      double x = beside ? CardLayout.MARGIN : layout.headingRight() - plain.width(part) * type;
      double y = beside ? baseline + type * 1.8 : baseline - type * 1.4;
      draw(plain.layout(part), x, y, type, g);
    }
    if (beside) {
      g.setColor(INK);
      double between = (layout.headingRight() + layout.textLeft()) / 2;
      double tall = layout.textBottom() - layout.textTop();
      g.fill(new Rectangle2D.Double(between - 0.25, layout.textTop(), 0.5, tall));
    } else {
      line(g, CardLayout.MARGIN, layout.headingRule(), layout.textWidth(), INK);
    }
  }

  /** Smaller than usual where a narrow card would not hold the date. */
  private double dateType(StoryCard card, CardLayout layout, double textLeft) {
    double room = layout.headingRight() - textLeft;
    double weekday =
        bold.width(WEEKDAY.format(card.day()))
            + (card.count() > 1 ? 1 + plain.width(part(card)) : 0);
    double widest = Math.max(weekday, plain.width(DATE.format(card.day())));
    return Math.min(CardLayout.DATE_TYPE, room / widest);
  }

  private static String part(StoryCard card) {
    return card.number() + " of " + card.count();
  }

  private void paintText(StoryCard card, CardLayout layout, Graphics2D g) {
    g.setColor(INK);
    double tall = card.lines().size() * card.textSize().inPoints();
    double room = layout.textBottom() - layout.textTop() - tall;
    boolean ruled = card.style().rules();
    boolean balanced = !ruled && card.count() == 1;
    double top = layout.textTop() + (balanced ? Math.max(0, room) * ABOVE : 0);
    paintLines(card.lines(), card.textSize(), layout.textLeft(), top, layout.textWidth(), g);
    if (ruled) {
      paintRules(layout, top + tall, g);
    }
  }

  private void paintLines(
      List<String> lines,
      Length lineDistance,
      double left,
      double top,
      double width,
      Graphics2D g) {
    double distance = lineDistance.inPoints();
    double type = CardLayout.typeSize(lineDistance);
    double baseline = top + distance - (distance - type) / 2 - type * 0.2;
    for (String line : lines) {
      if (!line.isEmpty()) {
        TextLayout set = text.layout(line);
        double indent = set.isLeftToRight() ? 0 : width - set.getAdvance() * TextShaper.scale(type);
        draw(set, left + indent, baseline, type, g);
      }
      baseline += distance;
    }
  }

  private void paintRules(CardLayout layout, double top, Graphics2D g) {
    double y = top + CardLayout.RULE_SPACING;
    while (y <= layout.textBottom()) {
      line(g, layout.textLeft(), y, layout.textWidth(), RULE);
      y += CardLayout.RULE_SPACING;
    }
  }

  private static void line(Graphics2D g, double x, double y, double width, Color colour) {
    Color before = g.getColor();
    g.setColor(colour);
    g.fill(new Rectangle2D.Double(x, y - 0.25, width, 0.5));
    g.setColor(before);
  }

  private static void draw(TextLayout set, double x, double y, double type, Graphics2D g) {
    AffineTransform place = AffineTransform.getTranslateInstance(x, y);
    place.scale(TextShaper.scale(type), TextShaper.scale(type));
    g.fill(set.getOutline(place));
  }
}
