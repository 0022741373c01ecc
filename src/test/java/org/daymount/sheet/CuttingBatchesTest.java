package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.daymount.sheet.CuttingBatches.Batch;
import org.daymount.sheet.CuttingBatches.Step;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

class CuttingBatchesTest {
  private static final PaperSize SHEET_4X6 = PaperSize.inches(4, 6);

  // Arithmetic: 3 + 3 = 6, and a 3.75 x 5.75 loses 1/4 in on two sides.
  @Test
  void sheetsOfOneKindAreCutAtOneSetting() {
    List<Sheet> sheets = sheets(SHEET_4X6, new double[] {3, 4}, new double[] {3, 4}, 6);
    assertEquals(3, sheets.size());
    List<Batch> batches = CuttingBatches.of(sheets);
    assertEquals(1, batches.size());
    assertEquals(Length.inches(3), batches.get(0).setting());
    assertEquals(3, batches.get(0).steps().size());
  }

  @Test
  void matPicturesTakeTwoSettingsForAllSheetsTogether() {
    List<Sheet> sheets =
        sheets(SHEET_4X6, new double[] {3.75, 5.75}, new double[] {3.75, 5.75}, 10);
    List<Batch> batches = CuttingBatches.of(sheets);
    assertEquals(2, TrimmerSettings.of(batches));
    assertEquals(20, TrimmerSettings.sheetBySheet(sheets));
  }

  @Test
  void sheetsWithoutCutsAreInNoBatch() {
    assertEquals(List.of(), CuttingBatches.of(sheets(SHEET_4X6, new double[] {4, 6}, null, 3)));
    assertEquals(0, TrimmerSettings.of(List.of()));
  }

  /** Every cut of the order runs edge to edge through the part at hand, and frees every piece. */
  @Test
  void theOrderCanBeFollowedForRandomMonthsOnLabPrintsAndOnPaperAtHome() {
    Random random = new Random(7);
    for (int month = 0; month < 40; month++) {
      List<Piece> pieces = randomPieces(random);
      SheetSettings settings =
          month % 2 == 0
              ? new SheetSettings(SHEET_4X6, Length.ZERO)
              : new SheetSettings(
                  PaperSize.inches(8.5, 11), Length.ZERO, Length.inchFraction(1, 4));
      List<Sheet> sheets = new SheetPacker().pack(pieces, settings).sheets();
      List<Batch> batches = CuttingBatches.of(sheets);
      follow(sheets, batches);
      assertTrue(
          TrimmerSettings.of(batches) <= TrimmerSettings.sheetBySheet(sheets), "month " + month);
    }
  }

  @Test
  void eachSettingStandsOnceAmongTheCutsOfWholeSheets() {
    Random random = new Random(8);
    for (int month = 0; month < 20; month++) {
      List<Sheet> sheets =
          new SheetPacker()
              .pack(randomPieces(random), new SheetSettings(SHEET_4X6, Length.ZERO))
              .sheets();
      Set<Length> seen = new HashSet<>();
      for (Batch batch : CuttingBatches.of(sheets)) {
        assertTrue(!batch.whole() || seen.add(batch.setting()), "twice: " + batch.setting());
      }
    }
  }

  /** A margin is cut away on all four sides, and no piece lies in it. */
  @Test
  void piecesStayInsideThePrintersMargin() {
    SheetSettings letter =
        new SheetSettings(PaperSize.inches(8.5, 11), Length.ZERO, Length.inchFraction(1, 4));
    Random random = new Random(9);
    for (Sheet sheet : new SheetPacker().pack(randomPieces(random), letter).sheets()) {
      Cutting.assertCutsFreeEveryPiece(sheet);
      Length margin = letter.margin();
      for (PlacedPiece placed : sheet.pieces()) {
        PaperBox box = placed.box();
        assertTrue(!margin.isLongerThan(box.x()) && !margin.isLongerThan(box.y()));
        assertTrue(!margin.isLongerThan(sheet.size().width().minus(box.right())));
        assertTrue(!margin.isLongerThan(sheet.size().height().minus(box.bottom())));
      }
    }
  }

  private static void follow(List<Sheet> sheets, List<Batch> batches) {
    List<List<PaperBox>> hands = new ArrayList<>();
    for (Sheet sheet : sheets) {
      hands.add(new ArrayList<>(List.of(PaperBox.at(Length.ZERO, Length.ZERO, sheet.size()))));
    }
    int made = 0;
    for (Batch batch : batches) {
      for (Step step : batch.steps()) {
        List<PaperBox> parts = hands.get(step.sheet());
        assertTrue(parts.remove(step.part()), () -> step + " cuts a part that is not there");
        assertEquals(batch.setting(), measured(step));
        assertTrue(step.cut().runsThrough(step.part()));
        parts.addAll(step.cut().halves(step.part()));
        made++;
      }
    }
    assertEquals(sheets.stream().mapToInt(s -> s.cuts().size()).sum(), made);
    for (int i = 0; i < sheets.size(); i++) {
      for (PlacedPiece placed : sheets.get(i).pieces()) {
        assertTrue(hands.get(i).contains(placed.box()), placed + " is not cut out");
      }
    }
  }

  private static Length measured(Step step) {
    Length at = step.cut().at();
    return switch (step.from()) {
      case LEFT -> at.minus(step.part().x());
      case TOP -> at.minus(step.part().y());
      case RIGHT -> step.part().right().minus(at);
      case BOTTOM -> step.part().bottom().minus(at);
    };
  }

  private static List<Sheet> sheets(PaperSize sheet, double[] one, double[] other, int count) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double[] size = i % 2 == 1 && other != null ? other : one;
      pieces.add(new Piece("p" + i, PaperSize.inches(size[0], size[1]), i));
    }
    return new SheetPacker().pack(pieces, new SheetSettings(sheet, Length.ZERO)).sheets();
  }

  private static List<Piece> randomPieces(Random random) {
    double[][] sizes = {{4, 6}, {3, 4}, {4, 3}, {3.75, 5.75}, {2.75, 3.75}, {2, 3}, {1.5, 2}};
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      double[] size = sizes[random.nextInt(sizes.length)];
      pieces.add(new Piece("p" + i, PaperSize.inches(size[0], size[1]), i));
    }
    return pieces;
  }
}
