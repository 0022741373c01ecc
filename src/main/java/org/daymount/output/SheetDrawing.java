package org.daymount.output;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.daymount.month.MonthSheet;
import org.daymount.sheet.Cut;
import org.daymount.sheet.PieceContent;
import org.daymount.sheet.PlacedPiece;
import org.daymount.sheet.Sheet;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;

/** A sheet drawn small: its pictures, pieces named, waste grey, cuts numbered where they start. */
final class SheetDrawing {
  private static final double NUMBER_RADIUS = 5;

  /** Room beside the drawing for the numbers of the cuts. */
  private static final double RIM = 2 * NUMBER_RADIUS + 2;

  private final MonthSheet content;
  private final Sheet sheet;
  private final double scale;
  private final double rim;
  private final PdfPage pictures;
  private final SmallPrint print;

  /**
   * @param width of the drawing of a lying sheet; an upright one is drawn to the same scale
   */
  SheetDrawing(MonthSheet content, double width, PdfPage pictures, SmallPrint print) {
    this.content = content;
    this.sheet = content.sheet();
    this.rim = sheet.cuts().isEmpty() ? 0 : RIM;
    double longest = sheet.size().width().max(sheet.size().height()).inPoints();
    this.scale = (width - rim) / longest;
    this.pictures = pictures;
    this.print = print;
  }

  double height() {
    return sheet.size().height().inPoints() * scale + rim;
  }

  /**
   * @param left of the whole drawing
   * @param top of the whole drawing, from the bottom of the page
   */
  void draw(PDPageContentStream page, double left, double top) throws IOException {
    double x0 = left + rim;
    double y0 = top - rim;
    page.setNonStrokingColor(0.88f);
    add(page, x0, y0, PaperBox.at(Length.ZERO, Length.ZERO, sheet.size()));
    page.fill();
    PdfPage canvas = pictures.on(page, x0, y0, scale);
    for (PlacedPiece placed : sheet.pieces()) {
      page.setNonStrokingColor(1f);
      add(page, x0, y0, placed.box());
      page.fill();
      PieceContent shown = content.content().get(placed.piece().label());
      if (shown != null) {
        canvas.piece(shown, placed.box(), placed.turned());
      }
      page.setLineWidth(0.4f);
      page.setStrokingColor(0.25f);
      add(page, x0, y0, placed.box());
      page.stroke();
      PaperBox box = placed.box();
      print.tag(
          page,
          placed.piece().label(),
          x0 + at(box.x()) + at(box.width()) / 2,
          y0 - at(box.y()) - at(box.height()) / 2,
          at(box.width()) - 2);
    }
    int number = 1;
    for (Cut cut : sheet.cuts()) {
      cut(page, x0, y0, cut, number++);
    }
    page.setNonStrokingColor(0f);
    page.setStrokingColor(0f);
  }

  private void add(PDPageContentStream page, double x0, double y0, PaperBox box)
      throws IOException {
    page.addRect(
        (float) (x0 + at(box.x())),
        (float) (y0 - at(box.bottom())),
        (float) at(box.width()),
        (float) at(box.height()));
  }

  private void cut(PDPageContentStream page, double x0, double y0, Cut cut, int number)
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
    print.number(page, number, discX, discY);
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
