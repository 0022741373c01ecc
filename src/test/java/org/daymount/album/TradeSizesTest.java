package org.daymount.album;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

/** That these names mean these prints is common practice, no source. */
class TradeSizesTest {
  @Test
  void aPrintOrderedInCentimetresIsTheOneInInches() {
    assertEquals(PaperSize.inches(4, 6), TradeSizes.asPrinted(PaperSize.millimetres(100, 150)));
    assertEquals(PaperSize.inches(7, 5), TradeSizes.asPrinted(PaperSize.millimetres(180, 130)));
    assertEquals(PaperSize.inches(6, 8), TradeSizes.asPrinted(PaperSize.inches(6, 8)));
  }

  @Test
  void aSpaceOf13By18IsOnePrintOfFiveBySeven() {
    assertEquals(PaperSize.inches(5, 7), served(PaperSize.inches(5, 7)));
    assertEquals(PaperSize.inches(5, 7), served(PaperSize.inches(7, 5)));
  }

  @Test
  void onOtherPaperASpaceStaysAsItWasAskedFor() {
    assertEquals(PaperSize.millimetres(130, 180), served(PaperSize.inches(6, 8)));
  }

  @Test
  void thirteenByEighteenGoesIntoAPocketOfFiveBySevenWhateverItIsPrintedOn() {
    assertEquals(PaperSize.inches(5, 7), served(PaperSize.LETTER, PaperSize.inches(7, 5)));
    assertEquals(PaperSize.millimetres(130, 180), served(PaperSize.LETTER, PaperSize.inches(4, 6)));
  }

  private static PaperSize served(PaperSize print, PaperSize... pockets) {
    Space space = Space.free(PaperSize.millimetres(130, 180));
    DayPage page =
        new DayPage(
            LocalDate.of(2026, 6, 1), DayPage.Kind.PICTURES, List.of(space), Optional.empty());
    return TradeSizes.servedBy(print, List.of(pockets), page).spaces().get(0).size();
  }
}
