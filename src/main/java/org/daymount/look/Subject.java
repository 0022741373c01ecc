package org.daymount.look;

import java.util.Set;
import org.daymount.unit.PixelBox;

/**
 * Something a picture may be about.
 *
 * @param box upright pixels of the whole picture
 * @param what in a person's words: "person", "dog", "boat"
 * @param confidence 0 to 1
 */
public record Subject(PixelBox box, String what, double confidence) {
  private static final Set<String> ANIMALS =
      Set.of("bird", "cat", "dog", "horse", "sheep", "cow", "elephant", "bear", "zebra", "giraffe");
  private static final Set<String> FOOD =
      Set.of(
          "banana",
          "apple",
          "sandwich",
          "orange",
          "broccoli",
          "carrot",
          "hot dog",
          "pizza",
          "donut",
          "cake");
  private static final Set<String> FOOD_LIES_IN = Set.of("bowl", "table");

  public boolean isAnimal() {
    return ANIMALS.contains(what);
  }

  public boolean isFood() {
    return FOOD.contains(what);
  }

  /** Food, or what is photographed for the food that lies in or on it. */
  public boolean isMeal() {
    return isFood() || FOOD_LIES_IN.contains(what);
  }
}
