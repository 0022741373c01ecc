package org.daymount.pick;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Fingerprint;
import org.daymount.photo.Photo;

/**
 * When a picture is another try at one taken minutes before: a closer crop, or the same in other
 * light. On one page it is no second picture while there is another.
 */
final class SameScene {
  private static final Duration MINUTES = Duration.ofMinutes(10);

  /** Of {@code Miniature.shows}: nine in ten closer crops reach .78, one in a hundred others. */
  private static final double SURELY = 0.82;

  private static final double HARDLY = 0.74;
  private static final double SAME = 0.5;
  private static final int COMPARED = 12; // of a day's pictures, the best ones

  private SameScene() {}

  /** 0 for different scenes, or too far apart in time to tell, to 1 for the same one. */
  static double between(AnalysedPhoto one, AnalysedPhoto other) {
    if (!takenWithinMinutes(one.photo(), other.photo())) {
      return 0;
    }
    double alike = Math.max(shows(one, other), shows(other, one));
    return Math.max(0, Math.min(1, (alike - HARDLY) / (SURELY - HARDLY)));
  }

  private static double shows(AnalysedPhoto whole, AnalysedPhoto part) {
    Fingerprint there = part.measures().fingerprint();
    double aspect = part.photo().size().aspect() / whole.photo().size().aspect();
    return whole.measures().fingerprint().miniature().shows(there.miniature(), aspect);
  }

  /** A guessed time proves nothing: files copied together share it. */
  static boolean takenWithinMinutes(Photo a, Photo b) {
    return taken(a, b, MINUTES);
  }

  static boolean taken(Photo a, Photo b, Duration apart) {
    return a.taken().from().isTrusted()
        && b.taken().from().isTrusted()
        && a.taken().hourKnown()
        && b.taken().hourKnown()
        && Duration.between(a.taken().local().orElseThrow(), b.taken().local().orElseThrow())
                .abs()
                .compareTo(apart)
            <= 0;
  }

  /**
   * Of the best pictures those that only try again what a better one shows.
   *
   * @param bestFirst contenders
   * @param known what was found out of two pictures before
   */
  static Set<Candidate> triedAgain(List<Candidate> bestFirst, Trials known) {
    List<Candidate> scenes = new ArrayList<>();
    Set<Candidate> again = new HashSet<>();
    for (Candidate one : bestFirst.subList(0, Math.min(COMPARED, bestFirst.size()))) {
      if (scenes.stream().anyMatch(s -> known.sameScene(s.looked(), one.looked()) >= SAME)) {
        again.add(one);
      } else {
        scenes.add(one);
      }
    }
    return again;
  }
}
