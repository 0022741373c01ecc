package org.daymount.pick;

import java.util.Comparator;
import java.util.List;
import org.daymount.look.Looked;
import org.daymount.look.Measures;
import org.daymount.look.Measures.CloseLook;

/**
 * Picks the frame of a burst that is sharpest on its subject. Sharpness inside the faces or
 * subjects decides where every frame has been looked at closely; otherwise the sharpness weighted
 * by the subject map. Frames of one burst show the same scene, so the plain numbers may be
 * compared.
 */
public final class BurstWinner {
  private static final double CLEARLY_SHARPER = 1.15; // below this ratio the light decides

  private BurstWinner() {}

  /**
   * @param frames of one burst, at least one
   */
  public static Contender of(List<Looked> frames) {
    boolean allClose =
        frames.stream()
            .allMatch(f -> f.measures().close().map(CloseLook::sharpnessThere).orElse(0.0) > 0);
    Comparator<Looked> sharpestFirst =
        Comparator.comparingDouble((Looked f) -> sharpness(f.measures(), allClose))
            .reversed()
            .thenComparing(f -> f.photo().file());
    List<Looked> ordered = frames.stream().sorted(sharpestFirst).toList();
    double best = sharpness(ordered.get(0).measures(), allClose);
    Looked winner =
        ordered.stream()
            .filter(f -> sharpness(f.measures(), allClose) * CLEARLY_SHARPER >= best)
            .max(
                Comparator.comparingDouble((Looked f) -> sameFrame(f, ordered) + light(f))
                    .thenComparing(f -> sharpness(f.measures(), allClose)))
            .orElseThrow();
    return new Contender(winner, ordered.stream().filter(f -> f != winner).toList());
  }

  private static double sharpness(Measures measures, boolean close) {
    return close
        ? measures.close().map(CloseLook::sharpnessThere).orElse(0.0)
        : measures.sharpness();
  }

  /** Light in coarse steps: a difference nobody sees must not overrule sharpness. */
  private static double light(Looked frame) {
    return Math.floor(frame.measures().exposure() * 10) / 10;
  }

  /** A larger file of the same moment (a re-saved twin is smaller) comes first. */
  private static double sameFrame(Looked frame, List<Looked> all) {
    long largest = all.stream().mapToLong(f -> f.photo().size().area()).max().orElse(0);
    return frame.photo().size().area() * 2 >= largest ? 1 : 0;
  }
}
