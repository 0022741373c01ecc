package org.daymount.month;

import java.time.LocalTime;
import org.daymount.image.Lightening;
import org.daymount.sheet.SheetSettings;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;

/**
 * What the run was told, or took for granted.
 *
 * @param space the default for every day, as written
 * @param labTrim how much of each edge a lab may lose; zero unless told
 * @param margin what a printer at home leaves unprinted at each edge; zero for prints of a lab
 * @param lighter how much lighter than the pictures all prints are
 */
public record Settings(
    LocalTime dayStarts,
    String space,
    Length reveal,
    Ppi ppi,
    Ppi minPpi,
    PaperSize sheet,
    Length labTrim,
    Paper paper,
    Length margin,
    Lightening lighter) {
  public Settings {
    new SheetSettings(sheet, labTrim, margin); // says what is wrong with them
  }

  /** What the pieces are cut out of. */
  public SheetSettings sheets() {
    return new SheetSettings(sheet, labTrim, margin);
  }

  /** How sheets.pdf is paged. */
  public enum Paper {
    /** One page a sheet, at the sheet's size. */
    SHEET,
    LETTER,
    A4
  }
}
