package org.daymount.look;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.daymount.evaluate.Alter;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

class MeasurerTest {
  private static final SaliencyMap EVEN = SaliencyMap.even(1, 1);

  private final Measurer measurer = new Measurer();

  @Property(tries = 60)
  void aBlurredCopyNeverBeatsItsOriginal(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @DoubleRange(min = 0.5, max = 4) double sigma) {
    BufferedImage sharp = Painted.scene(160, 120, seed);
    BufferedImage soft = Alter.blurred(sharp, sigma);
    PixelBox box = new PixelBox(40, 30, 80, 60);
    Measures better = measurer.measure(sharp);
    Measures worse = measurer.measure(soft);
    assertTrue(worse.sharpness() < better.sharpness(), "sharpness");
    assertTrue(worse.clarity() < better.clarity(), "clarity");
    assertTrue(
        measurer.sharpnessIn(soft, box, worse.map())
            < measurer.sharpnessIn(sharp, box, better.map()),
        "sharpness in a box");
  }

  @Property(tries = 60)
  void everyMeasureOfAnyPictureIsInItsRange(
      @ForAll @IntRange(min = 1, max = 200) int width,
      @ForAll @IntRange(min = 1, max = 200) int height,
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Measures measures = measurer.measure(Painted.scene(width, height, seed));
    assertTrue(measures.sharpness() >= 0);
    assertTrue(measures.clarity() >= 0 && measures.clarity() <= 1);
    assertTrue(measures.exposure() >= 0 && measures.exposure() <= 1);
    measures.fingerprint().moments().forEach(m -> assertTrue(m >= 0 && m <= 1, "moment " + m));
    assertEquals(81, measures.fingerprint().moments().size());
    double sum = 0;
    for (int row = 0; row < measures.map().rows(); row++) {
      for (int column = 0; column < measures.map().columns(); column++) {
        sum += measures.map().weight(column, row);
      }
    }
    assertEquals(1, sum, 1e-4);
  }

  @Test
  void theSameFingerprintComesFromTheSamePictureSavedSmaller() {
    BufferedImage picture = Painted.scene(800, 600, 7);
    Fingerprint large = measurer.measure(picture).fingerprint();
    Fingerprint small =
        measurer.measure(Alter.saved(Alter.smaller(picture, 0.4), 0.7f)).fingerprint();
    assertTrue(large.bitsApart(small) <= 12, "bits " + large.bitsApart(small));
    assertTrue(large.coloursApart(small) <= 0.03, "colours " + large.coloursApart(small));
  }

  @Test
  void aPlainPictureHasNoSharpnessNoClarityAndItsOwnTone() {
    Measures grey = measurer.measure(Painted.plain(100, 80, new Color(115, 115, 115)));
    assertEquals(0, grey.sharpness(), 1e-6);
    assertEquals(0, grey.clarity(), 1e-6);
    assertEquals(115 / 255f, grey.fingerprint().moments().get(0), 1e-4f);
    assertEquals(0, measurer.measure(Painted.plain(100, 80, Color.WHITE)).exposure());
    assertEquals(0, measurer.measure(Painted.plain(100, 80, Color.BLACK)).exposure());
  }

  /**
   * All 256 tones equally often: entropy is exactly 6 bits in 64 bins; burnt are 6 of 256, blocked
   * 7 of 256; the middle is 127. By the formula: 1 - 1.5 (6/256 - .005) - .75 (7/256 - .02).
   */
  @Test
  void anEvenRampOfTonesHasTheExposureTheFormulaGives() {
    BufferedImage ramp = new BufferedImage(256, 4, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 256; x++) {
      for (int y = 0; y < 4; y++) {
        ramp.setRGB(x, y, x << 16 | x << 8 | x);
      }
    }
    double expected = 1 - 1.5 * (6 / 256.0 - 0.005) - 0.75 * (7 / 256.0 - 0.02);
    assertEquals(expected, measurer.measure(ramp).exposure(), 1e-6);
  }

  /**
   * A single white pixel on black: the Laplacian of a Gaussian sampled around it. Its energy is the
   * weighted sum of squares of (taps of sigma 1) convolved with (0 1 0, 1 -4 1, 0 1 0), worked out
   * here with its own loops; the weight is a Gaussian with a sigma of 41 / 4.
   */
  @Test
  void sharpnessInABoxIsTheRootMeanOfTheEnergyOfTheBlurredLaplacianInCellsOfEight() {
    BufferedImage dot = Painted.plain(41, 41, Color.BLACK);
    dot.setRGB(20, 20, 0xffffff);
    double[] g = new double[11];
    double total = 0;
    for (int i = -3; i <= 3; i++) {
      total += Math.exp(-i * i / 2.0);
    }
    for (int i = -3; i <= 3; i++) {
      g[i + 5] = Math.exp(-i * i / 2.0) / total;
    }
    double[][] energies = new double[5][5];
    for (int y = 16; y < 25; y++) {
      for (int x = 16; x < 25; x++) {
        int i = x - 15;
        int j = y - 15;
        double beside = g[i - 1] * g[j] + g[i + 1] * g[j] + g[i] * g[j - 1] + g[i] * g[j + 1];
        double laplacian = 255 * (beside - 4 * g[i] * g[j]);
        energies[y / 8][x / 8] += laplacian * laplacian / 64;
      }
    }
    double roots = 0;
    double weights = 0;
    for (int row = 0; row < 5; row++) {
      for (int column = 0; column < 5; column++) {
        double x = 8 * column + 4 - 20.5;
        double y = 8 * row + 4 - 20.5;
        double weight = Math.exp(-(x * x + y * y) / (2 * 10.25 * 10.25));
        roots += weight * Math.sqrt(energies[row][column]);
        weights += weight;
      }
    }
    PixelBox whole = new PixelBox(0, 0, 41, 41);
    double expected = Math.pow(roots / weights, 2);
    assertEquals(expected, measurer.sharpnessIn(dot, whole, EVEN), expected * 0.01);
  }

  @Test
  void noiseOnASoftPictureDoesNotMakeItSharper() {
    BufferedImage sharp = Painted.scene(200, 150, 5);
    BufferedImage softAndNoisy = Alter.noisy(Alter.blurred(sharp, 1.5), 8, new Random(1));
    PixelBox whole = new PixelBox(0, 0, 200, 150);
    assertTrue(
        measurer.sharpnessIn(softAndNoisy, whole, EVEN) < measurer.sharpnessIn(sharp, whole, EVEN));
  }

  @Test
  void sharpnessInABoxDoesNotDependOnWhatLiesFarOutside() {
    BufferedImage picture = Painted.scene(200, 150, 3);
    BufferedImage other = Painted.scene(200, 150, 4);
    other.getRaster().setRect(20, 20, picture.getRaster().createChild(20, 20, 100, 80, 0, 0, null));
    PixelBox inner = new PixelBox(30, 30, 70, 50);
    assertEquals(
        measurer.sharpnessIn(picture, inner, EVEN), measurer.sharpnessIn(other, inner, EVEN), 1e-9);
  }

  @Test
  void theMapLiesOnADiscThatStandsOutFromTheBackground() {
    SaliencyMap map = measurer.measure(Painted.disc(480, 320, 0.75, 0.4, 50)).map();
    double inside = 0;
    for (int row = 0; row < map.rows(); row++) {
      for (int column = 0; column < map.columns(); column++) {
        double x = (column + 0.5) * 480 / map.columns() - 360;
        double y = (row + 0.5) * 320 / map.rows() - 128;
        inside += Math.hypot(x, y) < 55 ? map.weight(column, row) : 0;
      }
    }
    assertTrue(inside > 0.9, "share on the disc " + inside);
  }

  @Test
  void theMapIsCoarseWhateverThePictureIs() {
    SaliencyMap map = measurer.measure(Painted.scene(2000, 1000, 5)).map();
    assertEquals(48, map.columns());
    assertEquals(24, map.rows());
  }

  @Test
  void measuringLeavesThePictureAsItIs() {
    BufferedImage picture = Painted.scene(1300, 900, 6);
    int[] before = picture.getRGB(0, 0, 1300, 900, null, 0, 1300);
    measurer.measure(picture);
    assertArrayEquals(before, picture.getRGB(0, 0, 1300, 900, null, 0, 1300));
  }

  @Test
  void averagingByAreaKeepsTheMean() {
    BufferedImage picture = Painted.scene(237, 181, 8);
    Plane full = Rgb.of(picture, new PixelSize(237, 181)).luma();
    assertEquals(full.mean(), Rgb.of(picture, new PixelSize(41, 17)).luma().mean(), 0.01);
    assertEquals(full.mean(), Span.average(full, 9, 8).mean(), 0.01);
  }

  @Test
  void aPictureOfAnotherTypeIsRefused() {
    BufferedImage grey = new BufferedImage(10, 10, BufferedImage.TYPE_BYTE_GRAY);
    assertThrows(IllegalArgumentException.class, () -> measurer.measure(grey));
  }
}
