package org.daymount.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.daymount.output.Guide.SheetSteps;
import org.daymount.output.SmallPrint.Words;

/** A sheet of the guide: drawn small with its pictures, its pieces and cuts in words below. */
final class SheetCell implements PdfGrid.Cell {
  private static final double GAP = 3;

  private final SheetSteps steps;
  private final PdfPage pictures;
  private final SmallPrint print;

  SheetCell(SheetSteps steps, PdfPage pictures, SmallPrint print) {
    this.steps = steps;
    this.pictures = pictures;
    this.print = print;
  }

  @Override
  public double height(double width) throws IOException {
    return drawing(width).height() + GAP + print.height(words(steps), width);
  }

  @Override
  public void draw(PDPageContentStream stream, double left, double top, double width)
      throws IOException {
    SheetDrawing drawing = drawing(width);
    drawing.draw(stream, left, top);
    print.draw(stream, words(steps), left, top - drawing.height() - GAP, width);
  }

  /** As large as a lying sheet of the width of the cell; all to the same scale. */
  private SheetDrawing drawing(double width) {
    return new SheetDrawing(steps.sheet(), width, pictures, print);
  }

  static List<Words> words(SheetSteps steps) {
    List<Words> words = new ArrayList<>();
    words.add(Words.bold(steps.name()));
    steps.pieces().forEach(piece -> words.add(Words.plain(piece)));
    int number = 1;
    for (String cut : steps.cuts()) {
      words.add(Words.plain(number++ + ". " + cut));
    }
    return words;
  }
}
