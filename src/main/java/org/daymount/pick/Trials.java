package org.daymount.pick;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.daymount.album.Space;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Measures.CloseLook;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.unit.PixelSize;

/**
 * A cache beside the picking: how well pictures suit spaces, and which show one scene. It depends
 * on nothing but the two, so it is found out once, however often a month is picked from again: of a
 * month of 3,000 pictures a change costs what it changes. Not for several threads at once.
 */
public final class Trials {
  private static final int MOST = 100_000; // of some hundred bytes; then it begins anew

  private final PickSettings settings;
  private final Map<Key, SpaceTrial> known = new HashMap<>();
  private final Map<Pair, Double> scenes = new HashMap<>();

  /** All that a trial follows from; what else was measured follows from the content. */
  private record Key(
      String sha256, ExifOrientation orientation, Optional<CloseLook> close, Space space) {}

  /** All that two pictures taken within minutes follow from. */
  private record Pair(String one, PixelSize sizeOfOne, String other, PixelSize sizeOfOther) {}

  public Trials(PickSettings settings) {
    this.settings = settings;
  }

  PickSettings settings() {
    return settings;
  }

  SpaceTrial best(Candidate contender, Space space) {
    if (known.size() >= MOST) {
      known.clear();
    }
    SpaceTrial trial =
        known.computeIfAbsent(
            new Key(
                contender.looked().photo().sha256(),
                contender.looked().photo().orientation(),
                contender.looked().measures().close(),
                space),
            any -> SpaceTrial.best(contender, space, settings));
    return new SpaceTrial(contender, trial.way(), trial.crop(), trial.score());
  }

  /** As {@link SameScene#between}. */
  double sameScene(AnalysedPhoto one, AnalysedPhoto other) {
    Photo a = one.photo();
    Photo b = other.photo();
    if (!SameScene.takenWithinMinutes(a, b)) {
      return 0;
    }
    if (scenes.size() >= MOST) {
      scenes.clear();
    }
    return scenes.computeIfAbsent(
        new Pair(a.sha256(), a.size(), b.sha256(), b.size()), any -> SameScene.between(one, other));
  }
}
