package org.daymount.output;

import org.daymount.month.Settings;
import org.daymount.sheet.SheetSettings;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;
import org.daymount.unit.Units;

/**
 * What a test print is printed on.
 *
 * @param margin what a printer at home leaves unprinted at each edge; zero for a lab
 * @param paged how the PDF is
 * @param units which is read first
 */
public record StripPaper(
    PaperSize sheet, Length margin, Ppi ppi, Settings.Paper paged, Units units) {
  public StripPaper {
    new SheetSettings(sheet, Length.ZERO, margin); // says what is wrong with them
  }
}
