package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.daymount.sheet.Piece;
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

  private static Sheet letter(PaperSize piece) {
    return new SheetPacker()
        .pack(
            List.of(new Piece("01a", piece, 0)),
            new SheetSettings(PaperSize.LETTER, Length.ZERO, MARGIN))
        .sheets()
        .get(0);
  }
}
