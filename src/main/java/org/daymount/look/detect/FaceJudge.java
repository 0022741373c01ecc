package org.daymount.look.detect;

import java.util.ArrayList;
import java.util.List;

final class FaceJudge {
  static final double PROTECT = 0.5;
  static final double SCORE = 0.75;

  private FaceJudge() {}

  static List<Spot> judge(List<Spot> blaze, List<Spot> ssd, List<Thing> things) {
    List<Spot> all = new ArrayList<>();
    for (Spot b : blaze) {
      double best = 0;
      for (Spot s : ssd) if (s.overlap(b) > .3) best = Math.max(best, s.confidence());
      if (best > 0 || b.confidence() >= .75)
        all.add(b.withConfidence(Math.max(b.confidence(), best)));
    }
    for (Spot s : ssd)
      if (s.confidence() >= .5 && all.stream().noneMatch(b -> b.overlap(s) > .3)) all.add(s);
    return Spots.surest(all, .35, .65);
  }
}
