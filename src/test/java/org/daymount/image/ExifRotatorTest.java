package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.daymount.photo.ExifOrientation;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

class ExifRotatorTest {
  /**
   * CIPA DC-008, 4.6.4 A: which side of the upright scene row 0 and column 0 are. The stored
   * picture is 3 x 2 and its pixels are numbered 1 to 6 along its rows.
   */
  @Test
  void eachValueTurnsThePictureAsTheStandardSays() {
    assertUpright(ExifOrientation.TOP_LEFT, "123/456");
    assertUpright(ExifOrientation.TOP_RIGHT, "321/654");
    assertUpright(ExifOrientation.BOTTOM_RIGHT, "654/321");
    assertUpright(ExifOrientation.BOTTOM_LEFT, "456/123");
    assertUpright(ExifOrientation.LEFT_TOP, "14/25/36");
    assertUpright(ExifOrientation.RIGHT_TOP, "41/52/63");
    assertUpright(ExifOrientation.RIGHT_BOTTOM, "63/52/41");
    assertUpright(ExifOrientation.LEFT_BOTTOM, "36/25/14");
  }

  private static void assertUpright(ExifOrientation orientation, String expected) {
    BufferedImage stored = new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 6; i++) {
      stored.setRGB(i % 3, i / 3, i + 1);
    }
    BufferedImage upright = ExifRotator.upright(stored, orientation);
    StringBuilder rows = new StringBuilder();
    for (int y = 0; y < upright.getHeight(); y++) {
      rows.append(y == 0 ? "" : "/");
      for (int x = 0; x < upright.getWidth(); x++) {
        rows.append(upright.getRGB(x, y) & 0xff);
      }
    }
    assertEquals(expected, rows.toString(), orientation.toString());
  }

  @Property
  void aBoxGoesToTheStoredPictureAndBackUnchanged(
      @ForAll ExifOrientation orientation,
      @ForAll @IntRange(min = 1, max = 9000) int width,
      @ForAll @IntRange(min = 1, max = 9000) int height,
      @ForAll @IntRange(min = -100, max = 9000) int x,
      @ForAll @IntRange(min = -100, max = 9000) int y,
      @ForAll @IntRange(min = 1, max = 9000) int boxWidth,
      @ForAll @IntRange(min = 1, max = 9000) int boxHeight) {
    PixelSize upright = new PixelSize(width, height);
    PixelBox box = new PixelBox(x, y, boxWidth, boxHeight);
    PixelBox stored = ExifRotator.toStored(box, upright, orientation);
    assertEquals(box, ExifRotator.toUpright(stored, orientation.stored(upright), orientation));
    assertEquals(
        orientation.stored(upright).whole(),
        ExifRotator.toStored(upright.whole(), upright, orientation));
  }

  @Property(tries = 200)
  void aBoxHoldsTheSamePixelsBeforeAndAfterTurning(
      @ForAll ExifOrientation orientation,
      @ForAll @IntRange(min = 0, max = 6) int x,
      @ForAll @IntRange(min = 0, max = 4) int y,
      @ForAll @IntRange(min = 1, max = 5) int boxWidth,
      @ForAll @IntRange(min = 1, max = 3) int boxHeight) {
    BufferedImage stored = Painted.scene(11, 11);
    BufferedImage upright = ExifRotator.upright(stored, orientation);
    PixelBox box = new PixelBox(x, y, boxWidth, boxHeight);
    PixelBox there = ExifRotator.toStored(box, new PixelSize(11, 11), orientation);
    TestPhotos.assertSamePixels(
        upright.getSubimage(x, y, boxWidth, boxHeight),
        ExifRotator.upright(
            stored.getSubimage(there.x(), there.y(), there.width(), there.height()), orientation),
        0);
  }
}
