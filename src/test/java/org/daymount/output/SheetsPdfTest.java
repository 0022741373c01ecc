package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDICCBased;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.daymount.month.Month;
import org.daymount.month.Settings.Paper;
import org.daymount.page.AlbumLayout;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page boxes against ISO 32000-1:2008, 14.11.2, and the unit of 1/72 in (8.3.2.3): a 4 x 6 in
 * sheet is 288 x 432 points.
 */
@Tag("slow")
class SheetsPdfTest {
  private static final Ppi COARSE = Ppi.ppi(100); // the PDF does not depend on it

  @Test
  void eachSheetHasAPageOfItsOwnSizeWithTheTrimBoxOnItsEdges() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(written(Paper.SHEET))) {
      assertEquals(6, pdf.getNumberOfPages());
      for (PDPage page : pdf.getPages()) {
        assertTrue(page.getCOSObject().containsKey(COSName.TRIM_BOX), "said, not left to default");
        assertBox(page.getMediaBox(), page.getTrimBox());
        assertBox(page.getMediaBox(), page.getCropBox());
      }
      assertBox(new PDRectangle(432, 288), pdf.getPage(0).getMediaBox());
      assertBox(new PDRectangle(288, 432), pdf.getPage(1).getMediaBox());
    }
  }

  @Test
  void picturesAreTheJpegFilesByteForByte() throws IOException {
    Month month = TestMonths.month(Paper.SHEET);
    Map<String, byte[]> jpegs = TestMonths.jpegs(month, COARSE);
    try (PDDocument pdf = Loader.loadPDF(SheetsPdf.write(SheetPrints.of(month), jpegs::get))) {
      for (int i = 0; i < month.sheets().size(); i++) {
        byte[] inside =
            images(pdf.getPage(i))
                .get(0)
                .getStream()
                .createInputStream(List.of("DCTDecode"))
                .readAllBytes();
        assertArrayEquals(jpegs.get(month.sheets().get(i).file()), inside);
      }
    }
  }

  @Test
  void allPicturesShareOneProfileAndItIsTheOneInTheFiles() throws IOException {
    Month month = TestMonths.month(Paper.SHEET);
    Map<String, byte[]> jpegs = TestMonths.jpegs(month, COARSE);
    byte[] profile = JpegProfile.of(jpegs.values().iterator().next()).orElseThrow();
    Set<COSBase> streams = new HashSet<>();
    try (PDDocument pdf = Loader.loadPDF(SheetsPdf.write(SheetPrints.of(month), jpegs::get))) {
      for (PDPage page : pdf.getPages()) {
        PDICCBased space = (PDICCBased) images(page).get(0).getColorSpace();
        assertEquals(3, space.getNumberOfComponents());
        streams.add(space.getPDStream().getCOSObject());
        assertArrayEquals(profile, space.getPDStream().toByteArray());
      }
    }
    assertEquals(1, streams.size());
  }

  @Test
  void writingTwiceGivesTheSameBytes() throws IOException {
    for (Paper paper : Paper.values()) {
      assertArrayEquals(written(paper), written(paper), paper.name());
    }
  }

  @Test
  void anotherPictureGivesAnotherDocumentId() throws IOException {
    Month month = TestMonths.month(Paper.SHEET);
    byte[] coarse = SheetsPdf.write(SheetPrints.of(month), TestMonths.jpegs(month, COARSE)::get);
    byte[] finer =
        SheetsPdf.write(SheetPrints.of(month), TestMonths.jpegs(month, Ppi.ppi(101))::get);
    assertFalse(id(coarse).equals(id(finer)));
  }

  @Test
  void pagesCarryTheNamesOfTheirSheets() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(written(Paper.SHEET))) {
      String[] labels = pdf.getDocumentCatalog().getPageLabels().getLabelsByPageIndices();
      assertArrayEquals(
          new String[] {"sheet-01", "sheet-02", "sheet-03", "sheet-04", "sheet-05", "sheet-06"},
          labels);
    }
  }

  @Test
  void letterPaperHoldsTwoSheetsAPageAtTrueSize() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(written(Paper.LETTER))) {
      assertEquals(3, pdf.getNumberOfPages());
      for (PDPage page : pdf.getPages()) {
        assertBox(new PDRectangle(612, 792), page.getMediaBox()); // ANSI/ASME Y14.1, size A
        List<PDRectangle> places = placed(page);
        assertEquals(2, places.size());
        for (PDRectangle place : places) {
          assertEquals(288, Math.min(place.getWidth(), place.getHeight()), 0.01);
          assertEquals(432, Math.max(place.getWidth(), place.getHeight()), 0.01);
          assertInside(place, page.getMediaBox());
        }
        assertFalse(overlap(places.get(0), places.get(1)));
      }
    }
  }

  @Test
  void a4PaperHoldsTwoSheetsAPage() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(written(Paper.A4))) {
      assertEquals(3, pdf.getNumberOfPages());
      // ISO 216: 210 x 297 mm.
      assertBox(
          new PDRectangle((float) (210 / 25.4 * 72), (float) (297 / 25.4 * 72)),
          pdf.getPage(0).getMediaBox());
      assertEquals(2, placed(pdf.getPage(0)).size());
    }
  }

  @Test
  void aLonelySheetOnLetterPaperIsTheTrimBox() throws IOException {
    Month whole = TestMonths.month(Paper.LETTER);
    Month month =
        new Month(
            whole.month(),
            whole.settings(),
            List.of(),
            List.of(),
            List.of(TestMonths.twoSmall()),
            AlbumLayout.NONE,
            List.of());
    try (PDDocument pdf =
        Loader.loadPDF(
            SheetsPdf.write(SheetPrints.of(month), TestMonths.jpegs(month, COARSE)::get))) {
      assertBox(placed(pdf.getPage(0)).get(0), pdf.getPage(0).getTrimBox());
    }
  }

  @Test
  void paperPagesSayPrintAt100PercentAndHoldARuler() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(written(Paper.LETTER))) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setStartPage(1);
      stripper.setEndPage(1);
      String text = stripper.getText(pdf);
      assertTrue(text.contains("Print at 100%"), text);
      assertTrue(text.contains("4 in") && text.contains("10 cm"), text);
      assertTrue(text.contains("sheet-01 to sheet-02"), text);
    }
  }

  @Test
  void theRulersScalesAreFourInchesAndTenCentimetresLong() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(written(Paper.LETTER))) {
      List<float[]> upright = StrokedLines.upright(pdf.getPage(0));
      float left = 36; // the margin of 1/2 in
      assertTrue(upright.stream().anyMatch(l -> Math.abs(l[0] - left) < 0.01));
      assertTrue(upright.stream().anyMatch(l -> Math.abs(l[0] - (left + 4 * 72)) < 0.01));
      assertTrue(upright.stream().anyMatch(l -> Math.abs(l[0] - (left + 100 / 25.4 * 72)) < 0.01));
    }
  }

  @Test
  void cutMarksLieOutsideTheSheets() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(written(Paper.LETTER))) {
      List<PDRectangle> places = placed(pdf.getPage(0));
      int marks = 0;
      for (float[] line : StrokedLines.all(pdf.getPage(0))) {
        for (PDRectangle place : places) {
          boolean inside =
              Math.max(line[0], line[2]) > place.getLowerLeftX() + 0.01
                  && Math.min(line[0], line[2]) < place.getUpperRightX() - 0.01
                  && Math.max(line[1], line[3]) > place.getLowerLeftY() + 0.01
                  && Math.min(line[1], line[3]) < place.getUpperRightY() - 0.01;
          assertFalse(inside, "a line runs over a sheet");
          marks += Math.abs(line[0] - place.getLowerLeftX()) < 0.01 && line[0] == line[2] ? 1 : 0;
        }
      }
      assertTrue(marks >= 4, marks + " marks on the left edges of two sheets");
    }
  }

  @Test
  void aSheetThatWasNotPaintedIsNamed() {
    IllegalArgumentException thrown =
        assertThrows(
            IllegalArgumentException.class,
            () -> SheetsPdf.write(SheetPrints.of(TestMonths.month(Paper.SHEET)), file -> null));
    assertEquals("sheets/sheet-01.jpg has not been painted", thrown.getMessage());
  }

  @Test
  void pdfinfoReadsTheSameBoxes(@TempDir Path folder) throws IOException {
    Path file = Files.write(folder.resolve("sheets.pdf"), written(Paper.SHEET));
    String said =
        run("pdfinfo", "-box", "-f", "1", "-l", "2", file.toString()).replaceAll(" +", " ");
    assertTrue(said.contains("Page 1 MediaBox: 0.00 0.00 432.00 288.00"), said);
    assertTrue(said.contains("Page 1 TrimBox: 0.00 0.00 432.00 288.00"), said);
    assertTrue(said.contains("Page 2 MediaBox: 0.00 0.00 288.00 432.00"), said);
    assertTrue(said.contains("Page 2 TrimBox: 0.00 0.00 288.00 432.00"), said);
  }

  @Test
  void pdfimagesFindsJpegPicturesWithAProfileAtTheSheetsResolution(@TempDir Path folder)
      throws IOException {
    Path file = Files.write(folder.resolve("sheets.pdf"), written(Paper.SHEET));
    String said = run("pdfimages", "-list", file.toString());
    List<String> rows = said.lines().skip(2).toList();
    assertEquals(6, rows.size(), said);
    for (String row : rows) {
      // page num type width height color comp bpc enc interp object ID x-ppi y-ppi size ratio
      String[] cells = row.trim().split("\\s+");
      assertEquals("icc", cells[5], row);
      assertEquals("3", cells[6], row);
      assertEquals("jpeg", cells[8], row);
      assertEquals("100", cells[12], row);
      assertEquals("100", cells[13], row);
    }
  }

  private byte[] written(Paper paper) throws IOException {
    Month month = TestMonths.month(paper);
    return SheetsPdf.write(SheetPrints.of(month), TestMonths.jpegs(month, COARSE)::get);
  }

  private static String id(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getDocument().getDocumentID().toString();
    }
  }

  private static List<PDImageXObject> images(PDPage page) throws IOException {
    List<PDImageXObject> images = new ArrayList<>();
    for (COSName name : page.getResources().getXObjectNames()) {
      if (page.getResources().getXObject(name) instanceof PDImageXObject image) {
        images.add(image);
      }
    }
    return images;
  }

  private static List<PDRectangle> placed(PDPage page) throws IOException {
    return StrokedLines.pictures(page);
  }

  private static boolean overlap(PDRectangle a, PDRectangle b) {
    return a.getLowerLeftX() < b.getUpperRightX()
        && b.getLowerLeftX() < a.getUpperRightX()
        && a.getLowerLeftY() < b.getUpperRightY()
        && b.getLowerLeftY() < a.getUpperRightY();
  }

  private static void assertInside(PDRectangle inner, PDRectangle outer) {
    assertTrue(
        inner.getLowerLeftX() >= 0
            && inner.getLowerLeftY() >= 0
            && inner.getUpperRightX() <= outer.getUpperRightX()
            && inner.getUpperRightY() <= outer.getUpperRightY(),
        inner.toString());
  }

  private static void assertBox(PDRectangle expected, PDRectangle actual) {
    assertEquals(expected.getLowerLeftX(), actual.getLowerLeftX(), 0.01);
    assertEquals(expected.getLowerLeftY(), actual.getLowerLeftY(), 0.01);
    assertEquals(expected.getWidth(), actual.getWidth(), 0.01);
    assertEquals(expected.getHeight(), actual.getHeight(), 0.01);
  }

  /** What the program prints; where it is not installed, the test is shown as skipped. */
  private static String run(String... command) throws IOException {
    Process process;
    try {
      process = new ProcessBuilder(command).redirectErrorStream(true).start();
    } catch (IOException e) {
      assumeTrue(false, command[0] + " is not installed");
      throw e;
    }
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }
}
