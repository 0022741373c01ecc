package org.daymount.card;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.text.AttributedString;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Measures and shapes text at one large size and leaves the scaling to the caller, so that no
 * hinting for a device moves a line's end. Lengths are in ems: 1 is the type size.
 */
final class TextShaper {
  private static final float EM = 512;
  private static final FontRenderContext FINE = new FontRenderContext(null, true, true);
  private static final int MOST_REMEMBERED = 20_000;

  private final List<Typeface> typefaces;
  private final Map<Integer, Double> characters = new ConcurrentHashMap<>(); // in ems
  private final Map<String, Double> shaped = new ConcurrentHashMap<>();

  /**
   * @param typefaces the first that has a character shows it
   */
  TextShaper(Typeface... typefaces) {
    this.typefaces = List.of(typefaces);
  }

  /** Text that {@link ShownText} made showable, ready to be broken into lines of any width. */
  MeasuredText measure(String text) {
    return MeasuredText.of(text, this::advance);
  }

  /**
   * Of a piece of text that no line break may part, in ems. Most scripts have one width for each
   * character, and those are remembered; others are shaped as a whole.
   */
  private double advance(String piece) {
    if (Font.textRequiresLayout(piece.toCharArray(), 0, piece.length())) {
      if (shaped.size() > MOST_REMEMBERED) {
        shaped.clear();
      }
      return shaped.computeIfAbsent(piece, this::width);
    }
    double sum = 0;
    for (int i = 0; i < piece.length(); i += Character.charCount(piece.codePointAt(i))) {
      sum += characters.computeIfAbsent(piece.codePointAt(i), c -> width(Character.toString(c)));
    }
    return sum;
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
