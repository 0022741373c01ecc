package org.daymount.evaluate;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.daymount.crop.Crop;
import org.daymount.crop.Cropper;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Measures;
import org.daymount.look.Subject;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * How near the main thing comes to an edge that a crop made: a thing that just touches it, or loses
 * a sliver, looks like a mistake, where one cut clearly or kept with a margin does not. Over every
 * photograph, four shapes, both the box of the heaviest thing that is sure and the box of what was
 * marked by hand. Edges that were the picture's own do not count.
 */
final class MarginTable {
  private static final double MARGIN = 0.02; // of the piece along the axis that is cut

  private final PrintStream out;
  private final Cropper cropper = new Cropper();

  /** Gaps from a thing to each edge that the crop made, in parts of the piece; negative: cut. */
  private record Gaps(String what, List<Double> gaps) {
    boolean isNear() {
      return gaps.stream().anyMatch(gap -> gap >= 0 && gap < MARGIN);
    }

    boolean losesASliver() {
      return gaps.stream().anyMatch(gap -> gap < 0 && gap > -MARGIN);
    }
  }

  MarginTable(PrintStream out) {
    this.out = out;
  }

  void print(String name, List<EvalPhoto> photos, Function<EvalPhoto, Measures> measuring) {
    out.printf(
        Locale.ROOT,
        "%n%-44s %6s %14s %14s%n",
        "Main thing at a cut edge",
        "crops",
        "within 2 %",
        "cut by < 2 %");
    rows(name + ", box found (sure)", photos, measuring, MarginTable::found);
    rows(name + ", box marked", photos, measuring, (photo, measures) -> marked(photo));
  }

  private interface MainBox {
    Optional<PixelBox> of(EvalPhoto photo, Measures measures);
  }

  private static Optional<PixelBox> found(EvalPhoto photo, Measures measures) {
    PixelSize size = photo.size();
    return measures.subjects().stream()
        .filter(thing -> thing.confidence() >= Subject.SURE)
        .max(Comparator.comparingDouble(thing -> thing.weight(size)))
        .map(thing -> thing.box().within(size));
  }

  private static Optional<PixelBox> marked(EvalPhoto photo) {
    return photo.subject().map(Mask::box);
  }

  private void rows(
      String name,
      List<EvalPhoto> photos,
      Function<EvalPhoto, Measures> measuring,
      MainBox mainBox) {
    List<List<Gaps>> halves = List.of(new ArrayList<>(), new ArrayList<>());
    for (EvalPhoto photo : photos) {
      Measures measures = measuring.apply(photo);
      mainBox
          .of(photo, measures)
          .ifPresent(
              box -> halves.get(EvalSet.half(photo.name())).addAll(gaps(photo, measures, box)));
    }
    List<Gaps> all = new ArrayList<>(halves.get(0));
    all.addAll(halves.get(1));
    row(name, all);
    row("    the half tuned on", halves.get(0));
    row("    the other half", halves.get(1));
    halves.get(0).stream()
        .filter(gaps -> gaps.isNear() || gaps.losesASliver())
        .forEach(gaps -> out.println("    " + gaps.what + " " + gaps.gaps));
  }

  private void row(String name, List<Gaps> all) {
    long near = all.stream().filter(Gaps::isNear).count();
    long slivers = all.stream().filter(Gaps::losesASliver).count();
    out.printf(
        Locale.ROOT,
        "%-44s %6d %5d (%4.1f %%) %5d (%4.1f %%)%n",
        name,
        all.size(),
        near,
        100.0 * near / all.size(),
        slivers,
        100.0 * slivers / all.size());
  }

  private List<Gaps> gaps(EvalPhoto photo, Measures measures, PixelBox box) {
    List<Gaps> found = new ArrayList<>();
    AnalysedPhoto looked = new AnalysedPhoto(photo.photo(), measures);
    for (PaperSize piece : TriedCrops.SHAPES) {
      Crop crop = cropper.crop(looked, piece, TriedCrops.ANY_PPI);
      PixelBox window = crop.window();
      if (crop.fit() == Crop.Fit.BORDER || window.size().equals(photo.size())) {
        continue;
      }
      List<Double> gaps = new ArrayList<>();
      addGap(gaps, window.x() > 0, box.x() - window.x(), window.width());
      addGap(gaps, window.y() > 0, box.y() - window.y(), window.height());
      addGap(
          gaps,
          window.right() < photo.size().width(),
          window.right() - box.right(),
          window.width());
      addGap(
          gaps,
          window.bottom() < photo.size().height(),
          window.bottom() - box.bottom(),
          window.height());
      found.add(new Gaps(photo.name() + " " + piece, gaps));
    }
    return found;
  }

  private static void addGap(List<Double> gaps, boolean isCut, int pixels, int length) {
    if (isCut) {
      gaps.add(Math.round(1000.0 * pixels / length) / 1000.0);
    }
  }
}
