package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.daymount.sheet.Piece;
import org.daymount.sheet.PlacedPiece;
import org.daymount.sheet.Sheet;
import org.daymount.sheet.SheetPacker;
import org.daymount.sheet.SheetSettings;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

class PdfRulerTest {
  private static final Length MARGIN = Length.inchFraction(1, 4);

  @Test
  void theRulerLiesInTheWasteInsideTheMargin() {
    Sheet sheet = letter(PaperSize.inches(4, 6));
    PaperBox room = PdfRuler.room(sheet, MARGIN).orElseThrow();
    assertTrue(sheet.pieces().stream().noneMatch(placed -> placed.box().overlaps(room)));
    assertTrue(new Waste(sheet).isOnSheet(room));
    assertEquals(sheet.size().height().minus(MARGIN), room.bottom());
  }

  @Test
  void aFullSheetHasNoRoomForOne() {
    assertEquals(Optional.empty(), PdfRuler.room(letter(PaperSize.inches(8, 10)), MARGIN));
  }

  @Test
  void whereOnlyAnUprightStripIsLeftTheRulerStands() {
    Sheet sheet = letter(PaperSize.inches(6, 10));
    PaperBox room = PdfRuler.room(sheet, MARGIN).orElseThrow();
    assertTrue(room.height().isLongerThan(room.width()));
    assertTrue(sheet.pieces().stream().noneMatch(placed -> placed.box().overlaps(room)));
  }

  @Test
  void aShortCornerHoldsAScaleWithItsWordsBelow() {
    Length edge = Length.inches(0.25);
    Sheet sheet =
        new Sheet(
            PaperSize.LETTER,
            List.of(
                placed("01a", PaperBox.at(edge, edge, PaperSize.inches(8, 5))),
                placed("01b", PaperBox.at(edge, Length.inches(5.25), PaperSize.inches(3, 5.5)))),
            List.of());
    PaperBox room = PdfRuler.room(sheet, MARGIN).orElseThrow();
    Length longer = room.width().max(room.height());
    assertEquals(Length.inches(4.25), longer);
  }

  private static PlacedPiece placed(String label, PaperBox box) {
    return new PlacedPiece(new Piece(label, box.size(), 0), box, false);
  }

  private static Sheet letter(PaperSize piece) {
    return new SheetPacker()
        .pack(
            List.of(new Piece("01a", piece, 0)),
            new SheetSettings(PaperSize.LETTER, Length.ZERO, MARGIN))
        .sheets()
        .get(0);
  }
}
