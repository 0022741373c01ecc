package org.daymount.output;

import java.util.Optional;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * Where sheets lie on a larger paper: equal cells in rows and columns, with room between them for
 * cut marks and a strip at the foot for the ruler.
 *
 * @param cell a sheet's size, lying as it does on the paper
 */
record PaperGrid(PaperSize paper, PaperSize cell, int columns, int rows) {
  /** Most home printers leave about a quarter inch unprinted (common practice, no source). */
  private static final Length MARGIN = Length.inchFraction(1, 2);

  private static final Length GUTTER = Length.inchFraction(1, 4);
  private static final Length FOOT = Length.inchFraction(5, 8);

  /** The grid that holds most sheets, turned or not; empty when not even one fits. */
  static Optional<PaperGrid> of(PaperSize paper, PaperSize sheet) {
    PaperGrid upright = grid(paper, sheet);
    PaperGrid turned = grid(paper, sheet.turned());
    PaperGrid best = turned.count() > upright.count() ? turned : upright;
    return best.count() > 0 ? Optional.of(best) : Optional.empty();
  }

  private static PaperGrid grid(PaperSize paper, PaperSize cell) {
    Length width = paper.width().minus(MARGIN.times(2));
    Length height = paper.height().minus(MARGIN.times(2)).minus(FOOT);
    return new PaperGrid(paper, cell, fit(width, cell.width()), fit(height, cell.height()));
  }

  private static int fit(Length room, Length size) {
    return (int) (room.plus(GUTTER).nanometres() / size.plus(GUTTER).nanometres());
  }

  int count() {
    return columns * rows;
  }

  /** The place of a sheet, counted along the rows from 0. */
  PaperBox place(int index) {
    Length left = paper.width().minus(span(cell.width(), columns)).half();
    Length x = left.plus(cell.width().plus(GUTTER).times(index % columns));
    Length y = MARGIN.plus(cell.height().plus(GUTTER).times(index / columns));
    return PaperBox.at(x, y, cell);
  }

  private static Length span(Length size, int count) {
    return size.times(count).plus(GUTTER.times(count - 1));
  }

  /** The strip for the ruler and the words. */
  PaperBox foot() {
    return new PaperBox(
        MARGIN,
        paper.height().minus(MARGIN).minus(FOOT),
        paper.width().minus(MARGIN.times(2)),
        FOOT);
  }

  /** From paper's top left to the PDF's bottom left. */
  static PDRectangle rectangle(PaperBox box, PaperSize paper) {
    return new PDRectangle(
        (float) box.x().inPoints(),
        (float) paper.height().minus(box.bottom()).inPoints(),
        (float) box.width().inPoints(),
        (float) box.height().inPoints());
  }
}
