package org.daymount.output;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/** Hairlines at the corners of a sheet on a larger paper, all of them outside the sheet. */
final class CutMarks {
  /** Between the sheet and its marks, so that a cut a little off leaves no ink; points. */
  private static final float GAP = 2;

  private static final float LENGTH = 6;
  private static final float HAIRLINE = 0.25f;

  private CutMarks() {}

  static void draw(PaperBox sheet, PaperSize paper, PDPageContentStream stream) throws IOException {
    PDRectangle box = PaperGrid.rectangle(sheet, paper);
    stream.setLineWidth(HAIRLINE);
    stream.setStrokingColor(0f);
    for (float x : new float[] {box.getLowerLeftX(), box.getUpperRightX()}) {
      line(stream, x, box.getUpperRightY() + GAP, x, box.getUpperRightY() + GAP + LENGTH);
      line(stream, x, box.getLowerLeftY() - GAP, x, box.getLowerLeftY() - GAP - LENGTH);
    }
    for (float y : new float[] {box.getLowerLeftY(), box.getUpperRightY()}) {
      line(stream, box.getUpperRightX() + GAP, y, box.getUpperRightX() + GAP + LENGTH, y);
      line(stream, box.getLowerLeftX() - GAP, y, box.getLowerLeftX() - GAP - LENGTH, y);
    }
  }

  private static void line(PDPageContentStream stream, float x0, float y0, float x1, float y1)
      throws IOException {
    stream.moveTo(x0, y0);
    stream.lineTo(x1, y1);
    stream.stroke();
  }
}
