package org.daymount.output;

import java.io.IOException;
import java.io.InputStream;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.daymount.card.ShownText;
import org.daymount.card.Typeface;

/**
 * Text for PDF pages, with the program's own typeface embedded as a subset. Names that people give
 * their files may hold anything: what the typeface lacks is named or left out as on the story
 * cards; right-to-left runs are put in reading order, without joining Arabic letters.
 */
final class PdfText {
  /** Weight of the type. */
  enum Weight {
    PLAIN(Typeface.SANS),
    BOLD(Typeface.SANS_BOLD);

    private final Typeface typeface;

    Weight(Typeface typeface) {
      this.typeface = typeface;
    }
  }

  private final PDFont plain;
  private final PDFont bold;

  PdfText(PDDocument document) throws IOException {
    plain = load(document, Weight.PLAIN);
    bold = load(document, Weight.BOLD);
  }

  private static PDFont load(PDDocument document, Weight weight) throws IOException {
    try (InputStream stream = weight.typeface.open()) {
      return PDType0Font.load(document, stream, true);
    }
  }

  /** In points. */
  double width(String text, Weight weight, double size) throws IOException {
    return font(weight).getStringWidth(shown(text, weight)) / 1000 * size;
  }

  /** Draws one line with its baseline starting at x, y (points from the page's bottom left). */
  void draw(PDPageContentStream page, String text, Weight weight, double size, double x, double y)
      throws IOException {
    page.beginText();
    page.setFont(font(weight), (float) size);
    page.newLineAtOffset((float) x, (float) y);
    page.showText(shown(text, weight));
    page.endText();
  }

  /** Broken between words into lines of at most {@code width} points. */
  List<String> lines(String text, Weight weight, double size, double width) throws IOException {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (line.isEmpty() || width(longer, weight, size) <= width) {
        line = longer;
      } else {
        lines.add(line);
        line = word;
      }
    }
    lines.add(line);
    return lines;
  }

  private PDFont font(Weight weight) {
    return weight == Weight.BOLD ? bold : plain;
  }

  private static String shown(String text, Weight weight) {
    String line = ShownText.of(text, weight.typeface).text().replace('\n', ' ');
    char[] chars = line.toCharArray();
    return Bidi.requiresBidi(chars, 0, chars.length) ? visual(line) : line;
  }

  private static String visual(String line) {
    Bidi bidi = new Bidi(line, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    int runs = bidi.getRunCount();
    byte[] levels = new byte[runs];
    String[] texts = new String[runs];
    for (int i = 0; i < runs; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      String run = line.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
      texts[i] = levels[i] % 2 == 0 ? run : new StringBuilder(run).reverse().toString();
    }
    Bidi.reorderVisually(levels, 0, texts, 0, runs);
    return String.join("", texts);
  }
}
