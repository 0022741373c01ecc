package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

class MatPlanTest {
  // Arithmetic: 12 x 12 is 144 square inches, six times 4 x 6, three across and two down.
  @Test
  void sixFourBySixMatsAreCutFromOneCard() {
    MatPlan six = MatPlan.of(Collections.nCopies(6, PaperSize.inches(4, 6)), MatPlan.CARD);
    assertEquals(1, six.cardSheets());
    assertEquals(
        Set.of("mat-1", "mat-2", "mat-3", "mat-4", "mat-5", "mat-6"),
        SheetPackerTest.labels(six.packing().sheets().get(0)));
    assertEquals(
        2, MatPlan.of(Collections.nCopies(7, PaperSize.inches(4, 6)), MatPlan.CARD).cardSheets());
  }

  // Arithmetic: twelve 3 x 4 fill 12 x 12; 6 x 8 and its neighbours: 6x8 + 6x8 + 12x4 as two 6x4.
  @Test
  void matsOfSeveralSizesShareACard() {
    List<PaperSize> mats = new ArrayList<>(Collections.nCopies(12, PaperSize.inches(3, 4)));
    mats.addAll(Collections.nCopies(2, PaperSize.inches(6, 8)));
    mats.addAll(Collections.nCopies(2, PaperSize.inches(4, 6)));
    MatPlan plan = MatPlan.of(mats, MatPlan.CARD);
    assertEquals(2, plan.cardSheets());
    assertTrue(plan.packing().provenFewest());
    plan.packing().sheets().forEach(Cutting::assertCutsFreeEveryPiece);
  }

  @Test
  void noMatsNeedNoCard() {
    assertEquals(0, MatPlan.of(List.of(), MatPlan.CARD).cardSheets());
  }

  @Test
  void aMatLargerThanTheCardIsNamedAndNotCut() {
    PaperSize large = PaperSize.inches(11, 14);
    MatPlan plan = MatPlan.of(List.of(large, PaperSize.inches(4, 6)), MatPlan.CARD);
    assertEquals(List.of(large), plan.tooLarge());
    assertEquals(1, plan.cardSheets());
  }
}
