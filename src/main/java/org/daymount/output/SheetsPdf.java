package org.daymount.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.daymount.month.MonthSheet;
import org.daymount.month.Settings;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * All sheets as one PDF at true size: a page for each sheet, or several on the paper of a printer
 * at home with cut marks outside the sheets and a ruler to check the printed scale.
 *
 * <p>Page boxes follow ISO 32000-1:2008, 14.11.2: the trim box is the sheet. On a page with several
 * sheets it is the whole paper, because there is no one box to trim to.
 */
public final class SheetsPdf {
  private SheetsPdf() {}

  /** Where the sheets' files are. */
  @FunctionalInterface
  public interface Jpegs {
    /**
     * @param file as {@link MonthSheet#file}
     * @return null when there is none
     */
    byte[] read(String file) throws IOException;
  }

  /**
   * @param jpegs the sheets' files, each asked for once
   * @return the PDF; the same bytes for the same sheets and files
   * @throws IllegalArgumentException when a sheet's file is missing
   */
  public static byte[] write(SheetPrints prints, Jpegs jpegs) throws IOException {
    try (PdfFile pdf = new PdfFile(prints.dated(), prints.title())) {
      PdfPictures pictures = new PdfPictures(pdf.document());
      Map<MonthSheet, PDImageXObject> images = new LinkedHashMap<>();
      for (MonthSheet sheet : prints.sheets()) {
        byte[] jpeg = jpegs.read(sheet.file());
        if (jpeg == null) {
          throw new IllegalArgumentException(sheet.file() + " has not been painted");
        }
        pdf.dependsOn(jpeg);
        images.put(sheet, pictures.embed(jpeg));
      }
      pdf.dependsOn(
          (prints.paper().name() + prints.margin() + prints.units().word())
              .getBytes(StandardCharsets.US_ASCII));
      label(pdf, addPages(prints, images, pdf));
      return pdf.bytes();
    }
  }

  /**
   * @return what each page is called
   */
  private static List<String> addPages(
      SheetPrints prints, Map<MonthSheet, PDImageXObject> images, PdfFile pdf) throws IOException {
    Optional<PaperSize> paper = paper(prints.paper());
    if (paper.isPresent()) {
      return new SheetsOnPaper(prints, paper.get(), images, pdf).addPages();
    }
    for (Map.Entry<MonthSheet, PDImageXObject> entry : images.entrySet()) {
      addSheetPage(entry.getKey(), entry.getValue(), pdf);
      if (prints.margin().isPositive()) {
        rule(prints, entry.getKey(), pdf);
      }
    }
    return images.keySet().stream().map(SheetsPdf::name).toList();
  }

  static Optional<PaperSize> paper(Settings.Paper paper) {
    return switch (paper) {
      case SHEET -> Optional.empty();
      case LETTER -> Optional.of(PaperSize.LETTER);
      case A4 -> Optional.of(PaperSize.A4);
    };
  }

  /** At the size of the sheet. */
  static void addSheetPage(MonthSheet sheet, PDImageXObject image, PdfFile pdf) throws IOException {
    PDPage page = page(sheet.sheet().size(), pdf);
    page.setTrimBox(page.getMediaBox());
    try (PDPageContentStream stream = new PDPageContentStream(pdf.document(), page)) {
      PDRectangle box = page.getMediaBox();
      stream.drawImage(image, 0, 0, box.getWidth(), box.getHeight());
    }
  }

  /** A ruler on the sheet's own page, where its waste has room for one. */
  private static void rule(SheetPrints prints, MonthSheet sheet, PdfFile pdf) throws IOException {
    Optional<PaperBox> room = PdfRuler.room(sheet.sheet(), prints.margin());
    if (room.isPresent()) {
      PDPage page = pdf.document().getPage(pdf.document().getNumberOfPages() - 1);
      try (PDPageContentStream stream =
          new PDPageContentStream(
              pdf.document(), page, PDPageContentStream.AppendMode.APPEND, true, true)) {
        new PdfRuler(new PdfText(pdf.document()), stream, sheet.sheet().size())
            .draw(room.get(), prints.foot() + " · " + name(sheet), prints.units());
      }
    }
  }

  static PDPage page(PaperSize size, PdfFile pdf) {
    PDPage page =
        new PDPage(
            new PDRectangle((float) size.width().inPoints(), (float) size.height().inPoints()));
    pdf.document().addPage(page);
    return page;
  }

  private static void label(PdfFile pdf, List<String> names) {
    PDPageLabels labels = new PDPageLabels(pdf.document());
    for (int i = 0; i < names.size(); i++) {
      PDPageLabelRange range = new PDPageLabelRange();
      range.setPrefix(names.get(i));
      labels.setLabelItem(i, range);
    }
    pdf.document().getDocumentCatalog().setPageLabels(labels);
  }

  /** {@code sheet-01} for {@code sheets/sheet-01.jpg}. */
  static String name(MonthSheet sheet) {
    String file = sheet.file().substring(sheet.file().lastIndexOf('/') + 1);
    return file.contains(".") ? file.substring(0, file.lastIndexOf('.')) : file;
  }
}
