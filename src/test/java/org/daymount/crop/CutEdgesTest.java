package org.daymount.crop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.daymount.look.SaliencyMap;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Test;

/**
 * A thing is kept with a margin or cut clearly, not touched by the edge: common practice, no
 * source.
 */
class CutEdgesTest {
  private static final PaperSize TALL = PaperSize.inches(4, 6);
  private static final PixelSize LYING = new PixelSize(960, 480); // a window is 320 wide
  private static final SlidingWindow SLIDE = SlidingWindow.of(LYING, TALL);

  @Test
  void anEdgeThatTouchesAThingOrTakesASliverIsAFaultAndACutIsNone() {
    CutEdges edges = new CutEdges(List.of(new Extent(300, 500)), List.of(), SLIDE);
    assertTrue(edges.price(300) > 0, "touches");
    assertTrue(edges.price(295) > 0, "5 px, 1.6 %");
    assertTrue(edges.price(305) > 0, "takes a sliver");
    assertEquals(0, edges.price(290), "a margin of 3 %");
    assertEquals(0, edges.price(330), "cuts clearly");
    assertEquals(0, edges.price(600), "does not show it");
  }

  @Test
  void thePicturesOwnEdgesAreNobodysFault() {
    CutEdges edges = new CutEdges(List.of(new Extent(2, 200)), List.of(), SLIDE);
    assertEquals(0, edges.price(0));
    assertEquals(0, edges.price(5));
    CutEdges last = new CutEdges(List.of(new Extent(800, 957)), List.of(), SLIDE);
    assertEquals(0, last.price(640));
  }

  @Test
  void aFaceIsKeptWholeOrLostWhole() {
    CutEdges edges = new CutEdges(List.of(), List.of(new Extent(300, 340)), SLIDE);
    assertTrue(edges.price(320) > 0);
    assertTrue(edges.price(0) > 0, "ends at 320");
    assertEquals(0, edges.price(340));
    assertEquals(0, edges.price(290));
  }

  @Test
  void theMainThingHasAsMuchMarginAsThereIsRoomFor() {
    // 310 px in a window of 320: five at each side, though the rest matters more to the right.
    SomePhoto boat = drawnTo(900).subject(300, 0, 310, 480, "boat", 0.8);
    assertEquals(295, window(boat).x(), 1);
    // 280 px: the whole margin of 2.5 %, 8 px.
    assertEquals(588 - 320, window(drawnTo(260).subject(300, 0, 280, 480, "boat", 0.8)).x(), 1);
  }

  @Test
  void anotherSureThingIsNotTouchedEither() {
    // With the boat's margin the window ends at 674 at most, where most is kept: in the dog's tail.
    SomePhoto boats =
        drawnTo(660)
            .subject(362, 100, 138, 300, "boat", 0.9)
            .subject(560, 200, 120, 160, "dog", 0.6);
    PixelBox window = window(boats);
    int gap = window.right() - 680;
    assertTrue(gap >= 8 || gap <= -9, "the dog ends " + gap + " px before the edge");
  }

  @Test
  void ofTwoThatDoNotBothFitOneIsKeptWholeRatherThanHalfOfEach() {
    SomePhoto giraffes =
        SomePhoto.of(960, 480)
            .subject(100, 0, 280, 480, "giraffe", 0.6)
            .subject(360, 0, 280, 480, "giraffe", 0.7);
    PixelBox window = window(giraffes);
    assertTrue(window.x() <= 352 && window.right() >= 648, window.toString());
  }

  @Test
  void aStrangersFaceIsNotCutThrough() {
    // With the giraffe's margin the window begins at 88 at least.
    SomePhoto zoo =
        SomePhoto.of(960, 480).subject(260, 0, 140, 480, "giraffe", 0.9).face(60, 60, 40, 40, 0.9);
    PixelBox window = window(zoo);
    assertTrue(window.x() >= 100, window.toString());
  }

  /** A picture of which pixels alone would say that all the interest is around there. */
  private static SomePhoto drawnTo(int x) {
    float[] weights = new float[96];
    Arrays.fill(weights, 0.01f);
    weights[x / 10] = 0.2f;
    return new SomePhoto(LYING, new SaliencyMap(96, 1, weights));
  }

  private static PixelBox window(SomePhoto photo) {
    return new CropSearch(photo.looked(), TALL, CropSettings.of(Ppi.ppi(300), Ppi.ppi(100)))
        .window();
  }
}
