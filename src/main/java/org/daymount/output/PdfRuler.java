package org.daymount.output;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
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

  /** The scale and the words beside it, then the words below it; each also turned. */
  private static final List<PaperSize> FORMS =
      Stream.of(PaperSize.inches(6.75, 0.625), PaperSize.inches(4.25, 1), PaperSize.inches(2.5, 1))
          .flatMap(form -> Stream.of(form, form.turned()))
          .toList();

  /** Shorter strips have a scale of half the length. */
  private static final Length WHOLE = Length.inches(4);

  /** Shorter forms have their words below. */
  private static final Length BESIDE = Length.inches(6);

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
    return FORMS.stream().flatMap(form -> room(form, sheet, waste, margin).stream()).findFirst();
  }

  private static Optional<PaperBox> room(PaperSize form, Sheet sheet, Waste waste, Length margin) {
    PaperSize inside = sheet.size().inset(margin);
    for (Length up = Length.ZERO;
        !form.height().plus(up).isLongerThan(inside.height());
        up = up.plus(STEP)) {
      Length top = sheet.size().height().minus(margin).minus(form.height()).minus(up);
      for (Length x = margin;
          !x.plus(form.width()).isLongerThan(margin.plus(inside.width()));
          x = x.plus(STEP)) {
        PaperBox clear =
            new PaperBox(
                x.minus(CLEAR),
                top.minus(CLEAR),
                form.width().plus(CLEAR.times(2)),
                form.height().plus(CLEAR.times(2)));
        if (waste.isEmpty(clear)) {
          return Optional.of(PaperBox.at(x, top, form));
        }
      }
    }
    return Optional.empty();
  }

  /**
   * @param units which of the two scales is named first
   */
  void draw(PaperBox strip, String title, Units units) throws IOException {
    PDRectangle box = PaperGrid.rectangle(strip, paper);
    if (strip.height().isLongerThan(strip.width())) { // reads from the bottom up
      page.saveGraphicsState();
      page.transform(new Matrix(0, 1, -1, 0, box.getUpperRightX(), box.getLowerLeftY()));
      draw(0, 0, strip.height(), title, units);
      page.restoreGraphicsState();
    } else {
      draw(box.getLowerLeftX(), box.getLowerLeftY(), strip.width(), title, units);
    }
  }

  private void draw(double left, double bottom, Length length, String title, Units units)
      throws IOException {
    int inches = length.isLongerThan(WHOLE) ? INCHES : INCHES / 2;
    int centimetres = length.isLongerThan(WHOLE) ? CENTIMETRES : CENTIMETRES / 2;
    boolean beside = length.isLongerThan(BESIDE);
    double y = bottom + (beside ? 16 : 52);
    page.setStrokingColor(0f);
    page.setNonStrokingColor(0f);
    page.setLineWidth(0.5f);
    line(left, y, left + Length.inches(inches).inPoints(), y);
    for (int eighth = 0; eighth <= inches * 8; eighth++) {
      double x = left + Length.inchFraction(eighth, 8).inPoints();
      line(x, y, x, y + (eighth % 8 == 0 ? 8 : eighth % 4 == 0 ? 5 : 3));
      if (eighth % 8 == 0) {
        number(eighth / 8, eighth == inches * 8 ? " in" : "", x, y + 10);
      }
    }
    for (int millimetre = 0; millimetre <= centimetres * 10; millimetre++) {
      double x = left + Length.millimetres(millimetre).inPoints();
      line(x, y, x, y - (millimetre % 10 == 0 ? 8 : millimetre % 5 == 0 ? 5 : 3));
      if (millimetre % 10 == 0) {
        number(millimetre / 10, millimetre == centimetres * 10 ? " cm" : "", x, y - 14);
      }
    }
    double words = beside ? left + Length.inches(inches).inPoints() + 24 : left;
    double first = bottom + (beside ? 24 : 26);
    text.draw(page, "Print at 100%, not “fit to page”.", Weight.BOLD, WORDS_TYPE, words, first);
    text.draw(
        page,
        units == Units.INCHES
            ? "Check with a ruler: this line is " + inches + " in long,"
            : "Check with a ruler: the lower scale is " + centimetres + " cm",
        Weight.PLAIN,
        WORDS_TYPE,
        words,
        first - 10);
    String rest =
        units == Units.INCHES
            ? "the lower scale " + centimetres + " cm"
            : "long, the upper one " + inches + " in";
    text.draw(page, rest + ". · " + title, Weight.PLAIN, WORDS_TYPE, words, first - 20);
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
