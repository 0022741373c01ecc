package org.daymount.look.detect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Makes one thing of several boxes that mean the same. The detector of things often sees a large
 * one several times, each time doubtfully: a cat on a lap as three cats of .18 and one dog of .12.
 * Boxes of one kind, or of kinds that are taken for each other, which cover the same place are
 * witnesses of one thing: together they are wrong only if each of them is.
 */
final class AgreeingThings {
  private static final double SAME_PLACE = 0.7; // shared area over the area of both together

  /** Witnesses that do not see differently: the same network, cells beside each other. */
  private static final double INDEPENDENT = 0.6;

  private static final List<Set<ThingKind>> TAKEN_FOR_EACH_OTHER =
      List.of(
          EnumSet.of(
              ThingKind.BIRD,
              ThingKind.CAT,
              ThingKind.DOG,
              ThingKind.HORSE,
              ThingKind.SHEEP,
              ThingKind.COW,
              ThingKind.ELEPHANT,
              ThingKind.BEAR,
              ThingKind.ZEBRA,
              ThingKind.GIRAFFE,
              ThingKind.TEDDY_BEAR),
          EnumSet.of(ThingKind.CAR, ThingKind.TRUCK, ThingKind.BUS, ThingKind.TRAIN),
          EnumSet.of(ThingKind.COUCH, ThingKind.BED, ThingKind.CHAIR),
          EnumSet.of(ThingKind.PIZZA, ThingKind.CAKE, ThingKind.SANDWICH, ThingKind.HOT_DOG),
          EnumSet.of(ThingKind.CUP, ThingKind.WINE_GLASS, ThingKind.BOWL, ThingKind.VASE));

  private AgreeingThings() {}

  /**
   * @param things surest first
   * @return each place once, with the box and the kind of the surest; surest first
   */
  static List<LabelledDetection> joined(List<LabelledDetection> things) {
    List<LabelledDetection> joined = new ArrayList<>();
    Set<LabelledDetection> taken = new HashSet<>();
    for (LabelledDetection surest : things) {
      if (!taken.add(surest)) {
        continue;
      }
      double doubt = 1 - surest.spot().confidence();
      for (LabelledDetection other : things) {
        if (!taken.contains(other)
            && mayBeSame(surest.kind(), other.kind())
            && surest.spot().overlap(other.spot()) >= SAME_PLACE) {
          taken.add(other);
          doubt *= 1 - INDEPENDENT * other.spot().confidence();
        }
      }
      joined.add(new LabelledDetection(surest.kind(), surest.spot().withConfidence(1 - doubt)));
    }
    joined.sort(
        Comparator.comparingDouble((LabelledDetection thing) -> -thing.spot().confidence()));
    return joined;
  }

  private static boolean mayBeSame(ThingKind one, ThingKind other) {
    return one == other
        || TAKEN_FOR_EACH_OTHER.stream()
            .anyMatch(kinds -> kinds.contains(one) && kinds.contains(other));
  }
}
