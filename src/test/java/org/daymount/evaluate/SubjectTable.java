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
import org.daymount.unit.PixelSize;

/**
 * How much of the marked subject the crops keep, over four shapes, in three ways:
 *
 * <ul>
 *   <li>the window that fills the piece, against the best of all windows, whatever that one cuts;
 *   <li>the same against the best window that holds the faces ours holds: a window on the middle of
 *       a standing person keeps most of the subject's area, and no head;
 *   <li>the crop as proposed, border fits included, against the best of all windows.
 * </ul>
 *
 * Each is the share of crops that keep nearly the best (0.95 of it), and of bad ones (below 0.8).
 */
final class SubjectTable {
  private static final double NOTHING_TO_DECIDE = 0.93; // of the area kept by any window
  private static final double NEARLY_BEST = 0.95;
  private static final double BAD = 0.8;

  private final PrintStream out;
  private final Cropper cropper = new Cropper();

  SubjectTable(PrintStream out) {
    this.out = out;
    out.printf(
        Locale.ROOT,
        "%n%-34s %6s %12s %16s %16s %16s%n",
        "Subject kept: >= .95 / < .80 of",
        "crops",
        "mean/best",
        "best window",
        "with faces",
        "as proposed");
  }

  /** Shares of the subject's pixels, for one photo and one shape. */
  private record Kept(
      String what, double filling, double best, double bestWithFaces, double proposed) {}

  /** One row for all photographs, and with details one each for every other photograph. */
  void rowOf(
      String name,
      List<EvalPhoto> photos,
      Function<EvalPhoto, Measures> measuring,
      boolean details) {
    List<List<Kept>> halves = List.of(new ArrayList<>(), new ArrayList<>());
    for (EvalPhoto photo : photos) {
      if (photo.subject().isPresent()) {
        halves.get(EvalSet.half(photo.name())).addAll(kept(photo, measuring.apply(photo)));
      }
    }
    List<Kept> all = new ArrayList<>(halves.get(0));
    all.addAll(halves.get(1));
    print(name, all);
    if (details) {
      print("    the half tuned on", halves.get(0));
      print("    the other half", halves.get(1));
      halves.get(0).stream()
          .filter(kept -> kept.proposed < NEARLY_BEST * kept.best)
          .map(
              kept ->
                  String.format(
                      Locale.ROOT,
                      "    %s keeps %.2f, could keep %.2f%s",
                      kept.what,
                      kept.filling,
                      kept.best,
                      kept.proposed < BAD * kept.best ? ", bad" : ""))
          .forEach(out::println);
    }
  }

  private List<Kept> kept(EvalPhoto photo, Measures measures) {
    List<Kept> kept = new ArrayList<>();
    AnalysedPhoto looked = new AnalysedPhoto(photo.photo(), measures);
    for (PaperSize piece : TriedCrops.SHAPES) {
      PixelBox window = cropper.fill(looked, piece, TriedCrops.ANY_PPI).window();
      if (window.area() > NOTHING_TO_DECIDE * photo.size().area()) {
        continue;
      }
      Crop proposed = cropper.crop(looked, piece, TriedCrops.ANY_PPI);
      kept.add(
          new Kept(
              photo.name() + " " + piece,
              share(photo, window),
              best(photo, window, List.of()),
              best(photo, window, heads(measures, window, piece, photo.size())),
              proposed.fit() == Crop.Fit.BORDER ? 1 : share(photo, window)));
    }
    return kept;
  }

  private void print(String name, List<Kept> all) {
    double crops = all.size();
    out.printf(
        Locale.ROOT,
        "%-34s %6d %7.2f/%4.2f %16s %16s %16s%n",
        name,
        all.size(),
        all.stream().mapToDouble(Kept::filling).sum() / crops,
        all.stream().mapToDouble(Kept::best).sum() / crops,
        goodAndBad(all, Kept::filling, Kept::best),
        goodAndBad(all, Kept::filling, Kept::bestWithFaces),
        goodAndBad(all, Kept::proposed, Kept::best));
  }

  private static String goodAndBad(
      List<Kept> all, Function<Kept, Double> ours, Function<Kept, Double> best) {
    double good = all.stream().filter(k -> ours.apply(k) >= NEARLY_BEST * best.apply(k)).count();
    double bad = all.stream().filter(k -> ours.apply(k) < BAD * best.apply(k)).count();
    return String.format(
        Locale.ROOT, "%.1f%% /%5.1f%%", 100 * good / all.size(), 100 * bad / all.size());
  }

  /** The most that a window of the same size keeps, of those that hold every face ours holds. */
  private static double best(EvalPhoto photo, PixelBox window, List<PixelBox> heads) {
    PixelSize size = photo.size();
    boolean sideways = window.height() == size.height();
    int length = sideways ? window.width() : window.height();
    int slack = (sideways ? size.width() : size.height()) - length;
    long[] upTo = photo.subject().orElseThrow().upTo(sideways);
    List<PixelBox> held = heads.stream().filter(window::contains).toList();
    double best = 0;
    for (int at = 0; at <= slack; at++) {
      PixelBox other =
          new PixelBox(sideways ? at : 0, sideways ? 0 : at, window.width(), window.height());
      if (held.stream().allMatch(other::contains)) {
        best = Math.max(best, share(upTo, at, length));
      }
    }
    return best;
  }

  /** Faces with the room they need: hair, ears, chin, and 1/8 in to the piece's edge. */
  private static List<PixelBox> heads(
      Measures measures, PixelBox window, PaperSize piece, PixelSize size) {
    int safe = (int) Math.ceil(window.width() / piece.width().inInches() / 8);
    List<PixelBox> heads = new ArrayList<>();
    for (Face face : measures.faces()) {
      int aside = (int) Math.ceil(0.25 * face.box().width()) + safe;
      int up = (int) Math.ceil(0.60 * face.box().height()) + safe;
      int down = (int) Math.ceil(0.20 * face.box().height()) + safe;
      heads.add(face.box().grown(aside, up, aside, down).within(size));
    }
    return heads;
  }

  /** What a window keeps of the marked subject, as a share of what the best window keeps. */
  static double shareOfBest(EvalPhoto photo, PixelBox window) {
    return share(photo, window) / Math.max(best(photo, window, List.of()), 1e-9);
  }

  private static double share(EvalPhoto photo, PixelBox window) {
    boolean sideways = window.height() == photo.size().height();
    long[] upTo = photo.subject().orElseThrow().upTo(sideways);
    return share(
        upTo, sideways ? window.x() : window.y(), sideways ? window.width() : window.height());
  }

  private static double share(long[] upTo, int from, int length) {
    return (upTo[from + length] - upTo[from]) / (double) upTo[upTo.length - 1];
  }
}
