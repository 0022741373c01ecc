package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.daymount.month.Settings.Paper;
import org.junit.jupiter.api.Test;

class GuidePdfTest {
  private final GuidePdf writer = new GuidePdf();

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
              "Cut in batches",
              "Cut the sheets",
              "Mount the pages",
              "Tips of the trade"),
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
        writer.write(TestMonths.month(Paper.A4)), new GuidePdf().write(TestMonths.month(Paper.A4)));
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
