package org.daymount.output;

import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.daymount.output.PdfText.Weight;
import org.daymount.sheet.Sheet;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Units;

/** A ruler at the foot of a page: inches above the line, centimetres below it. */
final class PdfRuler {
  private static final int INCHES = 4;
  private static final int CENTIMETRES = 10;
  private static final double NUMBER_TYPE = 5.5;
  private static final double WORDS_TYPE = 7.5;

  /** The scale and the words beside it. */
  private static final Length WIDTH = Length.inchFraction(27, 4);

  private static final Length HEIGHT = Length.inchFraction(5, 8);

  /** Room for the names and marks of pieces nearby. */
  private static final Length CLEAR = Length.inchFraction(1, 4);

  private static final Length STEP = Length.inchFraction(1, 8);

  private final PdfText text;
  private final PDPageContentStream page;
  private final PaperSize paper;

  PdfRuler(PdfText text, PDPageContentStream page, PaperSize paper) {
    this.text = text;
    this.page = page;
    this.paper = paper;
  }

  /** An empty strip of the sheet's waste that holds the ruler and its words, as low as can be. */
  static Optional<PaperBox> room(Sheet sheet, Length margin) {
    Waste waste = new Waste(sheet);
    PaperSize inside = sheet.size().inset(margin);
    for (int step = 0; HEIGHT.plus(STEP.times(step)).compareTo(inside.height()) <= 0; step++) {
      Length top = sheet.size().height().minus(margin).minus(HEIGHT).minus(STEP.times(step));
      for (Length x = margin;
          !x.plus(WIDTH).isLongerThan(margin.plus(inside.width()));
          x = x.plus(STEP)) {
        PaperBox strip = new PaperBox(x, top, WIDTH, HEIGHT);
        PaperBox clear =
            new PaperBox(
                x.minus(CLEAR),
                top.minus(CLEAR),
                WIDTH.plus(CLEAR.times(2)),
                HEIGHT.plus(CLEAR.times(2)));
        if (waste.isEmpty(clear)) {
          return Optional.of(strip);
        }
      }
    }
    return Optional.empty();
  }

  /**
   * @param units which of the two scales is named first
   */
  void draw(PaperBox strip, String title, Units units) throws IOException {
    PDRectangle box = SheetsPdf.rectangle(strip, paper);
    double left = box.getLowerLeftX();
    double y = box.getLowerLeftY() + 16;
    page.setStrokingColor(0f);
    page.setNonStrokingColor(0f);
    page.setLineWidth(0.5f);
    line(left, y, left + Length.inches(INCHES).inPoints(), y);
    for (int eighth = 0; eighth <= INCHES * 8; eighth++) {
      double x = left + Length.inchFraction(eighth, 8).inPoints();
      line(x, y, x, y + (eighth % 8 == 0 ? 8 : eighth % 4 == 0 ? 5 : 3));
      if (eighth % 8 == 0) {
        number(eighth / 8, eighth == INCHES * 8 ? " in" : "", x, y + 10);
      }
    }
    for (int millimetre = 0; millimetre <= CENTIMETRES * 10; millimetre++) {
      double x = left + Length.millimetres(millimetre).inPoints();
      line(x, y, x, y - (millimetre % 10 == 0 ? 8 : millimetre % 5 == 0 ? 5 : 3));
      if (millimetre % 10 == 0) {
        number(millimetre / 10, millimetre == CENTIMETRES * 10 ? " cm" : "", x, y - 14);
      }
    }
    double words = left + Length.inches(INCHES).inPoints() + 24;
    text.draw(page, "Print at 100%, not “fit to page”.", Weight.BOLD, WORDS_TYPE, words, y + 8);
    text.draw(
        page,
        units == Units.INCHES
            ? "Check with a ruler: this line is 4 in long,"
            : "Check with a ruler: the lower scale is 10 cm",
        Weight.PLAIN,
        WORDS_TYPE,
        words,
        y - 2);
    String rest = units == Units.INCHES ? "the lower scale 10 cm" : "long, the upper one 4 in";
    text.draw(page, rest + ". · " + title, Weight.PLAIN, WORDS_TYPE, words, y - 12);
  }

  private void number(int number, String unit, double x, double y) throws IOException {
    String digits = Integer.toString(number);
    double half = text.width(digits, Weight.PLAIN, NUMBER_TYPE) / 2;
    text.draw(page, digits + unit, Weight.PLAIN, NUMBER_TYPE, x - half, y);
  }

  private void line(double x0, double y0, double x1, double y1) throws IOException {
    page.moveTo((float) x0, (float) y0);
    page.lineTo((float) x1, (float) y1);
    page.stroke();
  }
}
