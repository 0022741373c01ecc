package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

class SheetJoinsTest {
  private final SheetJoins joins = new SheetJoins(PaperSize.inches(4, 6));

  @Test
  void aPieceOfSixByEightMeetsInItsMiddle() {
    PaperSize half = PaperSize.inches(6, 4);
    assertEquals(
        List.of(
            PaperBox.at(Length.ZERO, Length.ZERO, half),
            PaperBox.at(Length.ZERO, Length.inches(4), half)),
        joins.parts(PaperSize.inches(6, 8)));
  }

  @Test
  void aPieceThatFitsTheSheetTurnedHasNoJoin() {
    assertEquals(1, joins.parts(PaperSize.inches(6, 4)).size());
  }
}
