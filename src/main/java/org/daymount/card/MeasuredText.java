package org.daymount.card;

import java.text.Bidi;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * A text whose pieces are measured once, so that it can be broken into lines of one width after
 * another: a card tries a dozen sizes of type, and a person types. Lines break where Unicode allows
 * it (UAX #14, as Java has it); a piece longer than a line breaks between two characters.
 */
final class MeasuredText {
  private static final char RIGHT_TO_LEFT_MARK = '\u200F';

  /**
   * What no line break parts, with the spaces behind it.
   *
   * @param ink its width without those spaces, in ems
   * @param advance with them
   */
  private record Piece(int start, int end, double ink, double advance) {}

  private record Paragraph(String text, boolean isLeftToRight, List<Piece> pieces) {}

  private final List<Paragraph> paragraphs = new ArrayList<>();
  private final ToDoubleFunction<String> measure;

  private MeasuredText(ToDoubleFunction<String> measure) {
    this.measure = measure;
  }

  /**
   * @param measure the width of a text on one line, in ems
   */
  static MeasuredText of(String text, ToDoubleFunction<String> measure) {
    MeasuredText measured = new MeasuredText(measure);
    for (String line : text.split("\n", -1)) {
      String paragraph = line.strip();
      measured.paragraphs.add(
          new Paragraph(paragraph, startsLeftToRight(paragraph), measured.pieces(paragraph)));
    }
    return measured;
  }

  private List<Piece> pieces(String paragraph) {
    List<Piece> pieces = new ArrayList<>();
    BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    breaks.setText(paragraph);
    int start = 0;
    for (int end = breaks.next(); end != BreakIterator.DONE; end = breaks.next()) {
      pieces.add(piece(paragraph, start, end));
      start = end;
    }
    return pieces;
  }

  private Piece piece(String paragraph, int start, int end) {
    int last = end;
    while (last > start && Character.isWhitespace(paragraph.charAt(last - 1))) {
      last--;
    }
    double ink = measure.applyAsDouble(paragraph.substring(start, last));
    double spaces = last == end ? 0 : measure.applyAsDouble(paragraph.substring(last, end));
    return new Piece(start, end, ink, ink + spaces);
  }

  /** Lines of at most {@code width} ems; a paragraph that is empty is an empty line. */
  List<String> lines(double width) {
    List<String> lines = new ArrayList<>();
    for (Paragraph paragraph : paragraphs) {
      addLines(paragraph, width, lines);
    }
    return lines;
  }

  private void addLines(Paragraph paragraph, double width, List<String> lines) {
    int start = 0;
    int end = 0;
    double filled = 0;
    for (Piece piece : paragraph.pieces()) {
      if (end > start && filled + piece.ink() > width) {
        lines.add(line(paragraph, start, end));
        start = end;
        filled = 0;
      }
      if (piece.ink() > width) {
        start = addFull(paragraph, piece, width, lines);
        filled = measure.applyAsDouble(paragraph.text().substring(start, piece.end()));
      } else {
        filled += piece.advance();
      }
      end = piece.end();
    }
    if (end > start || paragraph.text().isEmpty()) {
      lines.add(line(paragraph, start, end));
    }
  }

  /**
   * The full lines of a piece that is longer than one.
   *
   * @return where what is left of it starts
   */
  private int addFull(Paragraph paragraph, Piece piece, double width, List<String> lines) {
    BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
    characters.setText(paragraph.text().substring(piece.start(), piece.end()));
    int start = piece.start();
    int end = start;
    double filled = 0;
    for (int at = characters.next(); at != BreakIterator.DONE; at = characters.next()) {
      int next = piece.start() + at;
      double advance = measure.applyAsDouble(paragraph.text().substring(end, next));
      if (filled + advance > width && end > start) {
        lines.add(line(paragraph, start, end));
        start = end;
        filled = 0;
      }
      filled += advance;
      end = next;
    }
    return start;
  }

  /**
   * A line inside a right-to-left paragraph that starts with a Latin word still runs from the
   * right: the mark has no width and says so.
   */
  private static String line(Paragraph paragraph, int start, int end) {
    String line = paragraph.text().substring(start, end).strip();
    return paragraph.isLeftToRight() || !startsLeftToRight(line) ? line : RIGHT_TO_LEFT_MARK + line;
  }

  private static boolean startsLeftToRight(String text) {
    return !Bidi.requiresBidi(text.toCharArray(), 0, text.length())
        || new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight();
  }
}
