package org.daymount.look;

import java.util.Set;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Something a picture may be about.
 *
 * @param box upright pixels of the whole picture
 * @param what in a person's words: "person", "dog", "boat"
 * @param confidence 0 to 1
 */
public record Subject(PixelBox box, String what, double confidence) {
  /** From here on a thing is taken for what it is said to be. */
  public static final double SURE = 0.5;

  public static final String PERSON = "person";
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

  private static final double MIDDLE_SIGMA = 0.8; // of each side

  /**
   * How much of a picture it is: confidence x square root of its share of the picture x a Gaussian
   * around the middle, 0 to 1.
   */
  public double weight(PixelSize picture) {
    PixelBox inside = box.within(picture);
    double x = (inside.centreX() / picture.width() - 0.5) / MIDDLE_SIGMA;
    double y = (inside.centreY() / picture.height() - 0.5) / MIDDLE_SIGMA;
    double share = inside.area() / (double) picture.area();
    return confidence * Math.sqrt(share) * Math.exp(-(x * x + y * y) / 2);
  }

  /** Whether most of a face lies in it. */
  public boolean holds(Face face) {
    return box.sharedArea(face.box()) > face.box().area() / 2;
  }

  public boolean isPerson() {
    return what.equals(PERSON);
  }

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
