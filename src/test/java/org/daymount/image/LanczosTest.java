package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import org.daymount.photo.ExifOrientation;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LanczosTest {
  @ParameterizedTest
  @CsvSource({
    "100, 0, 100, 37",
    "100, 0, 100, 100",
    "100, 10, 50, 170",
    "5, 0, 5, 1",
    "1, 0, 1, 9"
  })
  void theWeightsOfEveryPixelSumToOne(int samples, double start, double length, int target) {
    LanczosTaps taps = new LanczosTaps(samples, start, length, target);
    for (int pixel = 0; pixel < target; pixel++) {
      double sum = 0;
      for (float weight : taps.weights(pixel)) {
        sum += weight;
      }
      assertEquals(1, sum, 1e-6);
      assertTrue(taps.first(pixel) >= 0 && taps.end(pixel) <= samples);
    }
  }

  /** Worked by hand: at half a pixel's shift Lanczos-3 has sinc(t) sinc(t/3) at 1/2, 3/2, 5/2. */
  @Test
  void theWeightsAreThoseOfTheFormula() {
    LanczosTaps taps = new LanczosTaps(20, 0.5, 10, 10);
    double[] at = {0.024317, -0.135095, 0.607927, 0.607927, -0.135095, 0.024317};
    double sum = 2 * (at[0] + at[1] + at[2]);
    float[] weights = taps.weights(5);
    for (int k = 0; k < 6; k++) {
      assertEquals(at[k] / sum, weights[k], 1e-5, "tap " + k);
    }
  }

  @ParameterizedTest
  @CsvSource({"17, 11", "40, 30", "90, 61", "1, 1"})
  void aPlainPictureStaysPlainAtAnySize(int width, int height) {
    for (int colour : new int[] {0x000000, 0xffffff, 0x123456, 0xfe01c3}) {
      TestPhotos.assertSamePixels(
          Painted.plain(width, height, colour),
          resampled(Painted.plain(40, 30, colour), width, height),
          0);
    }
  }

  @Test
  void theSameSizeGivesTheSamePixels() {
    BufferedImage noise = Painted.noise(61, 47);
    TestPhotos.assertSamePixels(noise, resampled(noise, 61, 47), 0);
  }

  @Test
  void aPictureAndItsMirrorImageGiveMirrorImages() {
    BufferedImage noise = Painted.noise(64, 48);
    BufferedImage mirrored = ExifRotator.upright(noise, ExifOrientation.TOP_RIGHT);
    TestPhotos.assertSamePixels(
        ExifRotator.upright(resampled(noise, 27, 21), ExifOrientation.TOP_RIGHT),
        resampled(mirrored, 27, 21),
        1);
  }

  /** Where a half-pixel error would show: a ramp's values say where each pixel was taken. */
  @Test
  void theWindowsEdgesFallOnTheTargetsEdges() {
    BufferedImage ramp = new BufferedImage(240, 4, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 240; x++) {
      for (int y = 0; y < 4; y++) {
        ramp.setRGB(x, y, x * 0x010101);
      }
    }
    BufferedImage third = resampled(ramp, 80, 4);
    for (int x = 4; x < 76; x++) {
      assertEquals(3 * (x + 0.5) - 0.5, third.getRGB(x, 1) & 0xff, 0.51, "pixel " + x);
    }
  }

  /** Half a pixel's shift would be 5 levels. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void aThinnedPictureStaysInPlace(int period) {
    PixelBox window = new PixelBox(120, 0, 1200, 24);
    PixelBox region = new PixelBox(60, 0, 1320, 24);
    DecodeRegion plan = new DecodeRegion(window, new PixelSize(150, 3), region, period);
    BufferedImage kept = new BufferedImage(1320 / period, 24 / period, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < kept.getWidth(); x++) {
      for (int y = 0; y < kept.getHeight(); y++) {
        kept.setRGB(x, y, 0x010101 * (int) Math.round(wave(60 + x * period + plan.offset() + 0.5)));
      }
    }
    BufferedImage shown =
        Lanczos.resample(
            new SrgbRows(kept), plan.across(kept.getWidth()), plan.down(kept.getHeight()));
    for (int x = 0; x < 150; x++) {
      assertEquals(wave(120 + (x + 0.5) * 8), shown.getRGB(x, 1) & 0xff, 2, "pixel " + x);
    }
  }

  private static double wave(double x) {
    return 128 + 100 * Math.cos(2 * Math.PI * x / 60);
  }

  /**
   * A zone plate's frequency is x / 1024 waves a pixel at x pixels from its corner. At a quarter of
   * the size, what is beyond 1/8 wave a pixel cannot be shown and must be gone, not turned into
   * rings of its own.
   */
  @Test
  void ringsTooFineForTheTargetDisappearAndCoarseOnesStay() {
    BufferedImage plate = new BufferedImage(512, 512, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 512; y++) {
      for (int x = 0; x < 512; x++) {
        plate.setRGB(
            x,
            y,
            0x010101 * (int) Math.round(128 + 100 * Math.cos(Math.PI * (x * x + y * y) / 1024)));
      }
    }
    BufferedImage quarter = resampled(plate, 128, 128);
    assertTrue(deviation(quarter, 48, 126) < 1.5, "beyond: " + deviation(quarter, 48, 126));
    assertTrue(deviation(quarter, 5, 22) > 55, "within: " + deviation(quarter, 5, 22));
    // The test would notice: plain picking of every fourth pixel keeps all of the contrast.
    BufferedImage picked = new BufferedImage(128, 128, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 128; y++) {
      for (int x = 0; x < 128; x++) {
        picked.setRGB(x, y, plate.getRGB(4 * x, 4 * y));
      }
    }
    assertTrue(deviation(picked, 48, 126) > 55);
  }

  /** Standard deviation from 128 over the pixels at {@code from} to {@code to} from the corner. */
  private static double deviation(BufferedImage picture, int from, int to) {
    double sum = 0;
    int count = 0;
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < picture.getWidth(); x++) {
        double distance = Math.hypot(x, y);
        if (distance >= from && distance < to && x < 126 && y < 126) {
          sum += Math.pow((picture.getRGB(x, y) & 0xff) - 128, 2);
          count++;
        }
      }
    }
    return Math.sqrt(sum / count);
  }

  private static BufferedImage resampled(BufferedImage picture, int width, int height) {
    return Lanczos.resample(
        new SrgbRows(picture),
        new LanczosTaps(picture.getWidth(), 0, picture.getWidth(), width),
        new LanczosTaps(picture.getHeight(), 0, picture.getHeight(), height));
  }

  @ParameterizedTest
  @CsvSource({
    "4032, 3024, 0, 0, 4032, 3024, 1000, 750", // a phone photo is read in full
    "16320, 12240, 0, 0, 16320, 12240, 1800, 1350",
    "16320, 12240, 4000, 17, 9000, 6000, 1800, 1200",
    "30000, 8000, 29, 31, 29000, 7900, 290, 79",
    "9000, 9000, 0, 0, 9000, 9000, 4000, 4000"
  })
  void onlyAsMuchIsReadAsMemoryAllowsButTwiceTheTargetIsLeft(
      int width, int height, int x, int y, int w, int h, int targetWidth, int targetHeight) {
    PixelSize stored = new PixelSize(width, height);
    PixelBox window = new PixelBox(x, y, w, h);
    PixelSize target = new PixelSize(targetWidth, targetHeight);

    DecodeRegion plan = DecodeRegion.of(stored, window, target);

    assertTrue(plan.region().contains(window) && stored.whole().contains(plan.region()));
    double kept = window.area() / Math.pow(plan.period(), 2);
    assertTrue(kept <= Math.max(24_000_000, 16.0 * target.area()), "kept " + kept);
    if (plan.period() > 1) {
      assertTrue(w / plan.period() >= 2 * targetWidth && h / plan.period() >= 2 * targetHeight);
    }
    assertEquals(0, plan.region().x() % plan.period());
    assertEquals(0, plan.region().y() % plan.period());
  }
}
