package org.daymount.crop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.daymount.unit.PixelBox;
import org.junit.jupiter.api.Test;

/** How much of what a picture is about each thing in it is. */
class WeightedBoxTest {
  @Test
  void aThingInTheMiddleCountsByItsSurenessAndTheRootOfItsShare() {
    // a quarter of the picture: .8 times one half
    assertEquals(
        0.8 * 0.5,
        only(SomePhoto.of(4000, 3000).subject(1000, 750, 2000, 1500, "dog", 0.8)),
        1e-12);
  }

  @Test
  void aThingOffTheMiddleCountsLessByTheNormalCurve() {
    // The middle of the box is .4 of the width and .2 of the height off: .5 and .25 sigma.
    // Ordinates
    // of the normal curve at 0, .25 and .5 are .3989, .3867 and .3521 (any statistical table).
    double off = 0.3521 / 0.3989 * 0.3867 / 0.3989;
    double share = Math.sqrt(400 * 300 / 12e6);
    for (int[] corner : new int[][] {{3400, 1950}, {200, 1950}, {3400, 750}, {200, 750}}) {
      SomePhoto photo = SomePhoto.of(4000, 3000).subject(corner[0], corner[1], 400, 300, "dog", 1);
      assertEquals(off * share, only(photo), 1e-3 * share);
    }
  }

  @Test
  void aTableCountsLessThanWhoSitsAtIt() {
    assertEquals(
        List.of("person", "table"),
        names(
            SomePhoto.of(4000, 3000)
                .subject(500, 1000, 3000, 1500, "table", 0.9)
                .subject(1500, 800, 900, 1200, "person", 0.9)));
    assertEquals(
        List.of("boat", "person"),
        names(
            SomePhoto.of(4000, 3000)
                .subject(500, 1000, 3000, 1500, "boat", 0.9)
                .subject(1500, 800, 900, 1200, "person", 0.9)));
  }

  @Test
  void aFaceAloneStandsForHeadAndShoulders() {
    List<WeightedBox> boxes = all(SomePhoto.of(4000, 3000).face(1800, 1000, 200, 300, 0.7));
    assertEquals(1, boxes.size());
    assertEquals("person", boxes.get(0).subject().what());
    assertEquals(0.7, boxes.get(0).subject().confidence());
    // half a face above, one to each side, two below
    assertEquals(new PixelBox(1600, 850, 600, 1050), boxes.get(0).box());
  }

  @Test
  void aFaceMostOfWhichLiesInAPersonIsThatPersons() {
    SomePhoto photo =
        SomePhoto.of(4000, 3000)
            .subject(1500, 1100, 900, 1500, "person", 0.9)
            .face(1800, 1000, 200, 300, 0.7); // two thirds of it inside
    assertEquals(List.of("person"), names(photo));
  }

  @Test
  void aFaceMostOfWhichLiesOutsideAPersonIsSomebodyElses() {
    SomePhoto photo =
        SomePhoto.of(4000, 3000)
            .subject(1500, 1200, 900, 1500, "person", 0.9)
            .face(1800, 1000, 200, 300, 0.7); // one third of it inside
    assertEquals(List.of("person", "person"), names(photo));
  }

  @Test
  void aFaceBeforeADogIsNotTheDogs() {
    SomePhoto photo =
        SomePhoto.of(4000, 3000)
            .subject(500, 300, 3000, 2400, "dog", 0.9)
            .face(1800, 1000, 200, 300, 0.7);
    assertEquals(List.of("dog", "person"), names(photo));
  }

  private static double only(SomePhoto photo) {
    List<WeightedBox> boxes = all(photo);
    assertEquals(1, boxes.size());
    return boxes.get(0).weight();
  }

  private static List<String> names(SomePhoto photo) {
    return all(photo).stream().map(box -> box.subject().what()).toList();
  }

  private static List<WeightedBox> all(SomePhoto photo) {
    return WeightedBox.all(photo.measures(), photo.size());
  }
}
