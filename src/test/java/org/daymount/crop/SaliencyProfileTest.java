package org.daymount.crop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.daymount.look.SaliencyMap;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

/**
 * How much of what a picture is about a window keeps; all by areas that can be added up by hand.
 */
class SaliencyProfileTest {
  private static final PixelSize LYING = new PixelSize(960, 480); // windows are 480 wide
  private static final PixelSize STANDING = new PixelSize(480, 960);

  @Test
  void whereNothingStandsOutAWindowKeepsItsShareOfThePicture() {
    SaliencyProfile interest = of(SomePhoto.of(960, 480));
    assertEquals(0.5, interest.kept(0), 1e-6);
    assertEquals(0.5, interest.kept(137), 1e-6);
    assertEquals(480, interest.middle(), 1);
  }

  @Test
  void theMapCountsWhereItsCellsLie() {
    // 12 x 6 cells; one is three times as heavy as another
    float[] weights = new float[72];
    weights[2 * 12 + 1] = 3; // x 80 to 160, y 160 to 240
    weights[4 * 12 + 10] = 1; // x 800 to 880
    SaliencyProfile lying = of(new SomePhoto(LYING, new SaliencyMap(12, 6, weights)));
    assertEquals(0.75, lying.kept(0), 1e-6);
    assertEquals(0.25, lying.kept(480), 1e-6);

    float[] turned = new float[72];
    turned[1 * 6 + 2] = 3;
    turned[10 * 6 + 4] = 1;
    SaliencyProfile standing = of(new SomePhoto(STANDING, new SaliencyMap(6, 12, turned)));
    assertEquals(0.75, standing.kept(0), 1e-6);
    assertEquals(0.25, standing.kept(480), 1e-6);
  }

  @Test
  void whatWasFoundCountsTwiceAsMuchAsTheRest() {
    // The box is 230 px wide; from 300 on there are 175 of it.
    SaliencyProfile lying = of(new SomePhoto(LYING, EVEN).subject(245, 0, 230, 480, "boat", 0.6));
    assertEquals(0.5 / 3 + 2 / 3.0, lying.kept(0), 1e-6);
    assertEquals(0.5 / 3 + 2 / 3.0 * 175 / 230, lying.kept(300), 1e-6);
    SaliencyProfile standing =
        of(new SomePhoto(STANDING, EVEN).subject(0, 245, 480, 230, "boat", 0.6));
    assertEquals(0.5 / 3 + 2 / 3.0 * 175 / 230, standing.kept(300), 1e-6);
  }

  @Test
  void whereHalfLiesBeforeAndHalfAfterIsTheMiddle() {
    // In front of 360: a third of 360/960 and two thirds of 1/2 are .4583; the rest up to a half
    // comes at a third of 1/960 and two thirds of 1/230 a pixel.
    SaliencyProfile interest =
        of(new SomePhoto(LYING, EVEN).subject(245, 0, 230, 480, "boat", 0.6));
    double rest = (0.5 - (360 / 960.0 + 2 * 0.5) / 3) / ((1 / 960.0 + 2 / 230.0) / 3);
    assertEquals(360 + rest, interest.middle(), 1);
  }

  @Test
  void amongThingsEachCountsByItsWeightAndItsSize() {
    SomePhoto photo =
        new SomePhoto(LYING, EVEN)
            .subject(100, 0, 200, 480, "boat", 0.9)
            .subject(600, 240, 150, 160, "dog", 0.8);
    List<WeightedBox> boxes = WeightedBox.all(photo.measures(), photo.size());
    double boat = boxes.get(0).weight() * 200 * 480;
    double dog = boxes.get(1).weight() * 150 * 160;
    assertEquals(0.5 / 3 + 2 / 3.0 * boat / (boat + dog), of(photo).kept(0), 1e-6);
  }

  @Test
  void whatIsSeenTwiceCountsOnce() {
    SomePhoto once =
        new SomePhoto(LYING, EVEN)
            .subject(100, 100, 200, 200, "boat", 0.9)
            .subject(600, 100, 200, 200, "dog", 0.8);
    double before = of(once).kept(0);
    once.subject(100, 100, 200, 200, "person", 0.7);
    assertEquals(before, of(once).kept(0), 1e-9);
  }

  private static final SaliencyMap EVEN = SaliencyMap.even(12, 12);

  private static SaliencyProfile of(SomePhoto photo) {
    SlidingWindow slide = SlidingWindow.of(photo.size(), PaperSize.inches(4, 4));
    return new SaliencyProfile(photo.measures(), photo.size(), slide);
  }
}
