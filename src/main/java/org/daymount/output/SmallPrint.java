package org.daymount.output;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.daymount.output.PdfText.Weight;

/** Lines of small type under a drawing, wrapped to its width. Points. */
final class SmallPrint {
  private static final double TYPE = 6.6;
  private static final double LINE = 8.4;

  /** A paragraph. */
  record Words(String words, Weight weight) {
    static Words plain(String words) {
      return new Words(words, Weight.PLAIN);
    }

    static Words bold(String words) {
      return new Words(words, Weight.BOLD);
    }
  }

  private final PdfText text;

  SmallPrint(PdfText text) {
    this.text = text;
  }

  double height(List<Words> paragraphs, double width) throws IOException {
    double height = 0;
    for (Words words : paragraphs) {
      height += LINE * text.lines(words.words(), words.weight(), TYPE, width).size();
    }
    return height;
  }

  /**
   * @param top of the first line, from the bottom of the page
   */
  void draw(
      PDPageContentStream stream, List<Words> paragraphs, double left, double top, double width)
      throws IOException {
    double y = top - TYPE;
    for (Words words : paragraphs) {
      for (String line : text.lines(words.words(), words.weight(), TYPE, width)) {
        text.draw(stream, line, words.weight(), TYPE, left, y);
        y -= LINE;
      }
    }
  }

  /** A white number, its middle at x, y. */
  void number(PDPageContentStream stream, int number, double x, double y) throws IOException {
    String digits = Integer.toString(number);
    stream.setNonStrokingColor(1f);
    double wide = text.width(digits, Weight.BOLD, TYPE);
    text.draw(stream, digits, Weight.BOLD, TYPE, x - wide / 2, y - TYPE * 0.36);
  }

  /** A name on a white ground, its middle at x, y; no wider than the room there. */
  void tag(PDPageContentStream stream, String name, double x, double y, double room)
      throws IOException {
    double wide = text.width(name, Weight.BOLD, TYPE);
    double type = Math.min(TYPE, TYPE * room / (wide + 2));
    double half = wide * type / TYPE / 2;
    stream.setNonStrokingColor(1f);
    stream.addRect(
        (float) (x - half - 1.5),
        (float) (y - type * 0.55),
        (float) (2 * half + 3),
        (float) (type * 1.1));
    stream.fill();
    stream.setNonStrokingColor(0f);
    text.draw(stream, name, Weight.BOLD, type, x - half, y - type * 0.36);
  }
}
