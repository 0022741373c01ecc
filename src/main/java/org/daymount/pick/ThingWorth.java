package org.daymount.pick;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.daymount.look.Subject;
import org.daymount.unit.PixelSize;

/**
 * What things in a picture are worth to an album of days. The order is a person's: animals nearly
 * as much as people, then people who are only seen as figures, then sights and what one rides in,
 * then food, then what one plays with; furniture and machines hardly anything. A picture that is
 * about a toilet or a road sign and about nothing else loses by it.
 */
final class ThingWorth {
  private static final double ANIMAL = 0.75;
  private static final double FIGURE = 0.6;
  private static final double SIGHT = 0.45;
  private static final double FOOD = 0.45;
  private static final double PLAY = 0.35;
  private static final double TREAT = 0.3;
  private static final double HOME = 0.15;
  private static final double ANYTHING = 0.05;

  private static final double DULL = -0.3;
  private static final double NOTHING_BETTER =
      0.35; // worth of all there is, above which it may lie about

  private static final double SURE = 0.6; // a detector that is surer knows no better
  private static final double LARGE = 0.4; // of the picture's side; larger adds nothing
  private static final double MIDDLE_SIGMA = 0.5; // of each side of the picture

  private static final Map<String, Double> WORTH = new HashMap<>();

  static {
    put(FIGURE, "person");
    put(SIGHT, "boat", "train", "plane", "motorcycle");
    put(
        PLAY,
        "bus",
        "teddy bear",
        "kite",
        "frisbee",
        "skis",
        "snowboard",
        "surfboard",
        "skateboard",
        "tennis racket",
        "baseball bat",
        "baseball glove",
        "ball",
        "umbrella");
    put(TREAT, "cup", "wine glass", "bowl", "bicycle");
    put(HOME, "car", "truck", "table", "vase", "plant", "bottle", "bench", "clock");
  }

  /** Nobody photographs them to remember a day. */
  private static final Set<String> DULL_THINGS =
      Set.of(
          "toilet",
          "sink",
          "refrigerator",
          "oven",
          "microwave",
          "toaster",
          "hair dryer",
          "toothbrush",
          "traffic light",
          "fire hydrant",
          "stop sign",
          "parking meter");

  private ThingWorth() {}

  private static void put(double worth, String... things) {
    for (String thing : things) {
      WORTH.put(thing, worth);
    }
  }

  /** Of all things together, 0 to 1: one more adds to what is left to 1. */
  static double of(List<Subject> things, PixelSize picture) {
    double left = 1;
    for (Subject thing : things) {
      left *= 1 - worth(thing) * prominence(thing, picture);
    }
    return 1 - left;
  }

  private static double worth(Subject thing) {
    return thing.isAnimal()
        ? ANIMAL
        : thing.isFood() ? FOOD : WORTH.getOrDefault(thing.what(), ANYTHING);
  }

  /** What a picture loses that is about a dull thing and about nothing else; 0 or less. */
  static double dullness(List<Subject> things, PixelSize picture) {
    String main = null;
    double most = 0;
    for (Subject thing : things) {
      double prominence = prominence(thing, picture);
      if (prominence > most) {
        most = prominence;
        main = thing.what();
      }
    }
    return main != null && DULL_THINGS.contains(main) && of(things, picture) < NOTHING_BETTER
        ? DULL
        : 0;
  }

  /** Surely seen, large and near the middle, 0 to 1. */
  private static double prominence(Subject thing, PixelSize picture) {
    double share = thing.box().within(picture).area() / (double) picture.area();
    double x = (thing.box().centreX() / picture.width() - 0.5) / MIDDLE_SIGMA;
    double y = (thing.box().centreY() / picture.height() - 0.5) / MIDDLE_SIGMA;
    return Math.min(1, thing.confidence() / SURE)
        * Math.min(1, Math.sqrt(share) / LARGE)
        * Math.exp(-(x * x + y * y) / 2);
  }
}
