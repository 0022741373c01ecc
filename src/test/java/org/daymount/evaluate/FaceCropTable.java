package org.daymount.evaluate;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.daymount.crop.Crop;
import org.daymount.crop.Cropper;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.Measures;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;

/**
 * How many proposed crops, over four shapes and every photograph, cut a face: one that the
 * detectors found and the program protects, or one that a person marked. Each is named with its
 * cause.
 */
final class FaceCropTable {
  private static final int LARGE = 40; // pixels, of a long edge of 640
  private static final double SAME_FACE = 0.4; // of the marked face's area

  private final PrintStream out;
  private final Cropper cropper = new Cropper();

  FaceCropTable(PrintStream out) {
    this.out = out;
    out.printf(
        Locale.ROOT,
        "%n%-34s %6s %8s %10s %8s %14s%n",
        "Crops that cut a face",
        "crops",
        "border",
        "protected",
        "marked",
        "marked " + LARGE + " px");
  }

  void rowOf(
      String name, List<EvalPhoto> photos, Function<EvalPhoto, Measures> measuring, boolean named) {
    List<String> causes = new ArrayList<>();
    int crops = 0;
    int borders = 0;
    int ofProtected = 0;
    int ofMarked = 0;
    int ofLarge = 0;
    for (EvalPhoto photo : photos) {
      AnalysedPhoto looked = new AnalysedPhoto(photo.photo(), measuring.apply(photo));
      for (PaperSize piece : TriedCrops.SHAPES) {
        Crop crop = cropper.crop(looked, piece, TriedCrops.ANY_PPI);
        List<PixelBox> guarded = guarded(photo, looked);
        List<PixelBox> marked = photo.faces().stream().map(f -> f.within(photo.size())).toList();
        List<PixelBox> cutMarked = cut(crop, marked);
        List<PixelBox> cutLarge =
            cutMarked.stream().filter(face -> face.size().longEdge() >= LARGE).toList();
        crops++;
        borders += crop.fit() == Crop.Fit.BORDER ? 1 : 0;
        ofProtected += cut(crop, guarded).isEmpty() ? 0 : 1;
        ofMarked += cutMarked.isEmpty() ? 0 : 1;
        ofLarge += cutLarge.isEmpty() ? 0 : 1;
        for (PixelBox face : cutLarge) {
          causes.add(photo.name() + " " + piece + " " + face + ": " + cause(face, guarded));
        }
      }
    }
    out.printf(
        Locale.ROOT,
        "%-34s %6d %8d %10d %8d %14d%n",
        name,
        crops,
        borders,
        ofProtected,
        ofMarked,
        ofLarge);
    if (named) {
      causes.forEach(line -> out.println("    " + line));
    }
  }

  private static List<PixelBox> guarded(EvalPhoto photo, AnalysedPhoto looked) {
    return looked.measures().faces().stream()
        .filter(face -> face.isProtected())
        .map(Face::box)
        .map(box -> box.within(photo.size()))
        .toList();
  }

  private static List<PixelBox> cut(Crop crop, List<PixelBox> faces) {
    return faces.stream().filter(face -> !crop.window().contains(face)).toList();
  }

  private static String cause(PixelBox face, List<PixelBox> guarded) {
    boolean seen =
        guarded.stream().anyMatch(box -> box.sharedArea(face) >= SAME_FACE * face.area());
    return seen ? "found, but the marked box reaches further" : "not found by the detectors";
  }
}
