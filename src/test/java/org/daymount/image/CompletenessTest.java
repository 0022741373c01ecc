package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompletenessTest {
  @TempDir Path folder;

  private final Completeness completeness = new Completeness();

  private void check(byte[] bytes, PhotoFormat format) throws IOException {
    completeness.check(Files.write(folder.resolve("picture"), bytes), format);
  }

  private static byte[] encoded(String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(ExifPhoto.plain(300, 200), format, out), format);
    return out.toByteArray();
  }

  @ParameterizedTest
  @CsvSource({"jpeg, JPEG", "png, PNG", "bmp, BMP", "tiff, TIFF"})
  void aWholePictureIsWholeAndACutOneIsNot(String written, PhotoFormat format) throws IOException {
    byte[] whole = encoded(written);
    assertDoesNotThrow(() -> check(whole, format));
    for (double part : new double[] {0.999, 0.9, 0.5, 0.3}) {
      byte[] cut = Arrays.copyOf(whole, (int) (whole.length * part));
      UnusablePicture e = assertThrows(UnusablePicture.class, () -> check(cut, format));
      assertEquals(Problem.Kind.CUT_OFF, e.kind());
    }
  }

  /** GIF89a, 27: the trailer ends the stream; the frame before it is a picture without it. */
  @Test
  void aGifNeedsItsFirstFrameButNotItsTrailer() throws IOException {
    byte[] whole = encoded("gif");
    check(whole, PhotoFormat.GIF);
    check(Arrays.copyOf(whole, whole.length - 1), PhotoFormat.GIF);
    for (int kept : new int[] {whole.length - 2, whole.length / 2, 20}) {
      byte[] cut = Arrays.copyOf(whole, kept);
      assertThrows(UnusablePicture.class, () -> check(cut, PhotoFormat.GIF));
    }
  }

  /** As viewers do: the frame counts, whatever the logical screen around it says. */
  @Test
  void aGifIsAsLargeAsItsFirstFrame() throws IOException {
    byte[] larger = encoded("gif");
    larger[6]++; // the screen's width, lower byte
    Path file = Files.write(folder.resolve("larger.gif"), larger);
    assertEquals(new PixelSize(300, 200), new PictureHeaders().stated(file).stored());
  }

  @Test
  void theMessageSaysHowMuchIsThereAndWhatToDo() throws IOException {
    byte[] cut = Arrays.copyOf(encoded("jpeg"), 300);
    UnusablePicture e = assertThrows(UnusablePicture.class, () -> check(cut, PhotoFormat.JPEG));
    assertEquals("is cut off after 300 bytes; copy it again from the phone", e.getMessage());
    assertEquals("1.2 MB", ByteCount.of(1_234_567));
    assertEquals("12 kB", ByteCount.of(12_345));
  }

  @Test
  void aFilmBehindTheEndOfAMotionPhotoIsFine() {
    byte[] motion = ExifPhoto.painted().trailing(new byte[100_000]).bytes();
    assertDoesNotThrow(() -> check(motion, PhotoFormat.JPEG));
  }

  @Test
  void theEndOfTheThumbnailIsNotTheEndOfThePhoto() {
    byte[] whole = ExifPhoto.painted().thumbnail(ExifPhoto.plain(16, 12)).bytes();
    byte[] cut = Arrays.copyOf(whole, whole.length - 20);
    assertThrows(UnusablePicture.class, () -> check(cut, PhotoFormat.JPEG));
  }

  /** What a card reader leaves when it dies: the full length, the rest zeros. */
  @Test
  void aFileFilledUpWithZerosIsCutOff() throws IOException {
    byte[] bytes = encoded("jpeg");
    Arrays.fill(bytes, bytes.length * 2 / 3, bytes.length, (byte) 0);
    assertThrows(UnusablePicture.class, () -> check(bytes, PhotoFormat.JPEG));
  }

  @Test
  void aWebpShorterThanItsHeaderSaysIsCutOff() throws IOException {
    byte[] riff = "RIFF....WEBPVP8L".getBytes(StandardCharsets.US_ASCII);
    byte[] bytes = Arrays.copyOf(riff, 100);
    ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putInt(4, 92);
    check(bytes, PhotoFormat.WEBP);
    byte[] cut = Arrays.copyOf(bytes, 99);
    assertThrows(UnusablePicture.class, () -> check(cut, PhotoFormat.WEBP));
  }
}
