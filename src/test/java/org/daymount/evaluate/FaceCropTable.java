package org.daymount.evaluate;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.daymount.crop.Crop;
import org.daymount.crop.CropSettings;
import org.daymount.crop.Cropper;
import org.daymount.look.Looked;
import org.daymount.look.Measures;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.Ppi;

/** How many proposed crops cut a face that a person marked. */
final class FaceCropTable {
  private static final int LARGE = 40; // pixels, of a long edge of 640
  private static final CropSettings ANY_PPI = CropSettings.of(Ppi.ppi(1), Ppi.ppi(1));

  private FaceCropTable() {}

  static void print(
      String name,
      List<EvalPhoto> photos,
      Function<EvalPhoto, Measures> measuring,
      PrintStream out) {
    Cropper cropper = new Cropper();
    int crops = 0;
    int borders = 0;
    int cutting = 0;
    int cuttingLarge = 0;
    for (EvalPhoto photo : photos) {
      if (photo.faces().isEmpty()) {
        continue;
      }
      Looked looked = new Looked(photo.photo(), measuring.apply(photo));
      for (PaperSize piece : List.of(PaperSize.inches(6, 4), PaperSize.inches(4, 6))) {
        Crop crop = cropper.crop(looked, piece, ANY_PPI);
        crops++;
        borders += crop.fit() == Crop.Fit.BORDER ? 1 : 0;
        cutting += cut(photo, crop, 0).isPresent() ? 1 : 0;
        cuttingLarge += cut(photo, crop, LARGE).isPresent() ? 1 : 0;
      }
    }
    out.printf(
        Locale.ROOT,
        "%-34s %6d crops, %d border fits, %d cut a face, %d cut one of %d px or more%n",
        name,
        crops,
        borders,
        cutting,
        cuttingLarge,
        LARGE);
  }

  private static Optional<PixelBox> cut(EvalPhoto photo, Crop crop, int least) {
    return photo.faces().stream()
        .filter(face -> face.size().longEdge() >= least)
        .map(face -> face.within(photo.size()))
        .filter(face -> !crop.window().contains(face))
        .findFirst();
  }
}
