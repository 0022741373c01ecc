package org.daymount.sheet;

import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.SizeText;

/**
 * The paper that is cut up.
 *
 * @param sheet size of one sheet; it may be used upright or lying
 * @param labTrim how far pieces stay from the sheet's edge where waste allows it, because a lab
 *     enlarges a borderless print a little and loses its rim; zero to use the sheet to its edge
 * @param margin how far every piece stays from the sheet's edge, because a printer at home cannot
 *     print there; zero for prints of a lab
 */
public record SheetSettings(PaperSize sheet, Length labTrim, Length margin) {
  private static final Length ROOM_FOR_NAMES = Length.inchFraction(1, 4);

  public SheetSettings {
    if (margin.nanometres() < 0) {
      throw new IllegalArgumentException(
          "the margin cannot be below zero, was " + SizeText.text(margin));
    }
    Length shorter = sheet.width().min(sheet.height());
    if (!shorter.isLongerThan(margin.times(2))) {
      throw new IllegalArgumentException(
          "a margin of "
              + SizeText.text(margin)
              + " leaves nothing of a "
              + SizeText.text(sheet)
              + " sheet");
    }
    if (labTrim.nanometres() < 0) {
      throw new IllegalArgumentException(
          "the lab trim cannot be below zero, was " + SizeText.text(labTrim));
    }
  }

  /** Without a margin. */
  public SheetSettings(PaperSize sheet, Length labTrim) {
    this(sheet, labTrim, Length.ZERO);
  }

  /** The part of the sheet that pieces may lie on. */
  public PaperSize usable() {
    return sheet.inset(margin);
  }

  /** Kept free at each edge where waste allows it; the margin always is. */
  Length rim() {
    return labTrim.max(margin);
  }

  /**
   * The same and, on paper printed at home, room beside the margin for marks and names, so that the
   * printer can reach them. Kept where it costs no cut.
   */
  Length roomyRim() {
    return rim().plus(margin.isPositive() ? ROOM_FOR_NAMES : Length.ZERO);
  }
}
