package org.daymount.month;

import java.time.LocalTime;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;

/**
 * What the run was told, or took for granted.
 *
 * @param space the default for every day, as written
 * @param labTrim how much of each edge a lab may lose; zero unless told
 */
public record Settings(
    LocalTime dayStarts,
    String space,
    Length reveal,
    Ppi ppi,
    Ppi minPpi,
    PaperSize sheet,
    Length labTrim,
    Paper paper) {
  /** How sheets.pdf is paged. */
  public enum Paper {
    /** One page a sheet, at the sheet's size. */
    SHEET,
    LETTER,
    A4
  }
}
