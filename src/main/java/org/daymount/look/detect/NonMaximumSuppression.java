package org.daymount.look.detect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Turns the many spots a detector gives for one thing into one. */
final class NonMaximumSuppression {
  private static final Comparator<Detection> SUREST_FIRST =
      Comparator.comparingDouble(Detection::confidence).reversed();

  private NonMaximumSuppression() {}

  /**
   * Keeps the surest spot of each place (non-maximum suppression).
   *
   * @param overlap above which two spots are the same thing
   * @param nesting above which a spot inside another is the same thing; 1 for never
   */
  static List<Detection> surest(List<Detection> spots, double overlap, double nesting) {
    List<Detection> kept = new ArrayList<>();
    for (Detection spot : sorted(spots)) {
      boolean isNew =
          kept.stream()
              .noneMatch(other -> spot.overlap(other) > overlap || spot.nesting(other) > nesting);
      if (isNew) {
        kept.add(spot);
      }
    }
    return kept;
  }

  /**
   * Joins overlapping spots to their mean, weighted by confidence, with the confidence of the
   * surest (Bazarevsky et al. 2019, section 3.4: steadier than keeping one).
   */
  static List<Detection> blended(List<Detection> spots, double overlap) {
    List<Detection> left = sorted(spots);
    List<Detection> blended = new ArrayList<>();
    while (!left.isEmpty()) {
      Detection surest = left.get(0);
      List<Detection> same =
          left.stream().filter(s -> s == surest || s.overlap(surest) > overlap).toList();
      blended.add(mean(same).withConfidence(surest.confidence()));
      left.removeAll(same);
    }
    return blended;
  }

  private static Detection mean(List<Detection> spots) {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
    double weights = 0;
    for (Detection spot : spots) {
      double weight = spot.confidence();
      x += weight * spot.x();
      y += weight * spot.y();
      width += weight * spot.width();
      height += weight * spot.height();
      weights += weight;
    }
    return new Detection(x / weights, y / weights, width / weights, height / weights, 0);
  }

  private static List<Detection> sorted(List<Detection> spots) {
    List<Detection> sorted = new ArrayList<>(spots);
    sorted.sort(SUREST_FIRST);
    return sorted;
  }
}
