package org.daymount.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Rectangle;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PixelTest {
  private static final PixelSize PICTURE = new PixelSize(40, 30);

  @Provide
  Arbitrary<PixelBox> boxes() {
    Arbitrary<Integer> place = Arbitraries.integers().between(-50, 50);
    Arbitrary<Integer> size = Arbitraries.integers().between(1, 60);
    return Combinators.combine(place, place, size, size).as(PixelBox::new);
  }

  private static Rectangle awt(PixelBox box) {
    return new Rectangle(box.x(), box.y(), box.width(), box.height());
  }

  /** Held against java.awt.Rectangle, whose right and bottom edges also lie outside. */
  @Property
  void boxesMeetAsRectanglesDo(@ForAll("boxes") PixelBox one, @ForAll("boxes") PixelBox other) {
    Rectangle shared = awt(one).intersection(awt(other));
    assertEquals(awt(one).intersects(awt(other)), one.overlaps(other));
    assertEquals(awt(one).contains(awt(other)), one.contains(other));
    assertEquals(shared.isEmpty() ? 0 : (long) shared.width * shared.height, one.sharedArea(other));
    assertEquals(awt(one).union(awt(other)), awt(one.around(other)));
  }

  @Property
  void whatIsLeftInsideThePictureIsTheSharedPart(@ForAll("boxes") PixelBox box) {
    PixelBox inside = box.within(PICTURE);
    assertTrue(PICTURE.whole().contains(inside));
    if (box.overlaps(PICTURE.whole())) {
      assertEquals(awt(box).intersection(awt(PICTURE.whole())), awt(inside));
    } else {
      assertEquals(1, Math.min(inside.width(), inside.height()));
    }
  }

  @Property
  void fourQuarterTurnsGiveTheBoxBack(@ForAll("boxes") PixelBox box) {
    PixelBox turned = box;
    PixelSize whole = PICTURE;
    for (int turn = 1; turn <= 4; turn++) {
      turned = turned.turned(whole, 1);
      whole = whole.turned();
      assertEquals(turned, box.turned(PICTURE, turn));
      assertEquals(whole, PICTURE.turned(turn));
      assertEquals(box.area(), turned.area());
    }
    assertEquals(box, turned);
  }

  @Test
  void aTurnIsClockwise() {
    PixelBox topLeft = new PixelBox(1, 2, 5, 3);
    assertEquals(new PixelBox(30 - 5, 1, 3, 5), topLeft.turned(PICTURE, 1));
    assertEquals(new PixelBox(40 - 6, 30 - 5, 5, 3), topLeft.turned(PICTURE, 2));
    assertEquals(new PixelBox(2, 40 - 6, 3, 5), topLeft.turned(PICTURE, 3));
  }

  @Test
  void aBoxIsSeenAtAnotherSizeToTheNearestPixel() {
    PixelBox box = new PixelBox(4, 6, 8, 10);
    assertEquals(new PixelBox(40, 30, 80, 50), box.scaled(PICTURE, new PixelSize(400, 150)));
    assertEquals(new PixelBox(2, 3, 4, 5), box.scaled(PICTURE, new PixelSize(20, 15)));
    assertEquals(new PixelBox(0, 0, 1, 1), box.scaled(PICTURE, new PixelSize(1, 1)));
    assertEquals(box, box.scaled(PICTURE, PICTURE));
    // 20 to 21 and 16 to 17 of 40 x 30 would be nothing at a quarter
    assertEquals(
        new PixelBox(5, 4, 1, 1), new PixelBox(20, 16, 1, 1).scaled(PICTURE, new PixelSize(10, 8)));
  }

  @Test
  void aBoxKnowsItsEdgesAndItsMiddle() {
    PixelBox box = PixelBox.edges(3, 5, 10, 9);
    assertEquals(new PixelBox(3, 5, 7, 4), box);
    assertEquals(10, box.right());
    assertEquals(9, box.bottom());
    assertEquals(6.5, box.centreX());
    assertEquals(7, box.centreY());
    assertEquals(28, box.area());
    assertEquals(new PixelSize(7, 4), box.size());
    assertEquals(PixelBox.edges(2, 3, 13, 13), box.grown(1, 2, 3, 4));
    assertEquals(10_000_000_000L, new PixelBox(0, 0, 100_000, 100_000).area());
  }

  @Test
  void aSizeHasAShape() {
    assertEquals(Orientation.LANDSCAPE, PICTURE.direction());
    assertEquals(Orientation.PORTRAIT, PICTURE.turned().direction());
    assertEquals(Orientation.SQUARE, new PixelSize(5, 5).direction());
    assertEquals(40, PICTURE.longEdge());
    assertEquals(40, PICTURE.turned().longEdge());
    assertEquals(30, PICTURE.shortEdge());
    assertEquals(4 / 3.0, PICTURE.aspect());
    assertEquals(1200, PICTURE.area());
    assertEquals(10_000_000_000L, new PixelSize(100_000, 100_000).area());
    assertEquals("40 x 30", PICTURE.toString());
  }

  @Property
  void aPictureIsMadeSmallerNeverLarger(
      @ForAll @IntRange(min = 1, max = 9000) int width,
      @ForAll @IntRange(min = 1, max = 9000) int height,
      @ForAll @IntRange(min = 1, max = 9000) int longEdge) {
    PixelSize whole = new PixelSize(width, height);
    PixelSize smaller = whole.within(longEdge);
    if (whole.longEdge() <= longEdge) {
      assertSame(whole, smaller);
    } else {
      assertEquals(longEdge, smaller.longEdge());
      double exact = whole.shortEdge() * (double) longEdge / whole.longEdge();
      assertEquals(Math.max(1, exact), smaller.shortEdge(), 0.5);
    }
  }

  @Test
  void withoutPixelsThereIsNoPicture() {
    assertThrows(IllegalArgumentException.class, () -> new PixelSize(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new PixelSize(1, 0));
    assertThrows(IllegalArgumentException.class, () -> new PixelBox(0, 0, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new PixelBox(0, 0, 1, 0));
    assertEquals(1, new PixelSize(1, 1).area());
    assertFalse(new PixelBox(0, 0, 1, 1).overlaps(new PixelBox(1, 1, 1, 1)));
  }
}
