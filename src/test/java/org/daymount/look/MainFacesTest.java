package org.daymount.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

/** Places and sizes are those of photographs that were marked by hand, 640 pixels long. */
class MainFacesTest {
  private static final PixelSize PICTURE = new PixelSize(640, 480);

  @Test
  void peopleBehindAMotherAndChildAreBystanders() {
    Face child = face(37, 194, 107, 112, 1);
    Face mother = face(422, 6, 146, 150, 1);
    Face behind = face(249, 3, 34, 41, 1);
    List<Face> all = List.of(child, mother, behind);
    assertEquals(List.of(mother, child), MainFaces.of(all, List.of(), PICTURE));
    assertEquals(List.of(behind), MainFaces.bystanders(all, List.of(), PICTURE));
  }

  @Test
  void aLargeHeadTurnedAwayAtTheEdgeDoesNotMakeTheSmileInTheMiddleABystander() {
    Face stranger = face(0, 150, 120, 140, 0);
    Face smile = face(290, 180, 70, 80, 1);
    assertTrue(MainFaces.of(List.of(stranger, smile), List.of(), PICTURE).contains(smile));
  }

  @Test
  void aFaceIsTheMoreWhatAPictureIsAboutTheLargerTheNearerTheMiddleAndWhenItLooksAtUs() {
    double best = MainFaces.prominence(face(280, 200, 80, 80, 1), PICTURE);
    assertTrue(best > MainFaces.prominence(face(300, 220, 40, 40, 1), PICTURE), "size");
    assertTrue(best > MainFaces.prominence(face(20, 200, 80, 80, 1), PICTURE), "middle");
    assertTrue(best > MainFaces.prominence(face(280, 200, 80, 80, 0), PICTURE), "facing");
    assertTrue(best > 2 * MainFaces.prominence(face(280, 0, 80, 80, 1), PICTURE), "cut off");
  }

  @Test
  void besideALargeAnimalOrBusASmallFaceIsAnOnlookers() {
    Face onlooker = face(30, 110, 40, 48, 0);
    Subject visitor = new Subject(new PixelBox(0, 80, 75, 400), "person", 0.43);
    Subject giraffe = new Subject(new PixelBox(105, 140, 255, 335), "giraffe", 0.62);
    assertEquals(List.of(), MainFaces.of(List.of(onlooker), List.of(visitor, giraffe), PICTURE));
    assertEquals(
        List.of(onlooker),
        MainFaces.bystanders(List.of(onlooker), List.of(visitor, giraffe), PICTURE));
  }

  @Test
  void aRiderIsNotAnOnlookerOfHisMotorcycle() {
    Face rider = face(290, 130, 43, 43, 1);
    Subject person = new Subject(new PixelBox(200, 100, 250, 300), "person", 0.44);
    Subject motorcycle = new Subject(new PixelBox(100, 200, 400, 270), "motorcycle", 0.72);
    assertEquals(
        List.of(rider), MainFaces.of(List.of(rider), List.of(person, motorcycle), PICTURE));
  }

  @Test
  void whatIsNoFaceIsNobody() {
    assertEquals(
        List.of(),
        MainFaces.of(List.of(new Face(new PixelBox(9, 9, 99, 99), 0.5)), List.of(), PICTURE));
  }

  private static Face face(int x, int y, int width, int height, double facing) {
    return new Face(new PixelBox(x, y, width, height), 0.95, facing);
  }
}
