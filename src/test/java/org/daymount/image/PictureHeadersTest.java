package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
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
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PictureHeadersTest {
  @TempDir Path folder;

  private final PictureHeaders headers = new PictureHeaders();

  private Path write(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("picture"), bytes);
  }

  private Problem.Kind refusal(byte[] bytes) throws IOException {
    Path file = write(bytes);
    return assertThrows(UnusablePicture.class, () -> headers.read(file)).kind();
  }

  private static byte[] encoded(String format, int width, int height) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(ExifPhoto.plain(width, height), format, out), format);
    return out.toByteArray();
  }

  @ParameterizedTest
  @CsvSource({"jpeg, JPEG", "png, PNG", "gif, GIF", "bmp, BMP", "tiff, TIFF"})
  void formatAndStoredSizeAreThoseTheWriterPutIn(String written, PhotoFormat format)
      throws IOException {
    PictureHeader header = headers.read(write(encoded(written, 123, 45)));
    assertEquals(new PictureHeader(format, new PixelSize(123, 45)), header);
  }

  @Test
  void aProgressiveJpegTellsItsSizeToo() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      BufferedImage image = ExifPhoto.plain(321, 123);
      var metadata = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), param);
      writer.write(null, new IIOImage(image, null, metadata), param);
    }
    writer.dispose();
    assertEquals(new PixelSize(321, 123), headers.read(write(out.toByteArray())).stored());
  }

  /** Layouts from RFC 9649 (VP8X, VP8L) and RFC 6386, 9.1 (VP8). */
  @Test
  void theThreeKindsOfWebpTellTheirSize() throws IOException {
    ByteBuffer extended = webp("VP8X", 10);
    extended.put(24, (byte) (399 & 0xff)).put(25, (byte) (399 >> 8));
    extended.put(27, (byte) (599 & 0xff)).put(28, (byte) (599 >> 8));
    assertEquals(new PixelSize(400, 600), headers.read(write(extended.array())).stored());
    ByteBuffer lossless = webp("VP8L", 12);
    lossless.put(20, (byte) 0x2f).putInt(21, 399 | 599 << 14);
    assertEquals(new PixelSize(400, 600), headers.read(write(lossless.array())).stored());
    ByteBuffer lossy = webp("VP8 ", 12);
    lossy.put(23, (byte) 0x9d).put(24, (byte) 0x01).put(25, (byte) 0x2a);
    lossy.putShort(26, (short) 400).putShort(28, (short) (600 | 1 << 14));
    assertEquals(new PixelSize(400, 600), headers.read(write(lossy.array())).stored());
  }

  private static ByteBuffer webp(String chunk, int length) {
    return ByteBuffer.allocate(20 + length)
        .order(ByteOrder.LITTLE_ENDIAN)
        .put("RIFF".getBytes(StandardCharsets.US_ASCII))
        .putInt(12 + length)
        .put(("WEBP" + chunk).getBytes(StandardCharsets.US_ASCII))
        .putInt(length);
  }

  @ParameterizedTest
  @CsvSource({"heic, HEIF", "heix, HEIF", "mif1, HEIF", "avif, AVIF", "avis, AVIF"})
  void heifAndAvifAreToldByTheirBrand(String brand, PhotoFormat format) throws IOException {
    byte[] bytes = ("\0\0\0\020ftyp" + brand + "\0\0\0\0").getBytes(StandardCharsets.US_ASCII);
    assertEquals(format, headers.format(write(bytes)).orElseThrow());
    assertEquals(false, headers.isFilm(write(bytes)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"isom", "mp42", "qt  ", "3gp5"})
  void filmsAreToldByTheirBrand(String brand) throws IOException {
    byte[] bytes = ("\0\0\0\020ftyp" + brand + "\0\0\0\0").getBytes(StandardCharsets.US_ASCII);
    assertTrue(headers.isFilm(write(bytes)));
    assertTrue(headers.format(write(bytes)).isEmpty());
  }

  @Test
  void moreThanTwoHundredAndFiftyMillionPixelsAreRefused() throws IOException {
    byte[] lossless =
        webp("VP8L", 12).put(20, (byte) 0x2f).putInt(21, 16_000 | 15_999 << 14).array();
    assertEquals(Problem.Kind.TOO_LARGE, refusal(lossless));
    byte[] jpeg = encoded("jpeg", 64, 48);
    int frame = frameHeader(jpeg);
    ByteBuffer.wrap(jpeg).putShort(frame, (short) 60_000).putShort(frame + 2, (short) 60_000);
    assertEquals(Problem.Kind.TOO_LARGE, refusal(jpeg));
  }

  /**
   * 60,000 x 60,000 in each format's own header (for WebP the extended one): refused, whatever
   * follows, without decoding or memory.
   */
  @ParameterizedTest
  @EnumSource(value = PhotoFormat.class, mode = EnumSource.Mode.EXCLUDE, names = "CLIP")
  void sixtyThousandSquaredIsRefusedAtOnce(PhotoFormat format) throws IOException {
    byte[] bytes =
        switch (format) {
          case JPEG -> {
            byte[] jpeg = encoded("jpeg", 64, 48);
            yield put(jpeg, frameHeader(jpeg), ByteOrder.BIG_ENDIAN, (short) 60_000);
          }
          case PNG -> put(encoded("png", 64, 48), 16, ByteOrder.BIG_ENDIAN, 60_000);
          case GIF -> {
            byte[] gif = encoded("gif", 64, 48);
            int frame = new String(gif, StandardCharsets.ISO_8859_1).indexOf(",\0\0\0\0@\0000\0");
            yield put(gif, frame + 5, ByteOrder.LITTLE_ENDIAN, (short) 60_000);
          }
          case BMP -> put(encoded("bmp", 64, 48), 18, ByteOrder.LITTLE_ENDIAN, 60_000);
          case TIFF -> tiff(false);
          case RAW -> tiff(true);
          case WEBP -> {
            ByteBuffer extended = webp("VP8X", 10);
            for (int at : new int[] {24, 27}) {
              extended.put(at, (byte) 59_999).put(at + 1, (byte) (59_999 >> 8));
            }
            yield extended.array();
          }
          case HEIF -> heif("heic", "hvc1");
          case AVIF -> heif("avif", "av01");
          case CLIP -> throw new IllegalArgumentException("see clip/BoxesTest");
        };
    Path file = write(Arrays.copyOf(bytes, Math.max(bytes.length, 200_000))); // pixels of no sense
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long start = threads.getCurrentThreadCpuTime(); // the machine may be busy with other things
    UnusablePicture refused = assertThrows(UnusablePicture.class, () -> headers.read(file));
    long taken = threads.getCurrentThreadCpuTime() - start;
    assertTrue(taken < 2_000_000_000L, taken + " ns of processor time");
    boolean oneTile = format == PhotoFormat.HEIF || format == PhotoFormat.AVIF;
    assertEquals(
        oneTile ? Problem.Kind.UNREADABLE : Problem.Kind.TOO_LARGE,
        refused.kind(),
        refused.getMessage());
    assertTrue(refused.getMessage().contains("60000 x 60000"), refused.getMessage());
  }

  private static byte[] put(byte[] file, int at, ByteOrder order, int number) {
    ByteBuffer.wrap(file).order(order).putInt(at, number).putInt(at + 4, number);
    return file;
  }

  private static byte[] put(byte[] file, int at, ByteOrder order, short number) {
    ByteBuffer.wrap(file).order(order).putShort(at, number).putShort(at + 2, number);
    return file;
  }

  /** TIFF 6.0, section 2: a directory of width, height and one strip; DNG adds its version. */
  private static byte[] tiff(boolean raw) {
    ByteBuffer file = ByteBuffer.allocate(120).order(ByteOrder.LITTLE_ENDIAN);
    file.put(new byte[] {'I', 'I', 42, 0}).putInt(8).putShort((short) (raw ? 5 : 4));
    field(file, 256, 60_000);
    field(file, 257, 60_000);
    field(file, 273, 100);
    field(file, 279, 20);
    if (raw) {
      field(file, 0xc612, 0x01010401);
    }
    return file.array();
  }

  private static void field(ByteBuffer file, int tag, int value) {
    file.putShort((short) tag).putShort((short) (tag == 0xc612 ? 1 : 4));
    file.putInt(tag == 0xc612 ? 4 : 1).putInt(value);
  }

  /** ISO/IEC 14496-12, 8.11 and 23008-12, 6.5.3: one item, its place and its spatial extent. */
  private static byte[] heif(String brand, String type) {
    byte[] size = box("ispe", ByteBuffer.allocate(12).putInt(0).putInt(60_000).putInt(60_000));
    byte[] configuration = box(type.equals("hvc1") ? "hvcC" : "av1C", ByteBuffer.allocate(23));
    byte[] meta =
        join(
            new byte[4],
            box("pitm", ByteBuffer.allocate(6).putInt(0).putShort((short) 1)),
            box(
                "iinf",
                ByteBuffer.wrap(
                    join(
                        new byte[] {0, 0, 0, 0, 0, 1},
                        box(
                            "infe",
                            ByteBuffer.allocate(13)
                                .putInt(2 << 24)
                                .putShort((short) 1)
                                .putShort((short) 0)
                                .put(ascii(type))
                                .put((byte) 0))))),
            box(
                "iloc",
                ByteBuffer.allocate(22)
                    .putInt(0)
                    .putShort((short) 0x4400)
                    .putShort((short) 1)
                    .putShort((short) 1)
                    .putShort((short) 0)
                    .putShort((short) 1)
                    .putInt(1000)
                    .putInt(1000)),
            box(
                "iprp",
                ByteBuffer.wrap(
                    join(
                        box("ipco", ByteBuffer.wrap(join(size, configuration))),
                        box(
                            "ipma",
                            ByteBuffer.wrap(
                                new byte[] {0, 0, 0, 0, 0, 0, 0, 1, 0, 1, 2, 1, 2}))))));
    return join(
        box("ftyp", ByteBuffer.wrap(ascii(brand + "\0\0\0\0" + "mif1"))),
        box("meta", ByteBuffer.wrap(meta)));
  }

  private static byte[] box(String name, ByteBuffer content) {
    byte[] bytes = content.array();
    return ByteBuffer.allocate(8 + bytes.length)
        .putInt(8 + bytes.length)
        .put(ascii(name))
        .put(bytes)
        .array();
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] join(byte[]... parts) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      all.writeBytes(part);
    }
    return all.toByteArray();
  }

  @Test
  void farMorePixelsThanTheBytesCanHoldAreRefused() throws IOException {
    byte[] jpeg = encoded("jpeg", 64, 48);
    int frame = frameHeader(jpeg);
    ByteBuffer.wrap(jpeg).putShort(frame, (short) 8_000).putShort(frame + 2, (short) 8_000);
    UnusablePicture refused = assertThrows(UnusablePicture.class, () -> headers.read(write(jpeg)));
    assertEquals(Problem.Kind.TOO_LARGE, refused.kind());
    assertTrue(refused.getMessage().contains("8000 x 8000"), refused.getMessage());
  }

  /** Where height and width stand in the frame header SOF0. */
  private static int frameHeader(byte[] jpeg) {
    for (int i = 0; i < jpeg.length; i++) {
      if ((jpeg[i] & 0xff) == 0xff && (jpeg[i + 1] & 0xff) == 0xc0) {
        return i + 5;
      }
    }
    throw new AssertionError("no SOF0");
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpeg", "png", "gif", "tiff"})
  void aPlainPictureOfTwelveMillionPixelsPasses(String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    BufferedImage grey = new BufferedImage(4000, 3000, BufferedImage.TYPE_BYTE_GRAY);
    assertTrue(ImageIO.write(grey, format, out), format);
    assertEquals(new PixelSize(4000, 3000), headers.read(write(out.toByteArray())).stored());
  }

  @Test
  void garbageIsUnreadableAndSaysSo() throws IOException {
    assertEquals(Problem.Kind.UNREADABLE, refusal(new byte[0]));
    assertEquals(Problem.Kind.UNREADABLE, refusal(new byte[5000]));
    assertEquals(Problem.Kind.UNREADABLE, refusal("just text".getBytes(StandardCharsets.UTF_8)));
    byte[] png = encoded("png", 10, 10);
    ByteBuffer.wrap(png).putInt(16, 0);
    assertEquals(Problem.Kind.UNREADABLE, refusal(png));
  }

  @Test
  void aFileThatIsGoneIsUnreadable() {
    var e = assertThrows(UnusablePicture.class, () -> headers.read(folder.resolve("gone.jpg")));
    assertEquals(Problem.Kind.UNREADABLE, e.kind());
  }
}
