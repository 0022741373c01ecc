package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("slow")
class DamagedPicturesTest {
  private static final int WIDTH = 320;
  private static final int HEIGHT = 240;

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "JPEG, 0.5",
    "JPEG, 0.9",
    "PNG, 0.5",
    "PNG, 0.9",
    "BMP, 0.5",
    "BMP, 0.9",
    "TIFF, 0.5",
    "TIFF, 0.9"
  })
  void aPictureWithoutItsLastRowsIsCutOff(PhotoFormat format, double kept) throws IOException {
    assertIsCutOff(cut(written(format), kept), format, WIDTH, HEIGHT);
  }

  /** The GIF decoder does not say why it fails. */
  @Test
  void aGifWithoutItsLastRowsIsUnusable() throws IOException {
    Photo photo =
        TestPhotos.upright(cut(written(PhotoFormat.GIF), 0.9), PhotoFormat.GIF, WIDTH, HEIGHT);
    assertThrows(UnusablePicture.class, () -> new Pictures().whole(photo, 100));
  }

  @Test
  void aProgressiveJpegWithoutItsLastScansIsCutOff() throws IOException {
    Path file = TestPhotos.fromJar("jpeg/jfif-progressive-invalid-dht.jpg", folder);
    assertIsCutOff(cut(file, 0.7), PhotoFormat.JPEG, 719, 994);
  }

  private static void assertIsCutOff(Path file, PhotoFormat format, int width, int height) {
    Photo photo = TestPhotos.upright(file, format, width, height);
    UnusablePicture e = assertThrows(UnusablePicture.class, () -> new Pictures().whole(photo, 100));
    assertEquals(Problem.Kind.CUT_OFF, e.kind(), e.getMessage());
    assertTrue(e.getMessage().startsWith("is cut off: "), e.getMessage());
    assertTrue(e.getMessage().contains("; copy it again"), e.getMessage());
  }

  @ParameterizedTest
  @EnumSource(names = {"JPEG", "PNG", "GIF", "BMP", "TIFF", "WEBP"})
  void bytesThatAreNoPictureAreUnusableAndNeverACrash(PhotoFormat format) throws IOException {
    byte[] noise = new byte[5000];
    new java.util.Random(7).nextBytes(noise);
    Photo photo = TestPhotos.upright(write("noise", noise), format, 40, 30);
    assertThrows(UnusablePicture.class, () -> new Pictures().whole(photo, 100));
  }

  @ParameterizedTest
  @EnumSource(names = {"JPEG", "PNG", "GIF", "BMP", "TIFF"})
  void flippedBitsGiveAPictureOrAReasonButNeverACrash(PhotoFormat format) throws IOException {
    byte[] whole = Files.readAllBytes(written(format));
    java.util.Random chance = new java.util.Random(11);
    for (int i = 0; i < 60; i++) {
      byte[] flipped = whole.clone();
      for (int k = 0; k < 4; k++) {
        int at =
            i < 30 ? chance.nextInt(Math.min(700, flipped.length)) : chance.nextInt(flipped.length);
        flipped[at] ^= (byte) (1 << chance.nextInt(8));
      }
      Photo photo = TestPhotos.upright(write("flipped", flipped), format, WIDTH, HEIGHT);
      try {
        BufferedImage picture = new Pictures().whole(photo, 64);
        assertEquals(64, picture.getWidth());
      } catch (UnusablePicture e) {
        assertTrue(e.getMessage().contains("; "), e.getMessage());
      }
    }
  }

  @Test
  void aFileThatIsGoneIsUnreadableAndSaysSo() throws IOException {
    Path file = written(PhotoFormat.JPEG);
    Photo photo = TestPhotos.upright(file, PhotoFormat.JPEG, WIDTH, HEIGHT);
    Files.delete(file);
    UnusablePicture e = assertThrows(UnusablePicture.class, () -> new Pictures().whole(photo, 100));
    assertEquals(Problem.Kind.UNREADABLE, e.kind());
    assertFalse(e.getMessage().contains("null"), e.getMessage());
  }

  @Test
  void aPictureOfAnotherSizeThanItsHeaderSaidIsUnreadable() throws IOException {
    Photo photo = TestPhotos.upright(written(PhotoFormat.PNG), PhotoFormat.PNG, WIDTH + 1, HEIGHT);
    UnusablePicture e = assertThrows(UnusablePicture.class, () -> new Pictures().whole(photo, 100));
    assertEquals(Problem.Kind.UNREADABLE, e.kind());
    assertTrue(e.getMessage().contains("321 x 240"), e.getMessage());
  }

  @Test
  void aRawFileWithoutAPreviewIsNamedAsNotYetReadable() throws IOException {
    Photo photo =
        TestPhotos.upright(write("photo.raw", new byte[100]), PhotoFormat.RAW, WIDTH, HEIGHT);
    UnusablePicture e = assertThrows(UnusablePicture.class, () -> new Pictures().whole(photo, 100));
    assertEquals(Problem.Kind.NOT_YET_READABLE, e.kind());
  }

  @Test
  void aWindowBeyondThePictureIsAMistakeOfTheCaller() throws IOException {
    Photo photo = TestPhotos.upright(written(PhotoFormat.PNG), PhotoFormat.PNG, WIDTH, HEIGHT);
    assertThrows(
        IllegalArgumentException.class,
        () -> new Pictures().part(photo, new PixelBox(1, 0, WIDTH, HEIGHT), new PixelSize(10, 10)));
  }

  private Path written(PhotoFormat format) throws IOException {
    BufferedImage scene = Painted.scene(WIDTH, HEIGHT);
    Path file = folder.resolve("scene." + format);
    if (format == PhotoFormat.JPEG) {
      return Files.write(file, PrintJpegEncoder.encode(scene, Ppi.ppi(300)));
    }
    assertTrue(ImageIO.write(scene, format.name(), file.toFile()), "no writer for " + format);
    return file;
  }

  private Path cut(Path file, double kept) throws IOException {
    byte[] whole = Files.readAllBytes(file);
    return write("cut", Arrays.copyOf(whole, (int) (whole.length * kept)));
  }

  private Path write(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }
}
