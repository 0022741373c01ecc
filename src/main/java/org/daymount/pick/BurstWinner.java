package org.daymount.pick;

import java.util.Comparator;
import java.util.List;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.FrameRule;
import org.daymount.look.Measures;
import org.daymount.look.Measures.CloseLook;

/**
 * Picks the frame of a burst that is sharpest on its subject. Sharpness inside the faces or
 * subjects decides where every frame has been looked at closely; otherwise the sharpness weighted
 * by the subject map. Frames of one burst show the same scene, so the plain numbers may be
 * compared.
 */
public final class BurstWinner {
  private BurstWinner() {}

  /**
   * @param frames of one burst, at least one
   */
  public static Candidate of(List<AnalysedPhoto> frames) {
    boolean allClose =
        frames.stream()
            .allMatch(f -> f.measures().close().map(CloseLook::sharpnessThere).orElse(0.0) > 0);
    Comparator<AnalysedPhoto> sharpestFirst =
        Comparator.comparing(AnalysedPhoto::isDamaged)
            .thenComparingDouble(f -> -sharpness(f.measures(), allClose))
            .thenComparing(f -> f.photo().file());
    List<AnalysedPhoto> ordered = frames.stream().sorted(sharpestFirst).toList();
    double best = sharpness(ordered.get(0).measures(), allClose);
    AnalysedPhoto winner = ordered.get(0);
    for (AnalysedPhoto frame : ordered) {
      boolean nearlyAsSharp =
          frame.isDamaged() == winner.isDamaged()
              && FrameRule.isAboutAsSharp(sharpness(frame.measures(), allClose), best);
      if (nearlyAsSharp && isClearlyBetter(frame, winner, ordered)) {
        winner = frame;
      }
    }
    AnalysedPhoto first = winner;
    return new Candidate(first, ordered.stream().filter(f -> f != first).toList());
  }

  private static double sharpness(Measures measures, boolean close) {
    return close
        ? measures.close().map(CloseLook::sharpnessThere).orElse(0.0)
        : measures.sharpness();
  }

  /** A larger file, or light that a person would see is better. */
  private static boolean isClearlyBetter(
      AnalysedPhoto frame, AnalysedPhoto other, List<AnalysedPhoto> all) {
    double size = sameFrame(frame, all) - sameFrame(other, all);
    return size > 0 || size == 0 && FrameRule.isBetterLit(frame.measures(), other.measures());
  }

  /** A larger file of the same moment (a re-saved twin is smaller) comes first. */
  private static double sameFrame(AnalysedPhoto frame, List<AnalysedPhoto> all) {
    long largest = all.stream().mapToLong(f -> f.photo().size().area()).max().orElse(0);
    return frame.photo().size().area() * 2 >= largest ? 1 : 0;
  }
}
