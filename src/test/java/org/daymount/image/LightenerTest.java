package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Prints made lighter keep their hues. Measured here, apart from the program's own arithmetic, by
 * CIE 15 (L*a*b*, and the hue difference: the root of delta E squared less those of lightness and
 * chroma) on sRGB as IEC 61966-2-1 has it.
 */
class LightenerTest {
  private static final int STEP = 3; // 0, 3 ... 255 in each of three: 636,056 colours

  /** Lab of sRGB primaries as commonly published (from memory), to check the measure itself. */
  @Test
  void theMeasureKnowsThePrimaries() {
    assertArrayEquals(new double[] {53.24, 80.09, 67.20}, lab(0xff0000), 0.05);
    assertArrayEquals(new double[] {87.73, -86.18, 83.18}, lab(0x00ff00), 0.05);
    assertArrayEquals(new double[] {32.30, 79.19, -107.86}, lab(0x0000ff), 0.05);
    assertArrayEquals(new double[] {100, 0, 0}, lab(0xffffff), 0.02);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1 / 3.0, 2 / 3.0, 1})
  void noColourChangesItsHueByMoreThanOne(double stops) {
    Lightener lightener = new Lightener(new Lightening(stops));
    double worst = 0;
    String where = "";
    for (int rgb : grid()) {
      int lighter = lightener.lighten(rgb);
      double change = hueDifference(lab(rgb), lab(lighter));
      if (change > worst) {
        worst = change;
        where = "%06x to %06x: %.3f".formatted(rgb, lighter, change);
      }
    }
    assertTrue(worst <= 1, where);
    assertTrue(worst > 0, "nothing was measured");
  }

  @ParameterizedTest
  @ValueSource(doubles = {1 / 3.0, 2 / 3.0, 1})
  void noColourBecomesDarkerAndGreysStayGreyInTheirOrder(double stops) {
    Lightener lightener = new Lightener(new Lightening(stops));
    for (int rgb : grid()) {
      double before = lab(rgb)[0];
      double after = lab(lightener.lighten(rgb))[0];
      assertTrue(after >= before - 0.5, () -> Integer.toHexString(rgb)); // half a level of rounding
    }
    assertEquals(0, lightener.lighten(0));
    assertEquals(0xffffff, lightener.lighten(0xffffff));
    int last = -1;
    for (int level = 0; level < 256; level++) {
      int grey = lightener.lighten(level * 0x010101);
      assertEquals((grey & 0xff) * 0x010101, grey, "grey " + level);
      assertTrue((grey & 0xff) >= Math.max(last, level), "grey " + level);
      last = grey & 0xff;
    }
  }

  /** Middle grey by the reckoning of stops: twice the light is one stop more. */
  @Test
  void middleGreyGainsTheStopsAskedFor() {
    for (double stops : new double[] {1 / 3.0, 2 / 3.0, 1}) {
      int grey = new Lightener(new Lightening(stops)).lighten(0x767676) & 0xff; // about 18 %
      assertEquals(stops, Math.log(linear(grey) / linear(0x76)) / Math.log(2), 0.02);
    }
  }

  @Test
  void theCurveRisesEverywhereAndEndsAtBlackAndWhite() {
    for (double stops = 0; stops <= 1; stops += 0.05) {
      Lightening curve = new Lightening(stops);
      assertEquals(0, curve.of(0));
      assertEquals(1, curve.of(1), 1e-12);
      for (int i = 1; i <= 1000; i++) {
        assertTrue(curve.of(i / 1000.0) > curve.of((i - 1) / 1000.0), stops + " at " + i);
      }
    }
  }

  @Test
  void offIsTheVerySamePictureAndOnLeavesItsInputAlone() {
    BufferedImage picture = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 48; y++) {
      for (int x = 0; x < 64; x++) {
        picture.setRGB(x, y, x * 4 << 16 | y * 5 << 8 | (x ^ y) * 4);
      }
    }
    assertSame(picture, new Lightener(Lightening.NONE).lighten(picture));
    int[] before = picture.getRGB(0, 0, 64, 48, null, 0, 64);
    Lightener lightener = new Lightener(new Lightening(1 / 3.0));
    BufferedImage lighter = lightener.lighten(picture);
    assertArrayEquals(before, picture.getRGB(0, 0, 64, 48, null, 0, 64));
    for (int y = 0; y < 48; y++) {
      for (int x = 0; x < 64; x++) {
        int wanted = lightener.lighten(picture.getRGB(x, y) & 0xffffff);
        assertEquals(wanted, lighter.getRGB(x, y) & 0xffffff, x + "," + y);
      }
    }
  }

  @Test
  void moreThanAStopOrLessThanNothingIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Lightening(1.5));
    assertThrows(IllegalArgumentException.class, () -> new Lightening(-0.1));
    assertThrows(IllegalArgumentException.class, () -> new Lightening(Double.NaN));
  }

  private static int[] grid() {
    int side = 255 / STEP + 1;
    int[] colours = new int[side * side * side];
    int at = 0;
    for (int r = 0; r < 256; r += STEP) {
      for (int g = 0; g < 256; g += STEP) {
        for (int b = 0; b < 256; b += STEP) {
          colours[at++] = r << 16 | g << 8 | b;
        }
      }
    }
    return colours;
  }

  private static double hueDifference(double[] one, double[] other) {
    double da = one[1] - other[1];
    double db = one[2] - other[2];
    double dc = Math.hypot(one[1], one[2]) - Math.hypot(other[1], other[2]);
    return Math.sqrt(Math.max(0, da * da + db * db - dc * dc));
  }

  private static double[] lab(int rgb) {
    double r = linear(rgb >> 16 & 0xff);
    double g = linear(rgb >> 8 & 0xff);
    double b = linear(rgb & 0xff);
    double x = root((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
    double y = root(0.2126 * r + 0.7152 * g + 0.0722 * b);
    double z = root((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.0890);
    return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
  }

  private static double root(double t) {
    return t > Math.pow(6 / 29.0, 3) ? Math.cbrt(t) : (841 / 108.0) * t + 4 / 29.0;
  }

  private static double linear(int level) {
    double v = level / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }
}
