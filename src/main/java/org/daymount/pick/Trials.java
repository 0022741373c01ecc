package org.daymount.pick;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.daymount.album.Space;
import org.daymount.look.AnalysedPhoto;

/**
 * How well pictures suit spaces. It depends on nothing but the two, so it is found out once,
 * however often a month is picked from again: of a month of 3,000 pictures a change costs what it
 * changes. Not for several threads at once.
 */
public final class Trials {
  private final PickSettings settings;

  /** By the very picture as it was looked at: after a closer look it is another one. */
  private final Map<AnalysedPhoto, Map<Space, SpaceTrial>> known = new IdentityHashMap<>();

  public Trials(PickSettings settings) {
    this.settings = settings;
  }

  PickSettings settings() {
    return settings;
  }

  SpaceTrial best(Contender contender, Space space) {
    SpaceTrial trial =
        known
            .computeIfAbsent(contender.looked(), any -> new HashMap<>())
            .computeIfAbsent(space, any -> SpaceTrial.best(contender, space, settings));
    return new SpaceTrial(contender, trial.way(), trial.crop(), trial.score());
  }
}
