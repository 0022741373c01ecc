package org.daymount.output;

import java.io.IOException;
import java.time.YearMonth;
import java.util.ArrayList;
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
import org.apache.pdfbox.util.Matrix;
import org.daymount.month.Month;
import org.daymount.month.MonthSheet;
import org.daymount.month.Settings;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Units;

/**
 * All sheets as one PDF at true size: a page for each sheet, or several on the paper of a printer
 * at home with cut marks outside the sheets and a ruler to check the printed scale.
 *
 * <p>Page boxes follow ISO 32000-1:2008, 14.11.2: the trim box is the sheet. On a page with several
 * sheets it is the whole paper, because there is no one box to trim to.
 */
public final class SheetsPdf {
  private static final double NAME_TYPE = 6.5;

  private final String title;
  private final String foot;

  /** The sheets of a month. */
  public SheetsPdf(YearMonth month) {
    this(DayWords.month(month) + ": sheets to print", DayWords.month(month));
  }

  /**
   * @param title of the document
   * @param foot beside the ruler
   */
  SheetsPdf(String title, String foot) {
    this.title = title;
    this.foot = foot;
  }

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
   * @return the PDF; the same bytes for the same month and files
   * @throws IllegalArgumentException when a sheet's file is missing
   */
  public byte[] write(Month month, Jpegs jpegs) throws IOException {
    try (PdfFile pdf = new PdfFile(month, title)) {
      PdfPictures pictures = new PdfPictures(pdf.document());
      Map<MonthSheet, PDImageXObject> images = new LinkedHashMap<>();
      for (MonthSheet sheet : month.sheets()) {
        byte[] jpeg = jpegs.read(sheet.file());
        if (jpeg == null) {
          throw new IllegalArgumentException(sheet.file() + " has not been painted");
        }
        pdf.dependsOn(jpeg);
        images.put(sheet, pictures.embed(jpeg));
      }
      pdf.dependsOn(
          (month.settings().paper().name() + month.settings().margin())
              .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
      if (month.units() != Units.INCHES) {
        pdf.dependsOn(month.units().word().getBytes(java.nio.charset.StandardCharsets.US_ASCII));
      }
      addPages(month, images, pdf);
      return pdf.bytes();
    }
  }

  private void addPages(Month month, Map<MonthSheet, PDImageXObject> images, PdfFile pdf)
      throws IOException {
    Optional<PaperSize> paper = paper(month.settings().paper());
    if (paper.isEmpty()) {
      for (Map.Entry<MonthSheet, PDImageXObject> entry : images.entrySet()) {
        addSheetPage(entry.getKey(), entry.getValue(), pdf);
        if (month.settings().margin().isPositive()) {
          rule(month, entry.getKey(), pdf);
        }
      }
      label(pdf, images.keySet().stream().map(SheetsPdf::name).toList());
    } else {
      addPaperPages(month, paper.get(), images, pdf);
    }
  }

  static Optional<PaperSize> paper(Settings.Paper paper) {
    return switch (paper) {
      case SHEET -> Optional.empty();
      case LETTER -> Optional.of(PaperSize.LETTER);
      case A4 -> Optional.of(PaperSize.A4);
    };
  }

  private static void addSheetPage(MonthSheet sheet, PDImageXObject image, PdfFile pdf)
      throws IOException {
    PDPage page = page(sheet.sheet().size(), pdf);
    page.setTrimBox(page.getMediaBox());
    try (PDPageContentStream stream = new PDPageContentStream(pdf.document(), page)) {
      PDRectangle box = page.getMediaBox();
      stream.drawImage(image, 0, 0, box.getWidth(), box.getHeight());
    }
  }

  /** A ruler on the sheet's own page, where its waste has room for one. */
  private void rule(Month month, MonthSheet sheet, PdfFile pdf) throws IOException {
    Optional<PaperBox> room = PdfRuler.room(sheet.sheet(), month.settings().margin());
    if (room.isPresent()) {
      PDPage page = pdf.document().getPage(pdf.document().getNumberOfPages() - 1);
      try (PDPageContentStream stream =
          new PDPageContentStream(
              pdf.document(), page, PDPageContentStream.AppendMode.APPEND, true, true)) {
        new PdfRuler(new PdfText(pdf.document()), stream, sheet.sheet().size())
            .draw(room.get(), foot + " · " + name(sheet), month.units());
      }
    }
  }

  private void addPaperPages(
      Month month, PaperSize paper, Map<MonthSheet, PDImageXObject> images, PdfFile pdf)
      throws IOException {
    PdfText text = new PdfText(pdf.document());
    List<String> labels = new ArrayList<>();
    for (List<MonthSheet> group : groups(List.copyOf(images.keySet()), paper)) {
      Optional<PaperGrid> grid = PaperGrid.of(paper, portrait(group.get(0)));
      if (grid.isEmpty()) { // larger than the paper: a page of its own size
        addSheetPage(group.get(0), images.get(group.get(0)), pdf);
        labels.add(name(group.get(0)));
        continue;
      }
      PDPage page = page(paper, pdf);
      labels.add(names(group));
      try (PDPageContentStream stream = new PDPageContentStream(pdf.document(), page)) {
        PdfRuler ruler = new PdfRuler(text, stream, paper);
        for (int i = 0; i < group.size(); i++) {
          PaperBox place = grid.get().place(i);
          put(group.get(i), images.get(group.get(i)), place, paper, stream);
          CutMarks.draw(place, paper, stream);
          PDRectangle box = rectangle(place, paper);
          text.draw(
              stream,
              named(group.get(i)),
              PdfText.Weight.PLAIN,
              NAME_TYPE,
              box.getLowerLeftX() + 12,
              box.getUpperRightY() + 4);
        }
        ruler.draw(grid.get().foot(), foot + " · " + names(group), month.units());
      }
      page.setTrimBox(
          group.size() == 1 ? rectangle(grid.get().place(0), paper) : page.getMediaBox());
    }
    label(pdf, labels);
  }

  /** Sheets that share a page: of one size, in order. */
  private static List<List<MonthSheet>> groups(List<MonthSheet> sheets, PaperSize paper) {
    List<List<MonthSheet>> groups = new ArrayList<>();
    for (MonthSheet sheet : sheets) {
      int most = PaperGrid.of(paper, portrait(sheet)).map(PaperGrid::count).orElse(1);
      List<MonthSheet> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
      if (!last.isEmpty() && last.size() < most && portrait(last.get(0)).equals(portrait(sheet))) {
        last.add(sheet);
      } else {
        groups.add(new ArrayList<>(List.of(sheet)));
      }
    }
    return groups;
  }

  private static PaperSize portrait(MonthSheet sheet) {
    return sheet.sheet().size().towards(Orientation.PORTRAIT);
  }

  private static void put(
      MonthSheet sheet,
      PDImageXObject image,
      PaperBox place,
      PaperSize paper,
      PDPageContentStream stream)
      throws IOException {
    PDRectangle box = rectangle(place, paper);
    if (place.size().equals(sheet.sheet().size())) {
      stream.drawImage(
          image, box.getLowerLeftX(), box.getLowerLeftY(), box.getWidth(), box.getHeight());
    } else { // a quarter turn clockwise
      stream.drawImage(
          image,
          new Matrix(
              0, -box.getHeight(), box.getWidth(), 0, box.getLowerLeftX(), box.getUpperRightY()));
    }
  }

  private static PDPage page(PaperSize size, PdfFile pdf) {
    PDPage page =
        new PDPage(
            new PDRectangle((float) size.width().inPoints(), (float) size.height().inPoints()));
    pdf.document().addPage(page);
    return page;
  }

  /** From paper's top left to the PDF's bottom left. */
  static PDRectangle rectangle(PaperBox box, PaperSize paper) {
    return new PDRectangle(
        (float) box.x().inPoints(),
        (float) paper.height().minus(box.bottom()).inPoints(),
        (float) box.width().inPoints(),
        (float) box.height().inPoints());
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

  /** The sheet and what is on it: {@code sheet-03: 02a, 02b}. */
  private static String named(MonthSheet sheet) {
    List<String> pieces =
        sheet.sheet().pieces().stream().map(placed -> placed.piece().label()).toList();
    return name(sheet) + (pieces.isEmpty() ? "" : ": " + String.join(", ", pieces));
  }

  private static String names(List<MonthSheet> group) {
    String first = name(group.get(0));
    String last = name(group.get(group.size() - 1));
    return group.size() == 1 ? first : first + " to " + last;
  }

  /** {@code sheet-01} for {@code sheets/sheet-01.jpg}. */
  static String name(MonthSheet sheet) {
    String file = sheet.file().substring(sheet.file().lastIndexOf('/') + 1);
    return file.contains(".") ? file.substring(0, file.lastIndexOf('.')) : file;
  }
}
