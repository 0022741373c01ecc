package org.daymount.card;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.text.AttributedString;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Measures, breaks and shapes text at one large size and leaves the scaling to the caller, so that
 * no hinting for a device moves a line's end. Lengths are in ems: 1 is the type size.
 */
final class TextShaper {
  private static final float EM = 512;
  private static final FontRenderContext FINE = new FontRenderContext(null, true, true);
  private static final char RIGHT_TO_LEFT_MARK = '\u200F';

  private final List<Typeface> typefaces;

  /**
   * @param typefaces the first that has a character shows it
   */
  TextShaper(Typeface... typefaces) {
    this.typefaces = List.of(typefaces);
  }

  /** Text that {@link ShownText} made showable, broken into lines of at most {@code width} ems. */
  List<String> lines(String text, double width) {
    List<String> lines = new ArrayList<>();
    for (String paragraph : text.split("\n", -1)) {
      addLines(paragraph.strip(), width, lines);
    }
    return lines;
  }

  private void addLines(String paragraph, double width, List<String> lines) {
    if (paragraph.isEmpty()) {
      lines.add("");
      return;
    }
    LineBreakMeasurer measurer =
        new LineBreakMeasurer(
            styled(paragraph).getIterator(), BreakIterator.getLineInstance(Locale.ROOT), FINE);
    boolean leftToRight = startsLeftToRight(paragraph);
    int start = 0;
    while (start < paragraph.length()) {
      int end = measurer.nextOffset((float) (width * EM));
      String line = paragraph.substring(start, end).strip();
      // A line inside a right-to-left paragraph that starts with a Latin word still runs from the
      // right: the mark has no width and says so.
      lines.add(leftToRight || !startsLeftToRight(line) ? line : RIGHT_TO_LEFT_MARK + line);
      measurer.setPosition(end);
      start = end;
    }
  }

  /** A line ready to be drawn, {@value #EM} units to the em. */
  TextLayout layout(String line) {
    return new TextLayout(styled(line).getIterator(), FINE);
  }

  /** In ems. */
  double width(String line) {
    return line.isEmpty() ? 0 : layout(line).getAdvance() / EM;
  }

  /** Factor from {@link #layout} units to the unit of {@code typeSize}. */
  static double scale(double typeSize) {
    return typeSize / EM;
  }

  private static boolean startsLeftToRight(String text) {
    return java.text.Bidi.requiresBidi(text.toCharArray(), 0, text.length())
        ? new java.text.Bidi(text, java.text.Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT)
            .baseIsLeftToRight()
        : true;
  }

  private AttributedString styled(String text) {
    AttributedString styled = new AttributedString(text);
    int start = 0;
    while (start < text.length()) {
      Font font = fontFor(text.codePointAt(start));
      int end = start;
      while (end < text.length() && fontFor(text.codePointAt(end)).equals(font)) {
        end += Character.charCount(text.codePointAt(end));
      }
      styled.addAttribute(TextAttribute.FONT, font.deriveFont(EM), start, end);
      start = end;
    }
    return styled;
  }

  private Font fontFor(int codePoint) {
    return typefaces.stream()
        .filter(typeface -> typeface.canShow(codePoint))
        .findFirst()
        .orElse(typefaces.get(0))
        .font();
  }
}
