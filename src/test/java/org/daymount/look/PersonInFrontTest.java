package org.daymount.look;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

/** Boxes as found in photographs 640 pixels long. */
class PersonInFrontTest {
  private static final PixelSize PICTURE = new PixelSize(640, 291);

  private final Face guest = new Face(new PixelBox(304, 10, 59, 59), 0.99);
  private final Face cutOff = new Face(new PixelBox(468, 0, 91, 63), 0.99);

  @Test
  void aBackBeforeTheGuestsOfACafeIsInFront() {
    assertTrue(
        PersonInFront.isSeenIn(List.of(guest, cutOff), List.of(person(303, 0, 258, 279)), PICTURE));
  }

  @Test
  void someoneWhoseOwnFaceIsSeenIsNot() {
    Face own = new Face(new PixelBox(400, 20, 70, 80), 0.99);
    assertFalse(
        PersonInFront.isSeenIn(List.of(own, guest), List.of(person(303, 0, 258, 279)), PICTURE));
  }

  @Test
  void someoneAsLargeAsThoseBehindOrWideOrDoubtfulIsNot() {
    assertFalse(isInFront(person(480, 30, 100, 200)), "as large");
    assertFalse(isInFront(person(250, 90, 380, 200)), "several people in one box");
    assertFalse(isInFront(new Subject(new PixelBox(303, 0, 258, 279), "person", 0.2)), "doubtful");
    assertFalse(isInFront(new Subject(new PixelBox(303, 0, 258, 279), "chair", 0.9)), "a chair");
  }

  @Test
  void whereNoFaceIsSeenNobodyIsInFrontOfOne() {
    assertFalse(PersonInFront.isSeenIn(List.of(), List.of(person(303, 0, 258, 279)), PICTURE));
  }

  private boolean isInFront(Subject thing) {
    return PersonInFront.isSeenIn(List.of(guest, cutOff), List.of(thing), PICTURE);
  }

  private static Subject person(int x, int y, int width, int height) {
    return new Subject(new PixelBox(x, y, width, height), "person", 0.35);
  }
}
