package org.daymount.look;

import java.util.List;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Tells the picture of a back from a picture of the faces behind it: the largest person found
 * stands upright, shows no face where a head is, and is larger than everyone whose face is seen.
 */
public final class PersonInFront {
  private static final double LIKELY = 0.3;
  private static final double LARGE = 0.2; // of the picture
  private static final double LARGER = 1.2; // than the person whose face is largest
  private static final double HEAD_LEFT = 0.2; // of the width
  private static final double HEAD_RIGHT = 0.8;
  private static final double HEAD_DOWN_TO = 0.5; // of the height

  private PersonInFront() {}

  /**
   * @param faces that are seen
   * @param things people among them
   */
  public static boolean isSeenIn(List<Face> faces, List<Subject> things, PixelSize picture) {
    double persons =
        faces.stream()
            .mapToDouble(face -> face.headAndShoulders(picture).box().area())
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    return things.stream()
        .filter(thing -> thing.isPerson() && thing.confidence() >= LIKELY)
        .map(Subject::box)
        .filter(box -> box.height() >= box.width() && box.area() >= LARGE * picture.area())
        .filter(box -> box.area() >= LARGER * persons)
        .anyMatch(box -> faces.stream().noneMatch(face -> isHeadOf(box, face)));
  }

  private static boolean isHeadOf(PixelBox person, Face face) {
    double x = (face.box().centreX() - person.x()) / person.width();
    double y = (face.box().centreY() - person.y()) / person.height();
    return x > HEAD_LEFT && x < HEAD_RIGHT && y < HEAD_DOWN_TO;
  }
}
