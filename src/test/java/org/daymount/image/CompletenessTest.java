package org.daymount.image;

import static java.awt.image.BufferedImage.TYPE_3BYTE_BGR;
import static java.awt.image.BufferedImage.TYPE_BYTE_BINARY;
import static java.awt.image.BufferedImage.TYPE_BYTE_INDEXED;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompletenessTest {
  private static final int IEND = 12; // bytes of a PNG's last chunk

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
    // a PNG's last thousandth here is its end mark, which is not missed
    double[] parts =
        format == PhotoFormat.PNG
            ? new double[] {0.9, 0.5, 0.3}
            : new double[] {0.999, 0.9, 0.5, 0.3};
    for (double part : parts) {
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

  /** What Chromium 156 opens: whatever comes, or does not come, behind the last row. */
  @Test
  void aPngWhosePixelsAreAllThereNeedsNoEnd() throws IOException {
    for (boolean interlaced : new boolean[] {false, true}) {
      byte[] whole = png(interlaced);
      int end = whole.length - IEND;
      check(whole, PhotoFormat.PNG);
      for (int kept : new int[] {whole.length - 1, end + 5, end, end - 4, end - 8}) {
        byte[] shorter = Arrays.copyOf(whole, kept);
        check(shorter, PhotoFormat.PNG);
        assertShownAs(whole, shorter, PhotoFormat.PNG);
      }
      byte[] junk = Arrays.copyOf(whole, end + 300);
      Arrays.fill(junk, end, junk.length, (byte) 'x');
      assertShownAs(whole, junk, PhotoFormat.PNG);
      byte[] cut = Arrays.copyOf(whole, end - 40);
      assertThrows(UnusablePicture.class, () -> check(cut, PhotoFormat.PNG));
    }
  }

  private static byte[] png(boolean interlaced) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setProgressiveMode(
          interlaced ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
      writer.write(null, new IIOImage(ExifPhoto.plain(301, 203), null, null), param);
    }
    writer.dispose();
    return out.toByteArray();
  }

  private void assertShownAs(byte[] whole, byte[] other, PhotoFormat format) throws IOException {
    TestPhotos.assertSamePixels(shown(whole, format), shown(other, format), 0);
  }

  private BufferedImage shown(byte[] bytes, PhotoFormat format) throws IOException {
    Path file = Files.write(folder.resolve("shown"), bytes);
    check(bytes, format);
    PixelSize size = new PictureHeaders().stated(file).stored();
    return new Pictures()
        .whole(TestPhotos.upright(file, format, size.width(), size.height()), size.longEdge());
  }

  /**
   * Rows are padded to four bytes; nobody needs the padding of the last one, as Chromium has it.
   */
  @ParameterizedTest
  @ValueSource(ints = {TYPE_3BYTE_BGR, TYPE_BYTE_INDEXED, TYPE_BYTE_BINARY})
  void aBmpNeedsItsPixelsButNotTheLastPaddingNorTrueLengths(int type) throws IOException {
    BufferedImage picture = new BufferedImage(41, 30, type);
    picture.createGraphics().drawImage(ExifPhoto.plain(41, 30), 0, 0, null);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(picture, "bmp", out));
    byte[] whole = out.toByteArray();
    int bits = picture.getColorModel().getPixelSize();
    int padding = (41 * bits + 31) / 32 * 4 - (41 * bits + 7) / 8;
    assertTrue(padding > 0, "nothing to leave out");
    assertShownAs(whole, Arrays.copyOf(whole, whole.length - padding), PhotoFormat.BMP);
    byte[] cut = Arrays.copyOf(whole, whole.length - padding - 1);
    assertThrows(UnusablePicture.class, () -> check(cut, PhotoFormat.BMP));
    for (int length : new int[] {0, 5, 1_000_000}) {
      byte[] wrong = whole.clone();
      ByteBuffer.wrap(wrong).order(ByteOrder.LITTLE_ENDIAN).putInt(2, length).putInt(34, length);
      assertShownAs(whole, wrong, PhotoFormat.BMP);
    }
  }

  /** BI_RLE8: two bytes a run; 0 0 ends a row and 0 1 the picture. */
  @Test
  void aRunLengthCodedBmpNeedsItsLastRowButNotTheEndMark() throws IOException {
    int width = 60;
    int height = 20;
    ByteBuffer file =
        ByteBuffer.allocate(54 + 1024 + height * 6 + 2).order(ByteOrder.LITTLE_ENDIAN);
    file.put("BM".getBytes(StandardCharsets.US_ASCII)).putInt(file.capacity()).putInt(0);
    file.putInt(54 + 1024).putInt(40).putInt(width).putInt(height).putShort((short) 1);
    file.putShort((short) 8).putInt(1).putInt(height * 6 + 2).position(54);
    for (int i = 0; i < 256; i++) {
      file.putInt(i * 0x010101);
    }
    for (int y = 0; y < height; y++) {
      file.put((byte) 35).put((byte) (y * 9)).put((byte) 25).put((byte) (255 - y * 9));
      file.put((byte) 0).put((byte) 0);
    }
    byte[] whole = file.put((byte) 0).put((byte) 1).array();
    for (int missing : new int[] {1, 2, 3, 4}) {
      assertShownAs(whole, Arrays.copyOf(whole, whole.length - missing), PhotoFormat.BMP);
    }
    byte[] noLengths = whole.clone();
    ByteBuffer.wrap(noLengths).putInt(2, 0).putInt(34, 0);
    assertShownAs(whole, noLengths, PhotoFormat.BMP);
    byte[] cut = Arrays.copyOf(whole, whole.length - 10);
    assertThrows(UnusablePicture.class, () -> check(cut, PhotoFormat.BMP));
  }

  /** TIFF 6.0, section 23: Lab in 8 or 16 bits; of floats nothing is said. */
  @Test
  void aTiffOfLabInFloatsIsRefusedWithTheReason() throws IOException {
    check(lab(1), PhotoFormat.TIFF);
    UnusablePicture e = assertThrows(UnusablePicture.class, () -> check(lab(3), PhotoFormat.TIFF));
    assertEquals(Problem.Kind.NOT_YET_READABLE, e.kind());
    assertTrue(e.getMessage().contains("CIE Lab in floats"), e.getMessage());
  }

  /** One pixel. Tags: width, height, photometric, strip, its length, sample format. */
  private static byte[] lab(int sampleFormat) {
    int[][] tags = {{256, 1}, {257, 1}, {262, 8}, {273, 100}, {279, 12}, {339, sampleFormat}};
    ByteBuffer file = ByteBuffer.allocate(112).order(ByteOrder.LITTLE_ENDIAN);
    file.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8);
    file.putShort((short) tags.length);
    for (int[] tag : tags) {
      file.putShort((short) tag[0]).putShort((short) 4).putInt(1).putInt(tag[1]);
    }
    return file.array();
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
