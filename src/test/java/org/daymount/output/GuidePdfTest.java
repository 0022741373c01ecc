package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.daymount.month.Month;
import org.daymount.month.Settings.Paper;
import org.daymount.page.Place;
import org.junit.jupiter.api.Test;

class GuidePdfTest {
  private final GuidePdf writer = new GuidePdf(new PagePictures(TestMonths::scene));

  @Test
  void everySentenceOfTheGuideCanBeReadInThePdf() throws IOException {
    Guide guide = Guide.of(TestMonths.month(Paper.SHEET));
    List<String> sentences = new ArrayList<>(guide.shopping());
    sentences.addAll(guide.cautions());
    sentences.addAll(guide.tips());
    sentences.addAll(guide.missing());
    guide.sheets().forEach(s -> sentences.addAll(s.pieces()));
    guide.sheets().forEach(s -> sentences.addAll(s.cuts()));
    guide.pages().forEach(p -> sentences.addAll(p.steps()));
    String text = text(Paper.SHEET).replaceAll("\\s+", " ");
    for (String sentence : sentences) {
      assertTrue(text.contains(sentence), sentence + "\nis not in\n" + text);
    }
  }

  /** What is drawn on the pages is what the person looks for at the table, without a screen. */
  @Test
  void everyPictureIsDrawnOnItsSheetAndOnItsPage() throws IOException {
    Month month = TestMonths.month(Paper.SHEET);
    long shown =
        month.sheets().stream()
            .flatMap(sheet -> sheet.content().values().stream())
            .filter(content -> content.picture().isPresent())
            .count();
    long mounted =
        month.album().pages().stream()
            .flatMap(page -> page.places().stream())
            .filter(place -> place.what() == Place.What.PHOTO)
            .filter(place -> hasHero(month, place))
            .count();
    assertTrue(shown > 0 && mounted > 0);
    long cardsAndNotes =
        month.album().pages().stream()
                .flatMap(page -> page.places().stream())
                .filter(place -> place.what() == Place.What.STORY)
                .count()
            + month.sheets().stream()
                .flatMap(sheet -> sheet.content().values().stream())
                .filter(content -> content.card().isPresent())
                .count();
    assertEquals(shown + mounted + cardsAndNotes, drawnPictures(month));
  }

  private static boolean hasHero(Month month, Place place) {
    // of the month of the tests only the second space of the 5th is still without a picture
    return !(place.index().orElseThrow() == 1 && place.box().width().inInches() == 6);
  }

  /** The Do operators of the pages: ISO 32000-1:2008, 8.8. */
  private long drawnPictures(Month month) throws IOException {
    long drawn = 0;
    try (PDDocument pdf = Loader.loadPDF(writer.write(month))) {
      for (PDPage page : pdf.getPages()) {
        drawn +=
            new PDFStreamParser(page)
                .parse().stream()
                    .filter(token -> token instanceof Operator o && o.getName().equals("Do"))
                    .count();
      }
    }
    return drawn;
  }

  @Test
  void theTypefaceIsEmbeddedAsASubset() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(writer.write(TestMonths.month(Paper.SHEET)))) {
      for (PDPage page : pdf.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
          // Six capitals and a plus before the name: ISO 32000-1:2008, 9.6.4.
          assertTrue(font.getName().matches("[A-Z]{6}\\+DejaVuSans.*"), font.getName());
        }
      }
    }
  }

  @Test
  void titleLanguageAndBookmarksAreThereForReadersThatSpeak() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(writer.write(TestMonths.month(Paper.SHEET)))) {
      assertEquals("June 2026: cutting and assembly", pdf.getDocumentInformation().getTitle());
      assertEquals("en", pdf.getDocumentCatalog().getLanguage());
      assertTrue(pdf.getDocumentCatalog().getViewerPreferences().displayDocTitle());
      List<String> bookmarks = new ArrayList<>();
      for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
        bookmarks.add(item.getTitle());
      }
      assertEquals(
          List.of(
              "Have ready",
              "Take care with blades",
              "Still missing",
              "Tips of the trade",
              "Cut in batches",
              "Sheet by sheet",
              "Mount the pages, leaf by leaf"),
          bookmarks);
    }
  }

  @Test
  void thePageIsA4WhenA4WasAskedForAndLetterOtherwise() throws IOException {
    assertEquals(792, height(Paper.LETTER), 0.01); // 11 in
    assertEquals(792, height(Paper.SHEET), 0.01);
    assertEquals(297 / 25.4 * 72, height(Paper.A4), 0.01); // ISO 216
  }

  @Test
  void writingTwiceGivesTheSameBytes() throws IOException {
    assertArrayEquals(
        writer.write(TestMonths.month(Paper.A4)),
        new GuidePdf(new PagePictures(TestMonths::scene)).write(TestMonths.month(Paper.A4)));
  }

  private double height(Paper paper) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(writer.write(TestMonths.month(paper)))) {
      return pdf.getPage(0).getMediaBox().getHeight();
    }
  }

  private String text(Paper paper) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(writer.write(TestMonths.month(paper)))) {
      PDFTextStripper stripper = new PDFTextStripper();
      return stripper.getText(pdf);
    }
  }
}
