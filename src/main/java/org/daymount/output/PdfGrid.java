package org.daymount.output;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Cells side by side, row below row, over as many pages as they need; a cell is never broken. */
final class PdfGrid {
  private static final double GUTTER = 10;
  private static final double BELOW = 7;

  /** One thing of the grid. Points. */
  interface Cell {
    double height(double width) throws IOException;

    /**
     * @param top from the bottom of the page
     */
    void draw(PDPageContentStream stream, double left, double top, double width) throws IOException;
  }

  private PdfGrid() {}

  /** How tall the first row is, so that a heading can stay with it. */
  static double firstRow(PdfFlow flow, List<? extends Cell> cells, int columns) throws IOException {
    double height = 0;
    for (Cell cell : cells.subList(0, Math.min(columns, cells.size()))) {
      height = Math.max(height, cell.height(width(flow, columns)));
    }
    return height;
  }

  private static double width(PdfFlow flow, int columns) {
    return (flow.width() - GUTTER * (columns - 1)) / columns;
  }

  static void flow(PdfFlow flow, List<? extends Cell> cells, int columns) throws IOException {
    double width = width(flow, columns);
    for (int first = 0; first < cells.size(); first += columns) {
      List<? extends Cell> row = cells.subList(first, Math.min(first + columns, cells.size()));
      double height = 0;
      for (Cell cell : row) {
        height = Math.max(height, cell.height(width));
      }
      flow.keepTogether(height);
      for (int i = 0; i < row.size(); i++) {
        row.get(i)
            .draw(flow.stream(), PdfFlow.MARGIN + i * (width + GUTTER), flow.up(flow.y()), width);
      }
      flow.skip(height + BELOW);
    }
  }
}
