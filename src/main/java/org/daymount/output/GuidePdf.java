package org.daymount.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.daymount.month.Month;
import org.daymount.month.Settings;
import org.daymount.sheet.MatPlan;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;

/**
 * The guide to cutting and assembly as a PDF, on A4 if that was asked for, else on letter: made to
 * be used at the table, with a stack of prints and no screen.
 */
public final class GuidePdf {
  private static final int PAGES_ACROSS = 5;

  /** Of cards, for each inch of the album; the drawings are some four times smaller. */
  private static final Ppi PPI = new Ppi(64);

  private final PagePictures pictures;

  public GuidePdf(PagePictures pictures) {
    this.pictures = pictures;
  }

  /**
   * @return the PDF; the same bytes for the same month
   * @throws IOException when a photo cannot be read any more; the message names it
   */
  public byte[] write(Month month) throws IOException {
    return write(month, Guide.of(month), ": cutting and assembly");
  }

  /**
   * For pages that are made before their pictures.
   *
   * @param papers what they are made of, on its sheets
   */
  public byte[] write(Month month, MatPlan papers) throws IOException {
    return write(month, AheadGuide.of(month, papers), ": pages made ahead");
  }

  private byte[] write(Month month, Guide guide, String what) throws IOException {
    String title = DayWords.month(month.month()) + what;
    try (PdfFile pdf = new PdfFile(month.month(), title)) {
      PaperSize paper =
          SheetsPdf.paper(month.settings().paper())
              .orElseGet(() -> SheetsPdf.paper(Settings.Paper.LETTER).orElseThrow());
      pdf.dependsOn(
          (Recipe.of("guide", month) + guide.words() + paper).getBytes(StandardCharsets.UTF_8));
      try (PdfFlow flow = new PdfFlow(pdf.document(), paper, title)) {
        flow.title(title);
        list(flow, "Have ready", "□", guide.shopping());
        list(flow, "Take care with blades", "!", guide.cautions());
        list(flow, "Still missing", "□", guide.missing());
        list(flow, "Tips of the trade", "·", guide.tips());
        BatchPage.write(flow, guide.batches());
        PdfPage canvas = new PdfPage(pictures, new PdfPictures(pdf.document()), flow.text(), PPI);
        SmallPrint print = new SmallPrint(flow.text());
        sheets(flow, guide, canvas, print);
        pages(flow, month, guide, canvas, print);
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

  private static void sheets(PdfFlow flow, Guide guide, PdfPage canvas, SmallPrint print)
      throws IOException {
    if (guide.sheets().isEmpty() && guide.mats().isEmpty()) {
      return;
    }
    SheetGroups groups = new SheetGroups(flow, canvas, print, "Sheet by sheet");
    groups.add("Cut by cut", guide.sheets(), true);
    groups.add("No cut: the sheet is the piece", guide.sheets(), false);
    groups.add("Card for mats and papers, cut by cut", guide.mats(), true);
    groups.add("Card that needs no cut", guide.mats(), false);
  }

  private static void pages(
      PdfFlow flow, Month month, Guide guide, PdfPage canvas, SmallPrint print) throws IOException {
    if (guide.pages().isEmpty()) {
      return;
    }
    PieceNames names = new PieceNames(month);
    List<PageCell> cells =
        guide.pages().stream()
            .map(steps -> new PageCell(month, steps, names, canvas, print))
            .toList();
    flow.keepTogether(PdfGrid.firstRow(flow, cells, PAGES_ACROSS) + 4 * PdfFlow.LINE);
    flow.section("Mount the pages, leaf by leaf");
    flow.skip(4);
    PdfGrid.flow(flow, cells, PAGES_ACROSS);
  }
}
