package org.daymount.output;

import java.io.IOException;
import java.util.List;
import org.daymount.output.Guide.SheetSteps;
import org.daymount.output.PdfText.Weight;

/** The sheets of the guide, in groups; a heading never stands alone at the foot of a page. */
final class SheetGroups {
  private static final int CUT_ACROSS = 4;
  private static final int WHOLE_ACROSS = 7;

  /** A sheet of so many is set wide, its words in columns. */
  private static final int MANY_CUTS = 6;

  private static final double SECTION = 4 * PdfFlow.LINE;

  private final PdfFlow flow;
  private final PdfPage canvas;
  private final SmallPrint print;
  private String section;

  /**
   * @param section above the first of them
   */
  SheetGroups(PdfFlow flow, PdfPage canvas, SmallPrint print, String section) {
    this.flow = flow;
    this.canvas = canvas;
    this.print = print;
    this.section = section;
  }

  /**
   * @param cut whether the group is of those that are cut, or of those that are not
   */
  void add(String heading, List<SheetSteps> all, boolean cut) throws IOException {
    List<SheetSteps> here = all.stream().filter(steps -> steps.cuts().isEmpty() != cut).toList();
    List<PdfGrid.Cell> many =
        here.stream()
            .filter(steps -> steps.cuts().size() >= MANY_CUTS)
            .<PdfGrid.Cell>map(steps -> new WideSheetCell(steps, canvas, print))
            .toList();
    List<PdfGrid.Cell> few =
        here.stream()
            .filter(steps -> steps.cuts().size() < MANY_CUTS)
            .<PdfGrid.Cell>map(steps -> new SheetCell(steps, canvas, print))
            .toList();
    add(heading, many, 1);
    add(many.isEmpty() ? heading : "", few, cut ? CUT_ACROSS : WHOLE_ACROSS);
  }

  private void add(String heading, List<PdfGrid.Cell> cells, int across) throws IOException {
    if (cells.isEmpty()) {
      return;
    }
    double above = (section.isEmpty() ? 0 : SECTION) + 2 * PdfFlow.LINE;
    flow.keepTogether(PdfGrid.firstRow(flow, cells, across) + above);
    if (!section.isEmpty()) {
      flow.section(section);
      section = "";
    }
    if (!heading.isEmpty()) {
      flow.paragraph(heading, Weight.BOLD);
      flow.skip(5);
    }
    PdfGrid.flow(flow, cells, across);
  }
}
