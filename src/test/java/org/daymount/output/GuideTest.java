package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.daymount.month.Settings.Paper;
import org.daymount.sheet.Cut;
import org.daymount.sheet.PlacedPiece;
import org.daymount.sheet.Sheet;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Units;
import org.junit.jupiter.api.Test;

class GuideTest {
  private final Guide guide = Guide.of(TestMonths.month(Paper.SHEET));

  @Test
  void cutsAreSaidInOrderWithTheirMeasureFromAnEdge() {
    assertEquals(
        List.of(
            "The sheet: cut from top to bottom, 3 3/4 in (9.5 cm) from the left edge;"
                + " the other side is waste.",
            "The part with 03a: cut from side to side, 5 3/4 in (14.6 cm) from the top edge;"
                + " 03a done; the other side is waste."),
        guide.sheets().get(1).cuts());
  }

  /** 6 x 4 into three of 2 x 3: the third upright cut is measured on what is left in the hand. */
  @Test
  void aLaterCutIsMeasuredFromTheEdgeOfThePartInHand() {
    PaperSize size = PaperSize.inches(2, 3);
    List<PlacedPiece> pieces =
        List.of(
            TestMonths.placed("a", size, 0, 0, false),
            TestMonths.placed("b", size, 2, 0, false),
            TestMonths.placed("c", size, 4, 0, false));
    List<Cut> cuts =
        List.of(TestMonths.across(3, 0, 6), TestMonths.upDown(2, 0, 3), TestMonths.upDown(4, 0, 3));
    assertEquals(
        List.of(
            "The sheet: cut from side to side, 3 in (7.6 cm) from the top edge;"
                + " the other side is waste.",
            "The part with a, b, c: cut from top to bottom, 2 in (5.1 cm) from the left edge;"
                + " a done.",
            "The part with b, c: cut from top to bottom, 2 in (5.1 cm) from the left edge;"
                + " b and c done."),
        new CutSteps(new Sheet(TestMonths.SIX_BY_FOUR, pieces, cuts), Units.INCHES).sentences());
  }

  @Test
  void aCutThatDoesNotRunFromEdgeToEdgeIsRefused() {
    Sheet sheet = new Sheet(TestMonths.SIX_BY_FOUR, List.of(), List.of(TestMonths.upDown(2, 0, 3)));
    assertThrows(
        IllegalArgumentException.class, () -> new CutSteps(sheet, Units.INCHES).sentences());
  }

  @Test
  void piecesAreNamedByDayAndSpace() {
    assertEquals(
        List.of(
            "02a: 2 June, space 1, 3 x 4 in (7.6 x 10.2 cm)",
            "02b: 2 June, space 2, 3 x 4 in (7.6 x 10.2 cm)"),
        guide.sheets().get(0).pieces());
    assertEquals(
        "02c: 2 June, story card, 3 x 4 in (7.6 x 10.2 cm), lying on its side",
        guide.sheets().get(5).pieces().get(1));
    assertEquals(
        "04a: 4 June, space 1 (a part of it), 6 x 4 in (15.2 x 10.2 cm)",
        guide.sheets().get(2).pieces().get(0));
  }

  @Test
  void aPageSaysWhatIsMountedWhereAndOnWhichSheetItIs() {
    Guide.PageSteps second = guide.pages().get(0);
    assertEquals("Tuesday, 2 June", second.heading());
    assertEquals(
        List.of(
            "02a (sheet-01): 3x4 portrait.",
            "02b (sheet-01): 3x4 portrait.",
            "02c (sheet-06): story card."),
        second.steps());
  }

  @Test
  void aMatShowsItsReveal() {
    assertEquals(
        "03a (sheet-02): 4x6 portrait on mat."
            + " Centre it on a 4x6 mat: 1/8 in (0.3 cm) of the mat shows on each side.",
        guide.pages().get(1).steps().get(0));
  }

  @Test
  void partsAreMountedEdgeToEdge() {
    assertTrue(
        guide
            .pages()
            .get(2)
            .steps()
            .get(0)
            .contains("04a (sheet-03) and 04b (sheet-04) put together, edge to edge"));
  }

  @Test
  void whatIsMissingHasItsDayAndDirection() {
    assertEquals(
        List.of("5 June, space 2: 4x6 landscape (no landscape picture was taken that day)"),
        guide.missing());
  }

  @Test
  void theShoppingListCountsPrintsLeavesMatsAndCards() {
    assertEquals(
        List.of(
            "6 prints of 4x6 in, without enlarging or cropping.",
            "1 page protector with pockets four 3x4: day 2.",
            "2 whole pages of 6x8 in to glue on, in a plain protector: days 3, 6.",
            "1 page protector with pockets one 6x8: day 4.",
            "1 page protector with pockets two 4x6: day 5.",
            "(Days joined by + are the two sides of one; 5 sides of these stay empty.)",
            "1 mat of 4x6 in.",
            "For the mats: 1 sheet of card, 12x12 in; how to cut it stands after the sheets.",
            "Story cards, printed with the pictures: 1 of 3x4 in.",
            "To fill the pockets left empty, if you like: 1 of 3x4 in."),
        guide.shopping().subList(0, 10));
  }

  @Test
  void theCardForTheMatsHasItsCutsAndItsMatsTheirDays() {
    assertEquals(List.of("mat 3: 4 x 6 in (10.2 x 15.2 cm)"), guide.mats().get(0).pieces());
    assertEquals(2, guide.mats().get(0).cuts().size()); // a corner of a 12 x 12: arithmetic
  }
}
