package org.daymount.image.jpeg;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The reference is libjpeg(-turbo): {@code cjpeg} makes the files and {@code djpeg -scale} says
 * what their pixels are. Where the two are not installed, those tests are shown as skipped.
 */
@Tag("slow")
class ReducedJpegTest {
  private static final int WIDTH = 203; // neither a multiple of a block nor of two
  private static final int HEIGHT = 157;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(ints = {1, 5, 25, 50, 75, 90, 95, 100})
  void everyQualityIsBitForBitWhatTheReferenceDecodes(int quality) throws IOException {
    for (String sampling : List.of("1x1", "2x1", "1x2", "2x2", "4x1", "4x2")) {
      for (Reduction reduction : Reduction.values()) {
        assertSameBrightness(
            reduction, WIDTH, HEIGHT, "-quality", "" + quality, "-sample", sampling);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "-grayscale",
    "-optimize",
    "-restart 1B",
    "-restart 7B",
    "-restart 1",
    "-restart 3 -optimize",
    "-quality 98 -sample 1x1 -restart 2B",
    "-grayscale -restart 5B",
    "-smooth 20"
  })
  void everyWayToCodeASequentialPictureIsRead(String options) throws IOException {
    for (Reduction reduction : Reduction.values()) {
      assertSameBrightness(reduction, WIDTH, HEIGHT, options.split(" "));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "-progressive", "-progressive -quality 100 -sample 1x1", "-progressive -grayscale",
    "-progressive -restart 1", "-progressive -quality 3", "-progressive -sample 2x1 -restart 9B"
  })
  void aProgressivePictureIsReadToo(String options) throws IOException {
    for (Reduction reduction : Reduction.values()) {
      assertSameBrightness(reduction, WIDTH, HEIGHT, options.split(" "));
    }
  }

  @ParameterizedTest
  @EnumSource(Reduction.class)
  void everySmallSizeHasThePixelsOfTheReference(Reduction reduction) throws IOException {
    for (int width : new int[] {1, 2, 7, 8, 9, 15, 16, 17, 33}) {
      for (int height : new int[] {1, 8, 17}) {
        assertSameBrightness(reduction, width, height, "-quality", "90");
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "-quality 92",
    "-quality 92 -sample 1x1 -restart 3B",
    "-quality 85 -sample 2x1 -optimize",
    "-grayscale",
    "-progressive",
    "-progressive -sample 2x1 -restart 9B"
  })
  void twoSizesFromOneReadingAreThoseOfTwo(String options) throws IOException {
    byte[] bytes = Djpeg.compress(Djpeg.noisy(WIDTH, HEIGHT), options.split(" "));
    Path file = Files.write(folder.resolve("both.jpg"), bytes);
    for (Reduction reduction : List.of(Reduction.HALF, Reduction.QUARTER)) {
      List<ReducedJpeg> both = ReducedJpeg.decodeWithEighth(file, reduction);
      assertSame(ReducedJpeg.decode(bytes, reduction), both.get(0));
      assertSame(ReducedJpeg.decode(bytes, Reduction.EIGHTH), both.get(1));
      assertTrue(both.get(1).isKnownSound());
    }
  }

  private static void assertSame(ReducedJpeg expected, ReducedJpeg actual) {
    assertEquals(expected.size(), actual.size());
    assertEquals(expected.area(), actual.area());
    assertArrayEquals(expected.brightness(), actual.brightness());
    assertArrayEquals(expected.rgb(), actual.rgb());
  }

  /** Without subsampling nothing is interpolated, so colours too are the reference's. */
  @ParameterizedTest
  @EnumSource(Reduction.class)
  void coloursAtFullResolutionAreThoseOfTheReference(Reduction reduction) throws IOException {
    byte[] file = Djpeg.compress(Djpeg.noisy(WIDTH, HEIGHT), "-sample", "1x1", "-quality", "92");
    assertEquals(
        List.of(),
        Djpeg.differences(
            Djpeg.colours(folder, file, reduction), ReducedJpeg.decode(file, reduction).rgb(), 1));
  }

  /** The reference decodes subsampled colours in finer detail; smooth ones are nearly the same. */
  @ParameterizedTest
  @EnumSource(Reduction.class)
  void subsampledColoursAreNearThoseOfTheReference(Reduction reduction) throws IOException {
    byte[] file = Djpeg.compress(Djpeg.smooth(640, 480), "-sample", "2x2", "-quality", "95");
    byte[] expected = Djpeg.colours(folder, file, reduction);
    byte[] actual = ReducedJpeg.decode(file, reduction).rgb();
    double sum = 0;
    for (int i = 0; i < expected.length; i++) {
      sum += Math.abs((expected[i] & 0xff) - (actual[i] & 0xff));
    }
    assertEquals(0, sum / expected.length, 1.0, "mean difference in levels");
  }

  @ParameterizedTest
  @CsvSource({"-arithmetic", "-rgb"})
  void whatIsNotReadIsRefused(String option) throws IOException {
    byte[] file = Djpeg.compress(Djpeg.noisy(64, 48), option);
    assertThrows(JpegRefused.class, () -> ReducedJpeg.decode(file, Reduction.HALF));
  }

  @Test
  void aFileThatEndsEarlyIsSaidToBeCutOff() throws IOException {
    byte[] file = Djpeg.compress(Djpeg.noisy(WIDTH, HEIGHT), "-quality", "80");
    assertFalse(ReducedJpeg.decode(file, Reduction.QUARTER).isCutOff());
    for (int percent : new int[] {50, 70, 90, 98}) {
      byte[] part = Arrays.copyOf(file, file.length * percent / 100);
      assertTrue(ReducedJpeg.decode(part, Reduction.QUARTER).isCutOff(), percent + "%");
      assertTrue(ReducedJpeg.decode(part, Reduction.EIGHTH).isCutOff(), percent + "%");
    }
  }

  @Test
  void aProgressiveFileThatEndsEarlyIsSaidToBeCutOff() throws IOException {
    byte[] file = Djpeg.compress(Djpeg.noisy(WIDTH, HEIGHT), "-progressive");
    byte[] part = Arrays.copyOf(file, file.length * 9 / 10);
    assertTrue(ReducedJpeg.decode(part, Reduction.EIGHTH).isCutOff());
  }

  @Test
  void aHeaderThatClaimsAGiantPictureIsRefusedBeforeMemoryIsTaken() throws IOException {
    byte[] file = Djpeg.compress(Djpeg.noisy(64, 48), "-quality", "50");
    int frame = find(file, 0xc0);
    for (int i = 0; i < 4; i++) {
      file[frame + 5 + i] = (byte) 0xff; // B.2.2: lines and samples per line
    }
    assertThrows(JpegRefused.class, () -> ReducedJpeg.decode(file, Reduction.HALF));
  }

  /** Whatever a file holds, it is decoded or refused, in a time that follows its length. */
  @ParameterizedTest
  @ValueSource(strings = {"-quality 80", "-progressive", "-restart 1 -optimize", "-grayscale"})
  void damagedFilesAreDecodedOrRefusedAndNothingElse(String options) throws IOException {
    byte[] file = Djpeg.compress(Djpeg.noisy(120, 90), options.split(" "));
    Random chance = new Random(20260603);
    long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    int refused = 0;
    for (int round = 0; round < 1000; round++) {
      byte[] damaged = damaged(file, chance);
      for (Reduction reduction : Reduction.values()) {
        try {
          ReducedJpeg.decode(damaged, reduction).rgb();
        } catch (JpegRefused e) {
          refused++;
        }
      }
    }
    assertTrue(refused > 50, "some damage is noticed");
    long spent = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
    assertTrue(spent < 120_000_000_000L, spent / 1_000_000 + " ms of processor time");
  }

  @Test
  void theReductionIsTheGreatestThatLeavesEnough() {
    PixelSize twelve = new PixelSize(3000, 4000);
    assertEquals(Reduction.EIGHTH, Reduction.leaving(500, twelve).orElseThrow());
    assertEquals(Reduction.QUARTER, Reduction.leaving(501, twelve).orElseThrow());
    assertEquals(Reduction.QUARTER, Reduction.leaving(1000, twelve).orElseThrow());
    assertEquals(Reduction.HALF, Reduction.leaving(2000, twelve).orElseThrow());
    assertTrue(Reduction.leaving(2001, twelve).isEmpty());
  }

  private void assertSameBrightness(Reduction reduction, int width, int height, String... options)
      throws IOException {
    byte[] file = Djpeg.compress(Djpeg.noisy(width, height), options);
    ReducedJpeg decoded = ReducedJpeg.decode(file, reduction);
    assertEquals(new PixelSize(width, height), decoded.stored());
    assertFalse(decoded.isCutOff());
    assertEquals(
        List.of(),
        Djpeg.differences(
            Djpeg.brightness(folder, file, reduction),
            decoded.brightness(),
            decoded.size().width()),
        () -> reduction + " of " + decoded.stored() + " " + List.of(options));
  }

  private static byte[] damaged(byte[] file, Random chance) {
    byte[] damaged = file.clone();
    int places = 1 + chance.nextInt(4);
    for (int i = 0; i < places; i++) {
      int reach = chance.nextBoolean() ? Math.min(700, file.length) : file.length;
      damaged[chance.nextInt(reach)] = (byte) chance.nextInt(256);
    }
    return chance.nextInt(4) == 0
        ? Arrays.copyOf(damaged, 1 + chance.nextInt(damaged.length))
        : damaged;
  }

  private static int find(byte[] file, int marker) {
    for (int i = 0; i + 1 < file.length; i++) {
      if (file[i] == (byte) 0xff && (file[i + 1] & 0xff) == marker) {
        return i;
      }
    }
    throw new IllegalStateException("no such marker");
  }
}
