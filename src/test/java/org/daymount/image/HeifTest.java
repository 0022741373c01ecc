package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** HEIC and AVIF against libheif's own converter (heif-convert) and against what was painted. */
@Tag("slow")
class HeifTest {
  /** Two decoders of the same data differ by how they blend shared colours, not more (measured). */
  private static final double SAME = 45; // dB

  @TempDir Path folder;

  /** A photo as ingest makes it: size and direction from the file's own boxes. */
  private static Photo photo(Path file) throws IOException {
    PictureHeader header = new PictureHeaders().read(file);
    return TestPhotos.photo(
        file, header.format(), header.stored(), header.turned().orElse(ExifOrientation.TOP_LEFT));
  }

  private static BufferedImage shown(Path file) throws IOException {
    Photo photo = photo(file);
    return new Pictures().part(photo, photo.size().whole(), photo.size());
  }

  /** Part of a photograph: painted edges of pure colours show how decoders blend shared colours. */
  private BufferedImage scene(int width, int height) throws IOException {
    Path jpeg = TestPhotos.fromJar("exif/Landscape_1.jpg", folder);
    Photo photo = TestPhotos.upright(jpeg, PhotoFormat.JPEG, 1800, 1200);
    PixelBox window = new PixelBox(600, 500, width, height);
    return new Pictures().part(photo, window, new PixelSize(width, height));
  }

  /** What heif-convert makes of it, in sRGB. */
  private BufferedImage converted(Path file) throws IOException {
    Path png = folder.resolve("converted.png");
    Tool.orSkip("heif-convert", "--help").run(file.toString(), png.toString());
    BufferedImage raw = ImageIO.read(png.toFile());
    Photo photo = TestPhotos.upright(png, PhotoFormat.PNG, raw.getWidth(), raw.getHeight());
    return new Pictures().part(photo, photo.size().whole(), photo.size());
  }

  private static void assertSame(BufferedImage expected, BufferedImage actual, double decibels) {
    assertEquals(expected.getWidth(), actual.getWidth(), "width");
    assertEquals(expected.getHeight(), actual.getHeight(), "height");
    double measured = decibels(expected, actual);
    assertTrue(measured >= decibels, measured + " dB");
  }

  /** Peak signal-to-noise ratio over red, green and blue. */
  private static double decibels(BufferedImage a, BufferedImage b) {
    double sum = 0;
    for (int y = 0; y < a.getHeight(); y++) {
      for (int x = 0; x < a.getWidth(); x++) {
        for (int shift = 0; shift <= 16; shift += 8) {
          int difference = (a.getRGB(x, y) >> shift & 0xff) - (b.getRGB(x, y) >> shift & 0xff);
          sum += difference * difference;
        }
      }
    }
    return 10 * Math.log10(255 * 255 * 3.0 * a.getWidth() * a.getHeight() / sum);
  }

  /** The second is a 12 megapixel photo of a phone: 48 tiles, Display P3. */
  @ParameterizedTest
  @ValueSource(strings = {"testHEIF.heic", "IMG_1034.heic"})
  void photosOfTheTestJarAreAsHeifConvertShowsThem(String name) throws IOException {
    Path file = TestPhotos.fromJar("test-documents/" + name, folder);
    assertSame(converted(file), shown(file), SAME);
  }

  @ParameterizedTest
  @ValueSource(strings = {"heic", "avif"})
  void whatHeifEncWritesIsAsHeifConvertShowsIt(String ending) throws IOException {
    Path file = encoded(scene(600, 400), ending);
    assertSame(converted(file), shown(file), SAME);
    assertSame(scene(600, 400), shown(file), 33); // lossy
  }

  private Path encoded(BufferedImage picture, String ending) throws IOException {
    Path png = folder.resolve("painted.png");
    ImageIO.write(picture, "png", png.toFile());
    Path file = folder.resolve("painted." + ending);
    Tool.orSkip("heif-enc", "--help").run("-q", "90", "-o", file.toString(), png.toString());
    return file;
  }

  @Test
  void oddSizesAreCutAsHeifEncAsks() throws IOException {
    Path file = encoded(scene(301, 203), "heic");
    assertEquals(new PixelSize(301, 203), photo(file).size());
    assertSame(converted(file), shown(file), SAME);
  }

  @ParameterizedTest
  @CsvSource({
    "0, -1, TOP_LEFT",
    "1, -1, LEFT_BOTTOM",
    "2, -1, BOTTOM_RIGHT",
    "3, -1, RIGHT_TOP",
    "0, 0, BOTTOM_LEFT",
    "0, 1, TOP_RIGHT",
    "1, 0, LEFT_TOP",
    "3, 0, RIGHT_BOTTOM",
    "1, 1, RIGHT_BOTTOM",
    "2, 1, BOTTOM_LEFT"
  })
  void turnsAndMirroringsAreAppliedOnceAndInOrder(int quarters, int mode, ExifOrientation expected)
      throws IOException {
    HeifFiles made = HeifFiles.single(scene(256, 192), folder);
    made.turnedAntiClockwise(quarters);
    if (mode >= 0) {
      made.mirrored(mode);
    }
    Path file = made.write(folder.resolve("turned.heic"));
    assertEquals(expected, photo(file).orientation());
    assertSame(converted(file), shown(file), SAME);
  }

  @Test
  void aMirroringBeforeATurnIsNotATurnBeforeAMirroring() throws IOException {
    HeifFiles made = HeifFiles.single(scene(256, 192), folder);
    Path file = made.mirrored(1).turnedAntiClockwise(1).write(folder.resolve("turned.heic"));
    assertEquals(ExifOrientation.LEFT_TOP, photo(file).orientation());
    assertSame(converted(file), shown(file), SAME);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void tilesOfAGridAreLaidOutAndCutAtTheEdges(int quarters) throws IOException {
    HeifFiles made = HeifFiles.grid(scene(300, 200), 128, folder);
    Path file = made.turnedAntiClockwise(quarters).write(folder.resolve("grid.heic"));
    assertEquals(new PixelSize(300, 200), new PictureHeaders().read(file).stored());
    assertSame(converted(file), shown(file), SAME);
  }

  @Test
  void partsOfAGridAreThoseOfTheWhole() throws IOException {
    Path file = HeifFiles.grid(scene(300, 200), 128, folder).write(folder.resolve("grid.heic"));
    BufferedImage whole = shown(file);
    PixelBox window = new PixelBox(101, 55, 90, 110);
    BufferedImage part = new Pictures().part(photo(file), window, window.size());
    BufferedImage expected = new BufferedImage(90, 110, BufferedImage.TYPE_INT_RGB);
    expected.createGraphics().drawImage(whole, -101, -55, null);
    TestPhotos.assertSamePixels(expected, part, 0);
  }

  @Test
  void aCleanApertureIsCutOut() throws IOException {
    HeifFiles made = HeifFiles.single(scene(256, 192), folder);
    Path file = made.cut(200, 100).turnedAntiClockwise(3).write(folder.resolve("cut.heic"));
    assertEquals(new PixelSize(100, 200), photo(file).size());
    assertSame(converted(file), shown(file), SAME);
  }

  /** The same picture as PNG and as HEIC, both in Display P3: one by profile, one by numbers. */
  @Test
  void displayP3IsTheSameInHeicAsInPng() throws IOException {
    BufferedImage painted = Painted.scene(256, 192);
    byte[] png = TestPngs.withProfile(TestPngs.png(painted), TestProfiles.displayP3());
    BufferedImage twin = shownPng(Files.write(folder.resolve("twin.png"), png), 256, 192);
    Path byProfile =
        HeifFiles.single(painted, folder)
            .profile(TestProfiles.displayP3().getData())
            .colour(1, 13, 6, true)
            .write(folder.resolve("profile.heic"));
    Path byNumbers =
        HeifFiles.single(painted, folder)
            .colour(12, 13, 6, true)
            .write(folder.resolve("numbers.heic"));
    Path plain = HeifFiles.single(painted, folder).write(folder.resolve("plain.heic"));
    double lossOfCoding = decibels(painted, shown(plain));
    assertTrue(decibels(twin, shown(plain)) < lossOfCoding - 5, "the profile changes nothing");
    assertSame(twin, shown(byProfile), lossOfCoding - 3); // a smaller space stretches it
    assertSame(twin, shown(byNumbers), lossOfCoding - 3); // a smaller space stretches it
    TestPhotos.assertSamePixels(shown(byProfile), shown(byNumbers), 2);
  }

  private static BufferedImage shownPng(Path png, int width, int height) throws IOException {
    return new Pictures()
        .whole(TestPhotos.upright(png, PhotoFormat.PNG, width, height), Math.max(width, height));
  }

  @Test
  void aStoredThumbnailIsUsedWhenItIsLargeEnough() throws IOException {
    HeifFiles.Coded red = HeifFiles.coded(Painted.plain(128, 96, 0xc00000), folder);
    HeifFiles made = HeifFiles.single(Painted.plain(256, 192, 0x0000c0), folder);
    Path file = made.thumbnail(red).turnedAntiClockwise(1).write(folder.resolve("thumb.heic"));
    Photo photo = photo(file);
    BufferedImage small = new Pictures().whole(photo, 128);
    assertEquals(96, small.getWidth());
    assertTrue((small.getRGB(40, 40) >> 16 & 0xff) > 150, "not the thumbnail");
    BufferedImage larger = new Pictures().whole(photo, 129);
    assertTrue((larger.getRGB(40, 40) & 0xff) > 150, "the thumbnail, enlarged");
    BufferedImage part =
        new Pictures().part(photo, new PixelBox(0, 0, 64, 64), new PixelSize(8, 8));
    assertTrue((part.getRGB(4, 4) & 0xff) > 150, "the thumbnail, for a part");
  }

  @Test
  void aFileThatEndsEarlyIsCutOff() throws IOException {
    byte[] whole = Files.readAllBytes(TestPhotos.fromJar("test-documents/testHEIF.heic", folder));
    for (double kept : new double[] {0.02, 0.3, 0.99}) {
      Path file =
          Files.write(
              folder.resolve("cut.heic"), Arrays.copyOf(whole, (int) (kept * whole.length)));
      UnusablePicture e =
          assertThrows(UnusablePicture.class, () -> new PictureHeaders().read(file));
      assertEquals(Problem.Kind.CUT_OFF, e.kind());
    }
  }

  @Test
  void aDamagedTileIsSaidNotPainted() throws IOException {
    Path file = TestPhotos.fromJar("test-documents/testHEIF.heic", folder);
    byte[] bytes = Files.readAllBytes(file);
    Arrays.fill(bytes, bytes.length / 2, bytes.length / 2 + 400, (byte) 0);
    Files.write(file, bytes);
    UnusablePicture e = assertThrows(UnusablePicture.class, () -> shown(file));
    assertEquals(Problem.Kind.UNREADABLE, e.kind());
    assertTrue(e.getMessage().contains("damaged"), e.getMessage());
  }

  @Test
  void anInstalledConverterGivesTheSamePicture() throws IOException {
    Tool.orSkip("heif-convert", "--help");
    HeifFiles made = HeifFiles.single(scene(256, 192), folder);
    Path file =
        made.turnedAntiClockwise(1)
            .profile(TestProfiles.displayP3().getData())
            .write(folder.resolve("turned.heic"));
    Path png;
    try (HeifConverter.Converted converted = HeifConverter.convert(photo(file))) {
      png = converted.photo().file().path();
      Photo photo = converted.photo();
      BufferedImage shown = new Pictures().part(photo, photo.size().whole(), photo.size());
      assertSame(shown(file), shown, SAME);
    }
    assertTrue(Files.notExists(png), "the converted picture is still there");
  }

  @Test
  void theTagsOfTheFileAreCutOut() throws IOException {
    byte[] tiff = {'M', 'M', 0, 42, 0, 0, 0, 8, 0, 0, 0, 0, 0, 0};
    Path file =
        HeifFiles.single(scene(128, 96), folder).exif(tiff).write(folder.resolve("tags.heic"));
    Optional<byte[]> exif = TagBlocks.read(file, PhotoFormat.HEIF).exif();
    assertTrue(Arrays.equals(tiff, exif.orElseThrow()));
  }
}
