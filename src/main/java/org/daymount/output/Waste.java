package org.daymount.output;

import org.daymount.sheet.Sheet;
import org.daymount.unit.PaperBox;

/** What is left of a sheet beside its pieces. */
final class Waste {
  private final Sheet sheet;

  Waste(Sheet sheet) {
    this.sheet = sheet;
  }

  boolean isEmpty(PaperBox box) {
    return sheet.pieces().stream().noneMatch(placed -> placed.box().overlaps(box));
  }

  boolean isOnSheet(PaperBox box) {
    return box.x().nanometres() >= 0
        && box.y().nanometres() >= 0
        && !box.right().isLongerThan(sheet.size().width())
        && !box.bottom().isLongerThan(sheet.size().height());
  }
}
