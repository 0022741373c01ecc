package org.daymount.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.daymount.month.Month;
import org.daymount.output.PdfText.Weight;
import org.daymount.page.AlbumPage;
import org.daymount.page.Leaf;
import org.daymount.unit.PaperSize;

/**
 * pages.pdf: the album as it will look, facing pages side by side at true size. On the left lies
 * the back of a leaf, on the right the front of the next.
 */
public final class PagesPdf {
  private static final double MARGIN = 36; // points
  private static final double FOLD = 9; // between facing pages; points
  private static final double EDGE_TYPE = 9;

  private final PagePictures pictures;

  public PagesPdf(PagePictures pictures) {
    this.pictures = pictures;
  }

  /**
   * @return the PDF; the same bytes for the same month
   * @throws IOException when a photo cannot be read any more; the message names it
   */
  public byte[] write(Month month) throws IOException {
    String title = DayWords.month(month.month()) + ": the pages";
    try (PdfFile pdf = new PdfFile(month.month(), title)) {
      pdf.dependsOn(Recipe.of("pages", month).getBytes(StandardCharsets.UTF_8));
      PdfText text = new PdfText(pdf.document());
      PdfPage canvas =
          new PdfPage(pictures, new PdfPictures(pdf.document()), text, PagePictures.PPI);
      List<Leaf> leaves = month.album().leaves();
      for (int spread = 0; spread <= leaves.size(); spread++) {
        Optional<Leaf> left = spread > 0 ? Optional.of(leaves.get(spread - 1)) : Optional.empty();
        Optional<Leaf> right =
            spread < leaves.size() ? Optional.of(leaves.get(spread)) : Optional.empty();
        boolean anyDay =
            left.flatMap(Leaf::back).isPresent() || right.flatMap(Leaf::front).isPresent();
        if (anyDay || spread < leaves.size()) {
          spread(month, left, right, canvas, text, pdf);
        }
      }
      return pdf.bytes();
    }
  }

  private static void spread(
      Month month,
      Optional<Leaf> left,
      Optional<Leaf> right,
      PdfPage canvas,
      PdfText text,
      PdfFile pdf)
      throws IOException {
    PaperSize size = month.album().settings().page();
    double width = size.width().inPoints();
    double height = size.height().inPoints();
    PDRectangle paper =
        new PDRectangle((float) (2 * width + FOLD + 2 * MARGIN), (float) (height + 2 * MARGIN));
    PDPage page = new PDPage(paper);
    pdf.document().addPage(page);
    try (PDPageContentStream stream = new PDPageContentStream(pdf.document(), page)) {
      double top = MARGIN + height;
      if (left.isPresent()) {
        side(month, left.get(), Leaf.Side.BACK, canvas.on(stream, MARGIN, top, 1));
        edge(month, left.get(), Leaf.Side.BACK, MARGIN, text, stream, height);
      }
      if (right.isPresent()) {
        double x = MARGIN + width + FOLD;
        side(month, right.get(), Leaf.Side.FRONT, canvas.on(stream, x, top, 1));
        edge(month, right.get(), Leaf.Side.FRONT, x, text, stream, height);
      }
    }
  }

  private static void side(Month month, Leaf leaf, Leaf.Side side, PdfPage canvas)
      throws IOException {
    Optional<LocalDate> day = side == Leaf.Side.FRONT ? leaf.front() : leaf.back();
    Optional<AlbumPage> page = day.flatMap(month.album()::page);
    if (page.isPresent()) {
      PageDrawing.of(month, page.get()).draw(canvas);
    } else {
      canvas.rectangle(
          org.daymount.unit.PaperBox.at(
              org.daymount.unit.Length.ZERO,
              org.daymount.unit.Length.ZERO,
              month.album().settings().page()),
          PageCanvas.Look.FREE);
    }
  }

  private static void edge(
      Month month,
      Leaf leaf,
      Leaf.Side side,
      double x,
      PdfText text,
      PDPageContentStream stream,
      double height)
      throws IOException {
    Optional<LocalDate> day = side == Leaf.Side.FRONT ? leaf.front() : leaf.back();
    Optional<String> base = day.flatMap(month.album()::page).flatMap(AlbumPage::base);
    String date =
        day.map(d -> DayWords.weekday(d) + ", " + DayWords.shortDay(d)).orElse("nothing here");
    text.draw(stream, date, Weight.BOLD, EDGE_TYPE, x, MARGIN + height + 8);
    text.draw(
        stream,
        "Leaf "
            + leaf.number()
            + ", "
            + side.word()
            + ": "
            + base.orElse(month.units().kind(leaf.kind())),
        Weight.PLAIN,
        EDGE_TYPE,
        x,
        MARGIN - 8 - EDGE_TYPE);
  }
}
