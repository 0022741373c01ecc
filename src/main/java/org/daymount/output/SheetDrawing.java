package org.daymount.output;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.daymount.output.PdfText.Weight;
import org.daymount.sheet.Cut;
import org.daymount.sheet.PlacedPiece;
import org.daymount.sheet.Sheet;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;

/** A sheet drawn small: pieces named, waste grey, cuts numbered where they start. */
final class SheetDrawing {
  private static final double LABEL_TYPE = 9;
  private static final double NUMBER_TYPE = 6.5;
  private static final double NUMBER_RADIUS = 5;

  /** Room around the drawing for the numbers of the cuts. */
  static final double RIM = 2 * NUMBER_RADIUS + 2;

  private final Sheet sheet;
  private final double scale;

  /**
   * @param scale points on paper for each point of the sheet
   */
  SheetDrawing(Sheet sheet, double scale) {
    this.sheet = sheet;
    this.scale = scale;
  }

  double width() {
    return sheet.size().width().inPoints() * scale + RIM;
  }

  double height() {
    return sheet.size().height().inPoints() * scale + RIM;
  }

  /**
   * @param left of the whole drawing
   * @param top of the whole drawing, from the bottom of the page
   */
  void draw(PDPageContentStream page, PdfText text, double left, double top) throws IOException {
    double x0 = left + RIM;
    double y0 = top - RIM;
    page.setLineWidth(0.6f);
    page.setStrokingColor(0.25f);
    page.setNonStrokingColor(0.88f);
    box(page, x0, y0, PaperBox.at(Length.ZERO, Length.ZERO, sheet.size()));
    for (PlacedPiece placed : sheet.pieces()) {
      page.setNonStrokingColor(1f);
      box(page, x0, y0, placed.box());
      page.setNonStrokingColor(0f);
      label(page, text, x0, y0, placed);
    }
    int number = 1;
    for (Cut cut : sheet.cuts()) {
      cut(page, text, x0, y0, cut, number++);
    }
    page.setNonStrokingColor(0f);
    page.setStrokingColor(0f);
  }

  private void box(PDPageContentStream page, double x0, double y0, PaperBox box)
      throws IOException {
    page.addRect(
        (float) (x0 + at(box.x())),
        (float) (y0 - at(box.bottom())),
        (float) at(box.width()),
        (float) at(box.height()));
    page.fillAndStroke();
  }

  private void label(
      PDPageContentStream page, PdfText text, double x0, double y0, PlacedPiece placed)
      throws IOException {
    String label = placed.piece().label();
    double width = text.width(label, Weight.BOLD, LABEL_TYPE);
    double room = at(placed.box().width()) - 4;
    double type = Math.min(LABEL_TYPE, LABEL_TYPE * room / width);
    double middleX = x0 + at(placed.box().x()) + at(placed.box().width()) / 2;
    double middleY = y0 - at(placed.box().y()) - at(placed.box().height()) / 2;
    text.draw(
        page,
        label,
        Weight.BOLD,
        type,
        middleX - width * type / LABEL_TYPE / 2,
        middleY - type * 0.35);
  }

  private void cut(
      PDPageContentStream page, PdfText text, double x0, double y0, Cut cut, int number)
      throws IOException {
    boolean isUpDown = cut.axis() == Cut.Axis.X;
    double startX = x0 + (isUpDown ? at(cut.at()) : at(cut.from()));
    double startY = y0 - (isUpDown ? at(cut.from()) : at(cut.at()));
    double endX = x0 + (isUpDown ? at(cut.at()) : at(cut.to()));
    double endY = y0 - (isUpDown ? at(cut.to()) : at(cut.at()));
    page.setStrokingColor(0.75f, 0.1f, 0.1f);
    page.setLineWidth(0.9f);
    page.setLineDashPattern(new float[] {3, 2}, 0);
    page.moveTo((float) startX, (float) startY);
    page.lineTo((float) endX, (float) endY);
    page.stroke();
    page.setLineDashPattern(new float[] {}, 0);
    double discX = startX - (isUpDown ? 0 : NUMBER_RADIUS + 1);
    double discY = startY + (isUpDown ? NUMBER_RADIUS + 1 : 0);
    page.setNonStrokingColor(0.75f, 0.1f, 0.1f);
    disc(page, discX, discY);
    page.setNonStrokingColor(1f);
    String digits = Integer.toString(number);
    double width = text.width(digits, Weight.BOLD, NUMBER_TYPE);
    text.draw(
        page, digits, Weight.BOLD, NUMBER_TYPE, discX - width / 2, discY - NUMBER_TYPE * 0.36);
    page.setStrokingColor(0.25f);
    page.setLineWidth(0.6f);
  }

  /** Four Bézier curves; 0.5523 is the usual factor for a quarter circle. */
  private static void disc(PDPageContentStream page, double x, double y) throws IOException {
    float r = (float) NUMBER_RADIUS;
    float k = r * 0.5523f;
    float cx = (float) x;
    float cy = (float) y;
    page.moveTo(cx + r, cy);
    page.curveTo(cx + r, cy + k, cx + k, cy + r, cx, cy + r);
    page.curveTo(cx - k, cy + r, cx - r, cy + k, cx - r, cy);
    page.curveTo(cx - r, cy - k, cx - k, cy - r, cx, cy - r);
    page.curveTo(cx + k, cy - r, cx + r, cy - k, cx + r, cy);
    page.fill();
  }

  private double at(Length length) {
    return length.inPoints() * scale;
  }
}
