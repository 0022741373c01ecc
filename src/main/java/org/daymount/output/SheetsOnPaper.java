package org.daymount.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;
import org.daymount.month.MonthSheet;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/** Several sheets on each page of the paper of a printer at home. */
final class SheetsOnPaper {
  private static final double NAME_TYPE = 6.5;

  private final SheetPrints prints;
  private final PaperSize paper;
  private final Map<MonthSheet, PDImageXObject> images;
  private final PdfFile pdf;

  SheetsOnPaper(
      SheetPrints prints, PaperSize paper, Map<MonthSheet, PDImageXObject> images, PdfFile pdf) {
    this.prints = prints;
    this.paper = paper;
    this.images = images;
    this.pdf = pdf;
  }

  /**
   * @return what each page is called
   */
  List<String> addPages() throws IOException {
    PdfText text = new PdfText(pdf.document());
    List<String> labels = new ArrayList<>();
    for (List<MonthSheet> group : groups()) {
      Optional<PaperGrid> grid = PaperGrid.of(paper, portrait(group.get(0)));
      if (grid.isEmpty()) { // larger than the paper: a page of its own size
        SheetsPdf.addSheetPage(group.get(0), images.get(group.get(0)), pdf);
        labels.add(SheetsPdf.name(group.get(0)));
        continue;
      }
      PDPage page = SheetsPdf.page(paper, pdf);
      labels.add(names(group));
      try (PDPageContentStream stream = new PDPageContentStream(pdf.document(), page)) {
        PdfRuler ruler = new PdfRuler(text, stream, paper);
        for (int i = 0; i < group.size(); i++) {
          PaperBox place = grid.get().place(i);
          put(group.get(i), place, stream);
          CutMarks.draw(place, paper, stream);
          PDRectangle box = PaperGrid.rectangle(place, paper);
          text.draw(
              stream,
              named(group.get(i)),
              PdfText.Weight.PLAIN,
              NAME_TYPE,
              box.getLowerLeftX() + 12,
              box.getUpperRightY() + 4);
        }
        ruler.draw(grid.get().foot(), prints.foot() + " · " + names(group), prints.units());
      }
      page.setTrimBox(
          group.size() == 1 ? PaperGrid.rectangle(grid.get().place(0), paper) : page.getMediaBox());
    }
    return labels;
  }

  /** Sheets that share a page: of one size, in order. */
  private List<List<MonthSheet>> groups() {
    List<List<MonthSheet>> groups = new ArrayList<>();
    for (MonthSheet sheet : prints.sheets()) {
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

  private void put(MonthSheet sheet, PaperBox place, PDPageContentStream stream)
      throws IOException {
    PDImageXObject image = images.get(sheet);
    PDRectangle box = PaperGrid.rectangle(place, paper);
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

  /** The sheet and what is on it: {@code sheet-03: 02a, 02b}. */
  private static String named(MonthSheet sheet) {
    List<String> pieces =
        sheet.sheet().pieces().stream().map(placed -> placed.piece().label()).toList();
    return SheetsPdf.name(sheet) + (pieces.isEmpty() ? "" : ": " + String.join(", ", pieces));
  }

  private static String names(List<MonthSheet> group) {
    String first = SheetsPdf.name(group.get(0));
    String last = SheetsPdf.name(group.get(group.size() - 1));
    return group.size() == 1 ? first : first + " to " + last;
  }
}
