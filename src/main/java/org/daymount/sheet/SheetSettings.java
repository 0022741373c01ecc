package org.daymount.sheet;

import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * The paper that is cut up.
 *
 * @param sheet size of one sheet; it may be used upright or lying
 * @param labTrim how far pieces stay from the sheet's edge where waste allows it, because a lab
 *     enlarges a borderless print a little and loses its rim; zero to use the sheet to its edge
 */
public record SheetSettings(PaperSize sheet, Length labTrim) {
  public SheetSettings {
    if (labTrim.nanometres() < 0) {
      throw new IllegalArgumentException("the lab trim cannot be below zero, was " + labTrim);
    }
  }

  /** Whether the lab may cut into the piece: it lies closer to the sheet's edge than the trim. */
  public boolean touchesTrim(Sheet on, PlacedPiece placed) {
    PaperBox box = placed.box();
    Length nearest =
        box.x()
            .min(box.y())
            .min(on.size().width().minus(box.right()))
            .min(on.size().height().minus(box.bottom()));
    return labTrim.isLongerThan(nearest);
  }
}
