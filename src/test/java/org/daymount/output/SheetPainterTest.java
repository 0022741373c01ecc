package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.daymount.month.MonthSheet;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.sheet.PlacedPiece;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("slow")
class SheetPainterTest {
  private static final int WHITE = 0xFFFFFFFF;
  private final SheetPainter painter = new SheetPainter(TestMonths::scene);

  /** Pixels of the trade sizes at 300 and 200 ppi: arithmetic; 1200 x 1800 is also published. */
  @Test
  void aFourBySixSheetHas1200By1800PixelsAt300Ppi() throws IOException {
    assertEquals(new PixelSize(1200, 1800), size(paint(TestMonths.onMat())));
    assertEquals(new PixelSize(1800, 1200), size(paint(TestMonths.twoSmall())));
    assertEquals(
        new PixelSize(800, 1200),
        size(painter.paint(TestMonths.onMat(), Length.ZERO, Ppi.ppi(200))));
  }

  @Test
  void twoPiecesThatMeetOnPaperMeetInThePicture() throws IOException {
    BufferedImage sheet = paint(TestMonths.twoSmall());
    BufferedImage left =
        TestMonths.scene(
            TestMonths.photo("a"),
            TestMonths.fill(PaperSize.inches(3, 4)).window(),
            new PixelSize(900, 1200));
    assertSame(left, sheet.getSubimage(0, 0, 900, 1200));
    assertSame(left, sheet.getSubimage(900, 0, 900, 1200));
  }

  @ParameterizedTest
  @ValueSource(doubles = {300, 200, 150, 299, 254})
  void theHalvesOfALargePictureJoinedAreTheWhole(double value) throws IOException {
    Ppi ppi = Ppi.ppi(value);
    PaperSize page = PaperSize.inches(6, 8);
    BufferedImage upper = painter.paint(TestMonths.half(3, "04a", 0), Length.ZERO, ppi);
    BufferedImage lower = painter.paint(TestMonths.half(4, "04b", 1), Length.ZERO, ppi);
    BufferedImage whole =
        TestMonths.scene(TestMonths.photo("a"), TestMonths.fill(page).window(), page.toPixels(ppi));
    assertEquals(whole.getHeight(), upper.getHeight() + lower.getHeight());
    assertSame(whole.getSubimage(0, 0, whole.getWidth(), upper.getHeight()), upper);
    assertSame(whole.getSubimage(0, upper.getHeight(), whole.getWidth(), lower.getHeight()), lower);
  }

  @Test
  void aTurnedPieceLiesAQuarterTurnClockwise() throws IOException {
    BufferedImage sheet = paint(TestMonths.turned());
    BufferedImage upright =
        TestMonths.scene(
            TestMonths.photo("a"),
            TestMonths.fill(PaperSize.inches(3, 4)).window(),
            new PixelSize(900, 1200));
    for (int y = 0; y < 1200; y += 7) {
      for (int x = 0; x < 900; x += 7) {
        // Clockwise: the top row becomes the right column.
        assertEquals(upright.getRGB(x, y), sheet.getRGB(1200 - 1 - y, x), x + "," + y);
      }
    }
  }

  @Test
  void aBorderFitIsCentredWithWhiteAround() throws IOException {
    BufferedImage sheet = paint(TestMonths.bordered());
    PixelBox inside = new PixelBox(300, 150, 1200, 900); // 4 x 3 in centred in 6 x 4 in
    for (int y = 0; y < sheet.getHeight(); y++) {
      for (int x = 0; x < sheet.getWidth(); x++) {
        boolean isInside = inside.contains(new PixelBox(x, y, 1, 1));
        assertEquals(!isInside, sheet.getRGB(x, y) == WHITE, x + "," + y);
      }
    }
  }

  @Test
  void labelsAndCutMarksLieOnTheWasteAndNeverOnAPiece() throws IOException {
    MonthSheet onMat = TestMonths.onMat();
    BufferedImage sheet = paint(onMat);
    BufferedImage piece =
        TestMonths.scene(
            TestMonths.photo("a"),
            TestMonths.fill(PaperSize.inches(3.75, 5.75)).window(),
            new PixelSize(1125, 1725));
    assertSame(piece, sheet.getSubimage(0, 0, 1125, 1725));
    int ink = 0;
    for (int y = 0; y < 1800; y++) {
      for (int x = 0; x < 1200; x++) {
        ink += (x >= 1125 || y >= 1725) && sheet.getRGB(x, y) != WHITE ? 1 : 0;
      }
    }
    assertTrue(ink > 300, "label and marks have " + ink + " pixels");
  }

  @Test
  void cutMarksPointAtTheEdgesOfThePiece() throws IOException {
    BufferedImage sheet = paint(TestMonths.onMat());
    assertTrue(sheet.getRGB(1125, 1745) != WHITE, "the right edge, below the piece");
    assertTrue(sheet.getRGB(1145, 1725) != WHITE, "the lower edge, right of the piece");
  }

  @Test
  void aSheetWithoutWasteHasNoMarks() throws IOException {
    BufferedImage sheet = paint(TestMonths.half(3, "04a", 0));
    for (int x = 0; x < sheet.getWidth(); x++) {
      assertTrue(sheet.getRGB(x, 0) != WHITE && sheet.getRGB(x, sheet.getHeight() - 1) != WHITE);
    }
  }

  @Test
  void piecesOfOddSizesLeaveNoWhitePixelBetweenThem() throws IOException {
    double third = 4 / 3.0;
    PaperSize size = new PaperSize(Length.inches(third), Length.inches(6));
    PlacedPiece[] pieces = new PlacedPiece[3];
    java.util.HashMap<String, org.daymount.sheet.PieceContent> content = new java.util.HashMap<>();
    for (int i = 0; i < 3; i++) {
      String label = "0" + i;
      pieces[i] =
          new PlacedPiece(
              new org.daymount.sheet.Piece(label, size, i),
              PaperBox.at(size.width().times(i), Length.ZERO, size),
              false);
      content.put(label, TestMonths.picture(TestMonths.june(1), i, "a", TestMonths.fill(size)));
    }
    MonthSheet sheet =
        TestMonths.sheet(
            1, TestMonths.FOUR_BY_SIX, List.of(pieces), List.of(), Map.copyOf(content));
    BufferedImage image = painter.paint(sheet, Length.ZERO, Ppi.ppi(187));
    for (int x = 0; x < image.getWidth(); x++) {
      assertTrue(image.getRGB(x, 600) != WHITE, "white at " + x);
    }
  }

  @Test
  void aStoryCardIsPaintedInkOnWhite() throws IOException {
    BufferedImage sheet = paint(TestMonths.turned());
    int ink = 0;
    for (int y = 900; y < 1800; y++) {
      for (int x = 0; x < 1200; x++) {
        ink += (sheet.getRGB(x, y) & 0xFF) < 100 ? 1 : 0;
      }
    }
    assertTrue(ink > 5000 && ink < 200_000, ink + " dark pixels");
  }

  @Test
  void aPhotoThatCannotBeReadAnyMoreIsNamed() {
    SheetPainter broken =
        new SheetPainter(
            (photo, window, target) -> {
              throw new UnusablePicture(Problem.Kind.CUT_OFF, "is cut off; copy it again");
            });
    IOException thrown =
        assertThrows(
            IOException.class,
            () -> broken.paint(TestMonths.onMat(), Length.ZERO, TestMonths.PRINT));
    assertEquals("IMG_0301.jpg: is cut off; copy it again", thrown.getMessage());
  }

  @Test
  void paintingTwiceGivesTheSamePixels() throws IOException {
    assertSame(paint(TestMonths.turned()), paint(TestMonths.turned()));
  }

  private BufferedImage paint(MonthSheet sheet) throws IOException {
    return painter.paint(sheet, Length.ZERO, TestMonths.PRINT);
  }

  private static PixelSize size(BufferedImage image) {
    return new PixelSize(image.getWidth(), image.getHeight());
  }

  private static void assertSame(BufferedImage expected, BufferedImage actual) {
    assertEquals(size(expected), size(actual));
    for (int y = 0; y < expected.getHeight(); y++) {
      for (int x = 0; x < expected.getWidth(); x++) {
        if (expected.getRGB(x, y) != actual.getRGB(x, y)) {
          assertEquals(
              Integer.toHexString(expected.getRGB(x, y)),
              Integer.toHexString(actual.getRGB(x, y)),
              "first difference at " + x + "," + y);
        }
      }
    }
  }
}
