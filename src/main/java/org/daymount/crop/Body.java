package org.daymount.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.look.Face;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Where a person may be cut by the lower edge of a print: at the chest, the waist or the thigh, not
 * at the neck, the knee or the ankle (common practice in portraits, no source). Joints are taken
 * from the standing height H as parts of it: chin .130, shoulder .182, hip .470, knee .715, ankle
 * .961 from the top (Drillis and Contini, "Body segment parameters", 1966; from memory). Wrists
 * cannot be known from boxes.
 *
 * @param top of the head, in pixels of the picture; may lie above it
 * @param height of the whole person when standing, in pixels
 * @param end where the person ends in the picture; below it nothing is cut
 * @param standsWhole whether the person is seen from head to foot, so that knees are where they
 *     should be; else only the neck is known
 */
record Body(int top, double height, int end, boolean standsWhole) {
  private static final double NECK_FROM = 0.10;
  private static final double NECK_TO = 0.21;
  private static final double CHEST = 0.22; // below the shoulders
  private static final double KNEE_FROM = 0.66;
  private static final double KNEE_TO = 0.77;
  private static final double ANKLE_FROM = 0.91;

  private static final double HEADS_HIGH = 7.5; // an adult, common practice in drawing, no source
  private static final double HEAD = 1.8; // of a face's box: hair and chin come on top
  private static final double HAIR = 0.6;
  private static final double STANDING = 2; // a box so much higher than wide

  /** Of the people a picture is about: those whose faces are seen, and those seen from behind. */
  static List<Body> of(List<Face> faces, List<PixelBox> persons, PixelSize picture) {
    List<Body> bodies = new ArrayList<>();
    for (Face face : faces) {
      bodies.add(of(face, holding(face, persons), picture));
    }
    for (PixelBox person : persons) {
      boolean isSeen = faces.stream().anyMatch(face -> holds(person, face));
      if (!isSeen && standsWhole(person, picture)) {
        bodies.add(new Body(person.y(), person.height(), person.bottom(), true));
      }
    }
    return bodies;
  }

  private static Body of(Face face, Optional<PixelBox> person, PixelSize picture) {
    int top = (int) (face.box().y() - HAIR * face.box().height());
    if (person.isPresent() && standsWhole(person.get(), picture)) {
      return new Body(top, person.get().bottom() - top, person.get().bottom(), true);
    }
    double height = HEADS_HIGH * HEAD * face.box().height();
    return new Body(top, height, person.map(PixelBox::bottom).orElse(picture.height()), false);
  }

  private static Optional<PixelBox> holding(Face face, List<PixelBox> persons) {
    return persons.stream().filter(person -> holds(person, face)).findFirst();
  }

  private static boolean holds(PixelBox person, Face face) {
    return person.sharedArea(face.box()) > face.box().area() / 2;
  }

  /** One whose feet the picture's own edge cuts is not seen whole. */
  private static boolean standsWhole(PixelBox person, PixelSize picture) {
    return person.height() >= STANDING * person.width() && person.bottom() < picture.height() - 1;
  }

  /** Whether a window's lower edge goes through a joint. In a close-up it may cut the neck. */
  boolean isCutAtJoint(PixelBox window) {
    int bottom = window.bottom();
    double share = (bottom - top) / height;
    boolean joint =
        share > NECK_FROM && share < NECK_TO && !isCloseUp(window)
            || standsWhole && (share > KNEE_FROM && share < KNEE_TO || share > ANKLE_FROM);
    return joint && bottom < end;
  }

  /** Whether a window shows the person from the head to the chest at least, or is a close-up. */
  boolean isSeenToChest(PixelBox window) {
    return isCloseUp(window)
        || window.y() <= Math.max(0, top) && window.bottom() >= Math.min(end, top + CHEST * height);
  }

  private boolean isCloseUp(PixelBox window) {
    double face = height / HEADS_HIGH / HEAD;
    return face >= FaceRoom.FILLS * window.height();
  }
}
