package org.daymount.evaluate;

import java.awt.image.BufferedImage;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.daymount.crop.Crop;
import org.daymount.crop.CropSettings;
import org.daymount.crop.Cropper;
import org.daymount.look.Looked;
import org.daymount.look.Measures;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/**
 * How much of the marked subject the crops keep, over four shapes. The window that fills the piece
 * is judged, so that a border fit cannot flatter the figures; how many would be border fits is
 * counted beside it.
 */
final class SubjectTable {
  private static final List<PaperSize> SHAPES =
      List.of(
          PaperSize.inches(6, 4),
          PaperSize.inches(4, 6),
          PaperSize.inches(4, 3),
          PaperSize.inches(3, 4));
  private static final double NOTHING_TO_DECIDE = 0.93; // of the area kept by any window
  private static final double NEARLY_BEST = 0.95;
  private static final double BAD = 0.8; // of the subject
  private static final CropSettings ANY_PPI =
      CropSettings.of(Ppi.ppi(1), Ppi.ppi(1)); // the photographs are small

  private final PrintStream out;
  private final Cropper cropper = new Cropper();

  SubjectTable(PrintStream out) {
    this.out = out;
    out.printf(
        Locale.ROOT,
        "%-34s %6s %8s %12s %8s %8s%n",
        "Subject kept",
        "crops",
        "kept",
        ">= 95% best",
        "bad",
        "border");
  }

  /** A row for windows that need no measures. */
  void rowOf(String name, List<EvalPhoto> photos, Function<EvalPhoto, Measures> measuring) {
    List<String> worst = new ArrayList<>();
    int crops = 0;
    int good = 0;
    int bad = 0;
    int borders = 0;
    double keptSum = 0;
    double bestSum = 0;
    for (EvalPhoto photo : photos) {
      if (photo.subject().isEmpty()) {
        continue;
      }
      Looked looked = new Looked(photo.photo(), measuring.apply(photo));
      for (PaperSize piece : SHAPES) {
        PixelBox window = cropper.fill(looked, piece, ANY_PPI).window();
        if (window.area() > NOTHING_TO_DECIDE * photo.size().area()) {
          continue;
        }
        double best = best(photo, window);
        double kept = kept(photo, window);
        crops++;
        keptSum += kept;
        bestSum += best;
        good += kept >= NEARLY_BEST * best ? 1 : 0;
        bad += kept < BAD * best ? 1 : 0;
        borders += cropper.crop(looked, piece, ANY_PPI).fit() == Crop.Fit.BORDER ? 1 : 0;
        if (kept < BAD * best) {
          worst.add(String.format(Locale.ROOT, "%s %s %.2f/%.2f", photo.name(), piece, kept, best));
        }
      }
    }
    out.printf(
        Locale.ROOT,
        "%-34s %6d %4.2f/%4.2f %10.1f%% %7.1f%% %8d%n",
        name,
        crops,
        keptSum / crops,
        bestSum / crops,
        100.0 * good / crops,
        100.0 * bad / crops,
        borders);
    if (Boolean.getBoolean("eval.names")) {
      worst.forEach(line -> out.println("    " + line));
    }
  }

  private static double kept(EvalPhoto photo, PixelBox window) {
    boolean sideways = window.height() == photo.size().height();
    int[] profile = photo.subject().orElseThrow().profile(sideways);
    int from = sideways ? window.x() : window.y();
    int length = sideways ? window.width() : window.height();
    return share(profile, from, length);
  }

  private static double best(EvalPhoto photo, PixelBox window) {
    PixelSize size = photo.size();
    boolean sideways = window.height() == size.height();
    int[] profile = photo.subject().orElseThrow().profile(sideways);
    int length = sideways ? window.width() : window.height();
    double best = 0;
    for (int from = 0; from + length <= profile.length; from++) {
      best = Math.max(best, share(profile, from, length));
    }
    return best;
  }

  private static double share(int[] profile, int from, int length) {
    long all = 0;
    long inside = 0;
    for (int i = 0; i < profile.length; i++) {
      all += profile[i];
      inside += i >= from && i < from + length ? profile[i] : 0;
    }
    return inside / (double) all;
  }

  /** Keeps the measures of a picture, so that several rows cost one look. */
  static Function<EvalPhoto, Measures> measuredBy(Function<BufferedImage, Measures> measuring) {
    return photo -> measuring.apply(photo.picture());
  }
}
