package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.daymount.cli.Shell.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class PagesCommandTest {
  private static final String ALBUM =
      String.join(
          "\n",
          "base quay",
          "  4x6 portrait on mat at 1, 1/2",
          "  story 4x1 at 1, 6 3/4",
          "  paper 6x8",
          "base pier",
          "  4x6 landscape on mat at 0, 1",
          "  strip 1/2x6",
          "  days 2",
          "");

  @TempDir Path home;

  @BeforeEach
  void albumIsThere() throws IOException {
    Files.writeString(home.resolve("album.txt"), ALBUM);
  }

  @Test
  void theEmptyNoteGivesEveryDayItsReadyMadePage() {
    Result note = run("note", "--album", "album.txt", "--month", "2026-12");
    assertEquals(0, note.code(), note.err());
    assertTrue(note.out().startsWith("December 2026\n"), note.out());
    assertTrue(note.out().contains("\nTue 1 quay\n"), note.out());
    assertTrue(note.out().contains("\nWed 2 pier\n"), note.out());
    assertTrue(note.out().contains("\nThu 31 quay\n"), note.out());
  }

  /**
   * Arithmetic: 30 papers of 6x8 and 31 mats of 4x6 are 1440 + 744 square inches, and a strip of 3:
   * more than 15 sheets of 144. Two 6x8 and two of the mats fill a sheet.
   */
  @Test
  void papersAndMatsOfTheMonthAreCutFromTheFewestSheetsOfCard() throws IOException {
    Result made = run("pages", "--month", "2026-12", "--out", "made");
    assertEquals(0, made.code(), made.err());
    assertTrue(made.out().contains("31 pages"), made.out());
    assertTrue(made.out().contains("16 sheets of 12x12 in"), made.out());
    String papers = text("papers.pdf");
    assertTrue(papers.contains("the fewest that straight cuts allow (proven)"), papers);
    assertTrue(papers.contains("Cut in batches") && papers.contains("mat 31"), papers);
    assertTrue(text("pages.pdf").contains("Leaf 1, front: quay"));
  }

  @Test
  void whatIsTooLargeForTheCardIsToldOnceForEachSize() throws IOException {
    Result made = run("pages", "--month", "2026-12", "--card-sheet", "5x7", "--out", "made");
    assertEquals(0, made.code(), made.err());
    assertTrue(made.err().contains("30 × 6x8 in: too large for card of 5x7 in"), made.err());
    assertEquals(1, made.err().split("too large", -1).length - 1, made.err());
    String papers = text("papers.pdf");
    assertTrue(papers.contains("Larger than the card, so bought apart: 30 of 6x8 in"), papers);
    assertEquals(1, papers.split("Larger than the card", -1).length - 1);
  }

  /** A sheet of many cuts is set in columns: all its words stand on the page, none is cut off. */
  @Test
  void aSheetOfManyStripsIsToldWholeAndOnThePage() throws IOException {
    Files.writeString(home.resolve("album.txt"), "base quay\n  4x6 at 1, 1\n  strip 1/8x6\n");
    Result made = run("pages", "--month", "2026-12", "--out", "made");
    assertEquals(0, made.code(), made.err());
    String papers = text("papers.pdf").replaceAll("\\s+", " ");
    for (int strip = 1; strip <= 31; strip++) {
      assertTrue(papers.matches(".*\\bstrip " + strip + "\\b.*"), "strip " + strip);
    }
    try (PDDocument pdf = Loader.loadPDF(home.resolve("made/papers.pdf").toFile())) {
      PDFTextStripper feet =
          new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> letters) {
              boolean isFooter = text.contains("· page");
              float foot = letters.get(0).getPageHeight() - letters.get(0).getYDirAdj();
              assertTrue(isFooter || foot > 36, text + " stands at " + foot + " pt");
            }
          };
      feet.getText(pdf);
    }
  }

  @Test
  void theSameAlbumGivesTheSameBytes() throws IOException {
    run("pages", "--month", "2026-12", "--out", "made");
    Result again = run("pages", "--month", "2026-12", "--out", "made");
    assertTrue(again.out().contains("up to date"), again.out() + again.err());
  }

  @Test
  void aNoteSaysWhichDayHasWhichPage() throws IOException {
    Files.writeString(home.resolve("mine.txt"), "December 2026\n3 quay\n4 two 4x6\nstop\n");
    Result made = run("pages", "--note", "mine.txt", "--out", "made");
    assertEquals(0, made.code(), made.err());
    assertTrue(text("pages.pdf").contains(": quay"), text("pages.pdf"));
  }

  @Test
  void withoutAnyReadyMadePageTheNextStepIsNamed() throws IOException {
    Files.delete(home.resolve("album.txt"));
    Result made = run("pages", "--month", "2026-12");
    assertEquals(2, made.code());
    assertTrue(made.err().contains("album.txt"), made.err());
  }

  private Result run(String... line) {
    return new Shell(home).run(line);
  }

  private String text(String name) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(home.resolve("made").resolve(name).toFile())) {
      return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }
  }
}
