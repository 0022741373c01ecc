package org.daymount.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.daymount.month.Month;
import org.daymount.month.Settings;
import org.daymount.output.Guide.PageSteps;
import org.daymount.output.Guide.SheetSteps;
import org.daymount.output.PdfText.Weight;
import org.daymount.unit.PaperSize;

/** The guide to cutting and assembly as a PDF, on A4 if that was asked for, else on letter. */
public final class GuidePdf {
  /** Drawings are at most this wide and tall; points. */
  private static final double DRAWING = 104;

  private static final double GAP = 14;

  /**
   * @return the PDF; the same bytes for the same month
   */
  public byte[] write(Month month) throws IOException {
    Guide guide = Guide.of(month);
    String title = DayWords.month(month.month()) + ": cutting and assembly";
    try (PdfFile pdf = new PdfFile(month, title)) {
      PaperSize paper =
          SheetsPdf.paper(month.settings().paper())
              .orElseGet(() -> SheetsPdf.paper(Settings.Paper.LETTER).orElseThrow());
      BatchSteps batches = BatchSteps.of(month.sheets());
      pdf.dependsOn((guide.words() + batches.lines() + paper).getBytes(StandardCharsets.UTF_8));
      try (PdfFlow flow = new PdfFlow(pdf.document(), paper, title)) {
        flow.title(title);
        list(flow, "Have ready", "□", guide.shopping());
        list(flow, "Take care with blades", "!", guide.cautions());
        list(flow, "Still missing", "□", guide.missing());
        BatchPage.write(flow, batches);
        sheets(flow, guide.sheets());
        pages(flow, guide.pages());
        list(flow, "Tips of the trade", "·", guide.tips());
      }
      return pdf.bytes();
    }
  }

  private static void list(PdfFlow flow, String heading, String mark, List<String> lines)
      throws IOException {
    if (lines.isEmpty()) {
      return;
    }
    flow.section(heading);
    for (String line : lines) {
      flow.marked(mark, line);
    }
  }

  private static void sheets(PdfFlow flow, List<SheetSteps> sheets) throws IOException {
    if (sheets.isEmpty()) {
      return;
    }
    flow.section("Cut the sheets");
    for (SheetSteps steps : sheets) {
      sheet(flow, steps);
    }
  }

  private static void sheet(PdfFlow flow, SheetSteps steps) throws IOException {
    double longest =
        steps.sheet().sheet().size().width().max(steps.sheet().sheet().size().height()).inPoints();
    SheetDrawing drawing = new SheetDrawing(steps.sheet().sheet(), DRAWING / longest);
    double left = PdfFlow.MARGIN + DRAWING + SheetDrawing.RIM + GAP;
    double width = flow.width() - DRAWING - SheetDrawing.RIM - GAP;
    double height = Math.max(drawing.height(), textHeight(flow, steps, width));
    flow.keepTogether(height + GAP);
    double top = flow.y() + GAP / 2;
    drawing.draw(flow.stream(), flow.text(), PdfFlow.MARGIN, flow.up(top));
    flow.paragraph("", heading(steps), Weight.BOLD, left, width);
    for (String piece : steps.pieces()) {
      flow.paragraph("", piece, Weight.PLAIN, left, width);
    }
    int number = 1;
    for (String cut : cuts(steps)) {
      String mark = steps.cuts().isEmpty() ? "" : number++ + ".";
      flow.paragraph(mark, cut, Weight.PLAIN, left, width);
    }
    flow.skip(Math.max(0, top + height - flow.y()) + GAP / 2);
  }

  private static double textHeight(PdfFlow flow, SheetSteps steps, double width)
      throws IOException {
    double height = flow.height("", heading(steps), Weight.BOLD, width);
    for (String piece : steps.pieces()) {
      height += flow.height("", piece, Weight.PLAIN, width);
    }
    for (String cut : cuts(steps)) {
      height += flow.height(steps.cuts().isEmpty() ? "" : "0.", cut, Weight.PLAIN, width);
    }
    return height;
  }

  private static String heading(SheetSteps steps) {
    return steps.name() + " · " + Measure.of(steps.sheet().sheet().size());
  }

  private static List<String> cuts(SheetSteps steps) {
    return steps.cuts().isEmpty() ? List.of("No cut: the sheet is the piece.") : steps.cuts();
  }

  private static void pages(PdfFlow flow, List<PageSteps> pages) throws IOException {
    if (pages.isEmpty()) {
      return;
    }
    flow.section("Mount the pages");
    for (PageSteps page : pages) {
      double height = PdfFlow.LINE;
      for (String step : page.steps()) {
        height += flow.height("□", step, Weight.PLAIN, flow.width());
      }
      flow.keepTogether(height);
      flow.skip(3);
      flow.paragraph(page.heading(), Weight.BOLD);
      for (String step : page.steps()) {
        flow.marked("□", step);
      }
    }
  }
}
