package org.daymount.image.jpeg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.daymount.file.FileBytes;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.JpegDamager;
import org.daymount.testphoto.Scenes;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What damage is noticed. The reference is libjpeg(-turbo): where djpeg warns, this must not be
 * silent, and where every encoder at hand made a file, this must not complain.
 */
@Tag("slow")
class JpegCheckTest {
  private static final List<String> CODINGS =
      List.of(
          "",
          "-optimize",
          "-progressive",
          "-restart 1",
          "-restart 5B",
          "-grayscale",
          "-grayscale -progressive",
          "-sample 1x1",
          "-sample 2x1 -quality 98",
          "-sample 4x1",
          "-rgb",
          "-quality 3",
          "-progressive -restart 2",
          "-arithmetic",
          "-arithmetic -progressive",
          "-arithmetic -restart 7B",
          "-arithmetic -grayscale -quality 99");

  private static final int FILES = Integer.getInteger("jpegs", 400);
  private static final long SEED = Long.getLong("jpegs.seed", 20260601);

  @TempDir Path folder;

  private static byte[] painted() {
    return ExifPhoto.painted().picture(Scenes.scene(5, 200, 150)).bytes();
  }

  private static Optional<String> damage(byte[] jpeg) {
    try {
      return JpegCheck.damage(FileBytes.of(jpeg));
    } catch (IOException e) {
      throw new UncheckedIOException(e); // of bytes in memory: never
    }
  }

  private static int scan(byte[] jpeg) {
    for (int at = jpeg.length - 2; at > 0; at--) {
      if ((jpeg[at] & 0xff) == 0xff && (jpeg[at + 1] & 0xff) == MarkerReader.START_OF_SCAN) {
        return at + 14; // the header of a scan of three components
      }
    }
    throw new AssertionError("no scan");
  }

  @Test
  void aSoundFileIsSoundWhateverFollowsIt() {
    byte[] whole = painted();
    assertEquals(Optional.empty(), damage(whole));
    ByteArrayOutputStream twice = new ByteArrayOutputStream();
    twice.writeBytes(whole);
    twice.writeBytes(whole); // as in a multi-picture file, CIPA DC-007
    assertEquals(Optional.empty(), damage(twice.toByteArray()));
    assertEquals(Optional.empty(), damage(Arrays.copyOf(whole, whole.length + 5000)));
  }

  @Test
  void bytesLeftOverInsideTheScanAreNoticed() {
    byte[] whole = painted();
    byte[] longer = Arrays.copyOf(whole, whole.length + 3);
    System.arraycopy(whole, whole.length - 2, longer, whole.length + 1, 2);
    Arrays.fill(longer, whole.length - 2, whole.length + 1, (byte) 0x55);
    assertEquals(Optional.of("there are bytes in it that belong to nothing"), damage(longer));
  }

  @Test
  void dataThatEndBeforeThePictureAreNoticed() {
    byte[] whole = painted();
    int half = (scan(whole) + whole.length) / 2;
    byte[] shorter = Arrays.copyOf(whole, half + 2);
    shorter[half] = (byte) 0xff;
    shorter[half + 1] = (byte) MarkerReader.END_OF_IMAGE;
    assertTrue(damage(shorter).isPresent());
  }

  @Test
  void codesThatAreNoneAreNoticed() {
    byte[] whole = painted();
    int middle = (scan(whole) + whole.length) / 2;
    for (int i = 0; i < 40; i += 2) { // ones: in no table is that a code (K.3: reserved)
      whole[middle + i] = (byte) 0xff;
      whole[middle + i + 1] = 0;
    }
    assertEquals(Optional.of("some of its picture data mean nothing"), damage(whole));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "2B"})
  void aRestartMarkerOutOfStepIsNoticed(String interval) throws IOException {
    byte[] jpeg = Djpeg.compress(Djpeg.noisy(160, 96), "-restart", interval);
    assertEquals(Optional.empty(), damage(jpeg));
    for (int at = scan(jpeg); at < jpeg.length; at++) {
      if ((jpeg[at] & 0xff) == 0xff && (jpeg[at + 1] & 0xff) == MarkerReader.RESTART_FIRST + 1) {
        jpeg[at + 1] = (byte) (MarkerReader.RESTART_FIRST + 4);
        break;
      }
    }
    assertEquals(Optional.of("a mark in its picture data is missing or out of step"), damage(jpeg));
  }

  @Test
  void soundFilesOfEveryCodingAreSound() throws IOException {
    for (String coding : CODINGS) {
      for (Djpeg.Ppm picture : List.of(Djpeg.noisy(203, 157), Djpeg.smooth(97, 64))) {
        byte[] jpeg = Djpeg.compress(picture, options(coding));
        assertEquals(Optional.empty(), damage(jpeg), coding);
      }
    }
  }

  /** Pictures of all sizes and qualities, in every coding; {@code -Djpegs=1000} for a long run. */
  @Test
  void noSoundFileIsCalledDamaged(TestReporter reporter) throws IOException {
    Random chance = new Random(SEED);
    int sound = 0;
    List<String> blamed = new ArrayList<>();
    for (int i = 0; i < FILES / 4; i++) {
      int width = 1 + chance.nextInt(260);
      int height = 1 + chance.nextInt(200);
      String coding = CODINGS.get(i % CODINGS.size());
      List<String> options = new ArrayList<>(List.of(options(coding)));
      if (!coding.contains("-quality")) {
        options.addAll(List.of("-quality", Integer.toString(1 + chance.nextInt(100))));
      }
      byte[] jpeg =
          Djpeg.compress(
              chance.nextBoolean() ? Djpeg.noisy(width, height) : Djpeg.smooth(width, height),
              options.toArray(String[]::new));
      String warning = Djpeg.warning(Files.write(folder.resolve("sound.jpg"), jpeg));
      assertEquals("", warning, "cjpeg makes sound files: " + options);
      sound++;
      damage(jpeg).ifPresent(said -> blamed.add(width + " x " + height + options + ": " + said));
    }
    reporter.publishEntry("sound files", sound + ", called damaged " + blamed.size());
    assertEquals(List.of(), blamed);
  }

  /**
   * At most two of a hundred may be missed; the figures of long runs are in docs/trust.md. {@code
   * -Djpegs=4000 -Djpegs.seed=2} for another.
   */
  @Test
  void whatTheReferenceWarnsOfIsNoticed(TestReporter reporter) throws IOException {
    List<byte[]> whole = new ArrayList<>();
    for (String coding : CODINGS) {
      whole.add(Djpeg.compress(Djpeg.noisy(120, 88), options(coding)));
    }
    JpegDamager damager = new JpegDamager(SEED);
    int warned = 0;
    List<String> missed = new ArrayList<>();
    for (int i = 0; i < FILES; i++) {
      byte[] jpeg = damager.damaged(whole.get(i % whole.size()), whole);
      Path file = Files.write(folder.resolve("damaged.jpg"), jpeg);
      String warning = Djpeg.warning(file);
      if (!warning.isEmpty() && !warning.contains("Unsupported")) {
        warned++;
        if (damage(jpeg).isEmpty()) {
          missed.add(CODINGS.get(i % whole.size()) + ": " + warning);
        }
      }
    }
    reporter.publishEntry("warned of", warned + " of " + FILES + ", missed " + missed.size());
    assertTrue(warned > FILES * 3 / 8, "only " + warned + " files were damaged enough");
    assertTrue(missed.size() * 50 <= warned, missed.size() + " of " + warned + ": " + missed);
  }

  private static String[] options(String coding) {
    return coding.isEmpty() ? new String[0] : coding.split(" ");
  }
}
