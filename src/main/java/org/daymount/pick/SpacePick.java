package org.daymount.pick;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.daymount.album.Space;
import org.daymount.unit.Orientation;

/**
 * What goes into one space.
 *
 * @param direction the way the space ends up lying
 * @param hero empty when the picture is still missing; {@code reasons} then say why
 * @param runnersUp the next best, best first, at most three
 */
public record SpacePick(
    Space space,
    Orientation direction,
    Optional<ScoredCandidate> hero,
    ChosenBy chosenBy,
    List<ScoredCandidate> runnersUp,
    List<String> reasons) {
  /** Who settled on the hero. */
  public enum ChosenBy {
    TOOL,
    PERSON;

    /** The word used in month.json. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public SpacePick {
    runnersUp = List.copyOf(runnersUp);
    reasons = List.copyOf(reasons);
  }
}
