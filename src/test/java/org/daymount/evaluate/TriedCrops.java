package org.daymount.evaluate;

import java.util.List;
import org.daymount.crop.CropSettings;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;

/** What each photograph of the evaluation is cropped to. */
final class TriedCrops {
  static final List<PaperSize> SHAPES =
      List.of(
          PaperSize.inches(6, 4),
          PaperSize.inches(4, 6),
          PaperSize.inches(4, 3),
          PaperSize.inches(3, 4));

  /** The photographs are small. */
  static final CropSettings ANY_PPI = CropSettings.of(Ppi.ppi(1), Ppi.ppi(1));

  private TriedCrops() {}
}
