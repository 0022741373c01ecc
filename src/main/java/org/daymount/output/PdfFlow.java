package org.daymount.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.daymount.output.PdfText.Weight;
import org.daymount.unit.PaperSize;

/**
 * Text flowing from page to page, in one column. Positions are in points; y counts down from the
 * top of the page until it is written.
 */
final class PdfFlow implements AutoCloseable {
  static final double MARGIN = 48;
  static final double BODY = 9;
  static final double LINE = 13;
  private static final double FOOT = 26;

  private final PDDocument document;
  private final PdfText text;
  private final PaperSize paper;
  private final String footer;
  private final PDDocumentOutline outline = new PDDocumentOutline();
  private final List<PDPage> pages = new ArrayList<>();
  private PDPageContentStream stream;
  private double y;

  PdfFlow(PDDocument document, PaperSize paper, String footer) throws IOException {
    this.document = document;
    this.text = new PdfText(document);
    this.paper = paper;
    this.footer = footer;
    document.getDocumentCatalog().setDocumentOutline(outline);
    newPage();
  }

  PdfText text() {
    return text;
  }

  PDPageContentStream stream() {
    return stream;
  }

  double y() {
    return y;
  }

  double width() {
    return paper.width().inPoints() - 2 * MARGIN;
  }

  /** From a distance below the page's top to the PDF's own y. */
  double up(double fromTop) {
    return paper.height().inPoints() - fromTop;
  }

  void skip(double points) {
    y += points;
  }

  /** Starts a new page unless this much is left on the page. */
  void keepTogether(double height) throws IOException {
    if (y + height > paper.height().inPoints() - MARGIN && y > MARGIN) {
      newPage();
    }
  }

  /** Goes to a new page unless this one is empty. */
  void startPage() throws IOException {
    if (y > MARGIN) {
      newPage();
    }
  }

  /** The largest line, once. */
  void title(String words) throws IOException {
    y += 16;
    text.draw(stream, words, Weight.BOLD, 19, MARGIN, up(y));
    y += 12;
  }

  /** A section, which viewers list as a bookmark. */
  void section(String words) throws IOException {
    keepTogether(90);
    y += y > MARGIN ? 26 : 12;
    text.draw(stream, words, Weight.BOLD, 13, MARGIN, up(y));
    PDPageXYZDestination destination = new PDPageXYZDestination();
    destination.setPage(pages.get(pages.size() - 1));
    destination.setTop((int) up(y - 14));
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(words);
    item.setDestination(destination);
    outline.addLast(item);
    y += 7;
    stream.setLineWidth(0.5f);
    stream.moveTo((float) MARGIN, (float) up(y));
    stream.lineTo((float) (MARGIN + width()), (float) up(y));
    stream.stroke();
    y += 6;
  }

  /** One paragraph, broken over pages where it must. */
  void paragraph(String words, Weight weight) throws IOException {
    paragraph("", words, weight, MARGIN, width());
  }

  /** A paragraph with a mark before its first line: a number, a box to tick. */
  void marked(String mark, String words) throws IOException {
    paragraph(mark, words, Weight.PLAIN, MARGIN, width());
  }

  void paragraph(String mark, String words, Weight weight, double left, double width)
      throws IOException {
    double indent = mark.isEmpty() ? 0 : 16;
    boolean isFirst = true;
    for (String line : text.lines(words, weight, BODY, width - indent)) {
      keepTogether(LINE);
      y += LINE;
      if (isFirst && !mark.isEmpty()) {
        text.draw(stream, mark, weight, BODY, left, up(y));
      }
      text.draw(stream, line, weight, BODY, left + indent, up(y));
      isFirst = false;
    }
  }

  void newPage() throws IOException {
    if (stream != null) {
      stream.close();
    }
    PDPage page =
        new PDPage(
            new PDRectangle((float) paper.width().inPoints(), (float) paper.height().inPoints()));
    document.addPage(page);
    pages.add(page);
    stream = new PDPageContentStream(document, page);
    text.draw(stream, footer + " · page " + pages.size(), Weight.PLAIN, 7, MARGIN, FOOT);
    y = MARGIN;
  }

  @Override
  public void close() throws IOException {
    stream.close();
  }
}
