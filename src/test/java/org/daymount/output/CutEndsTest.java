package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import org.daymount.sheet.Cut;
import org.daymount.sheet.Piece;
import org.daymount.sheet.Sheet;
import org.daymount.sheet.SheetPacker;
import org.daymount.sheet.SheetSettings;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Test;

/**
 * On letter with a margin of 1/4 in, a piece of 3x4 and one of 6x4 leave waste at many cut ends.
 */
class CutEndsTest {
  private static final Length MARGIN = Length.inchFraction(1, 4);
  private static final Ppi PPI = new Ppi(300);

  @Test
  void aCutThatEndsInWasteIsMarkedWhereThePrinterReaches() {
    Sheet sheet = sheet();
    Waste waste = new Waste(sheet);
    PaperBox reached = PaperBox.at(MARGIN, MARGIN, sheet.size().inset(MARGIN));
    List<PaperBox> ends = WastePainter.cutEnds(sheet, waste, reached);
    BufferedImage paper = blank(sheet);
    new WastePainter().paint(sheet, MARGIN, PPI, paper);
    assertTrue(ends.size() >= 4, ends.toString());
    for (PaperBox end : ends) {
      assertTrue(reached.contains(end) && waste.isEmpty(end));
      int x = end.x().plus(end.width().half()).toPixels(PPI);
      int y = end.y().plus(end.height().half()).toPixels(PPI);
      assertTrue(isInk(paper, x, y), end.toString());
    }
    int marked = 0;
    for (Cut cut : sheet.cuts()) { // the same, reckoned from the cuts alone: 1/8 in from each end
      for (double along :
          new double[] {inside(cut.from(), cut) + 0.125, inside(cut.to(), cut) - 0.125}) {
        double x = cut.axis() == Cut.Axis.X ? cut.at().inInches() : along;
        double y = cut.axis() == Cut.Axis.X ? along : cut.at().inInches();
        if (isFarFromPieces(sheet, x, y)) {
          assertTrue(isInk(paper, (int) (x * 300), (int) (y * 300)), cut.toString());
          marked++;
        }
      }
    }
    assertTrue(marked >= 2, "cut ends in waste: " + marked);
  }

  private static double inside(Length end, Cut cut) {
    double longest =
        cut.axis() == Cut.Axis.X
            ? sheet().size().height().inInches()
            : sheet().size().width().inInches();
    return Math.max(0.25, Math.min(longest - 0.25, end.inInches()));
  }

  private static boolean isFarFromPieces(Sheet sheet, double x, double y) {
    return sheet.pieces().stream()
        .map(placed -> placed.box())
        .allMatch(
            box ->
                x < box.x().inInches() - 0.25
                    || x > box.right().inInches() + 0.25
                    || y < box.y().inInches() - 0.25
                    || y > box.bottom().inInches() + 0.25);
  }

  @Test
  void aPrintFromALabHasNoneOfThem() {
    Sheet sheet = sheet();
    BufferedImage without = blank(sheet);
    new WastePainter().paint(sheet, Length.ZERO, PPI, without);
    BufferedImage with = blank(sheet);
    new WastePainter().paint(sheet, MARGIN, PPI, with);
    assertTrue(ink(with) > ink(without));
    assertEquals(0, without.getRGB(0, 0) & 0xffffff ^ 0xffffff);
  }

  private static Sheet sheet() {
    return new SheetPacker()
        .pack(
            List.of(
                new Piece("01a", PaperSize.inches(3, 4), 0),
                new Piece("01b", PaperSize.inches(6, 4), 1)),
            new SheetSettings(PaperSize.LETTER, Length.ZERO, MARGIN))
        .sheets()
        .get(0);
  }

  private static BufferedImage blank(Sheet sheet) {
    int width = sheet.size().width().toPixels(PPI);
    int height = sheet.size().height().toPixels(PPI);
    BufferedImage paper = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        paper.setRGB(x, y, 0xffffff);
      }
    }
    return paper;
  }

  private static int ink(BufferedImage paper) {
    int ink = 0;
    for (int y = 0; y < paper.getHeight(); y++) {
      for (int x = 0; x < paper.getWidth(); x++) {
        ink += (paper.getRGB(x, y) & 0xffffff) == 0xffffff ? 0 : 1;
      }
    }
    return ink;
  }

  private static boolean isInk(BufferedImage paper, int x, int y) {
    for (int dx = -1; dx <= 1; dx++) {
      for (int dy = -1; dy <= 1; dy++) {
        if ((paper.getRGB(x + dx, y + dy) & 0xffffff) != 0xffffff) {
          return true;
        }
      }
    }
    return false;
  }
}
