package org.daymount.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.daymount.output.Guide.SheetSteps;
import org.daymount.output.SmallPrint.Words;

/** A sheet of many cuts: drawn at the left, its words beside it in columns. */
final class WideSheetCell implements PdfGrid.Cell {
  private static final int COLUMNS = 4; // the drawing has the first
  private static final double GUTTER = 10;

  private final SheetSteps steps;
  private final PdfPage pictures;
  private final SmallPrint print;

  WideSheetCell(SheetSteps steps, PdfPage pictures, SmallPrint print) {
    this.steps = steps;
    this.pictures = pictures;
    this.print = print;
  }

  @Override
  public double height(double width) throws IOException {
    double tallest = drawing(width).height();
    for (List<Words> column : columns(width)) {
      tallest = Math.max(tallest, print.height(column, column(width)));
    }
    return tallest;
  }

  @Override
  public void draw(PDPageContentStream stream, double left, double top, double width)
      throws IOException {
    drawing(width).draw(stream, left, top);
    double x = left;
    for (List<Words> column : columns(width)) {
      x += column(width) + GUTTER;
      print.draw(stream, column, x, top, column(width));
    }
  }

  private SheetDrawing drawing(double width) {
    return new SheetDrawing(steps.sheet(), column(width), pictures, print);
  }

  private static double column(double width) {
    return (width - GUTTER * (COLUMNS - 1)) / COLUMNS;
  }

  /** The words in their order, each column filled to a share of the whole. */
  private List<List<Words>> columns(double width) throws IOException {
    List<Words> words = SheetCell.words(steps);
    double share = print.height(words, column(width)) / (COLUMNS - 1);
    List<List<Words>> columns = new ArrayList<>();
    List<Words> column = new ArrayList<>();
    for (Words next : words) {
      boolean isFull = print.height(column, column(width)) >= share;
      if (isFull && columns.size() < COLUMNS - 2) {
        columns.add(column);
        column = new ArrayList<>();
      }
      column.add(next);
    }
    columns.add(column);
    return columns;
  }
}
