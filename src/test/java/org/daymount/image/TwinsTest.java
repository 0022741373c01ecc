package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same Display P3 picture as JPEG and, made of that by heif-enc, as HEIC: the pixels of their
 * prints. Both codecs lose something, so they are compared as eyes do, by the difference in CIE Lab
 * (1976): about 2.3 is just to be seen (M. Mahy and others, "Evaluation of uniform color spaces",
 * Color Research and Application 19, 1994; value from memory). Where heif-enc is not installed,
 * these tests are shown as skipped.
 */
@Tag("slow")
class TwinsTest {
  private static final double MOST_MEAN = 1.0;
  private static final double MOST_OF_A_PATCH = 2.3;
  private static final double[] D65 = {0.9505, 1, 1.089}; // IEC 61966-2-1:1999, 4.1

  @TempDir Path folder;
  private Tool encoder;

  @BeforeEach
  void find() {
    encoder = Tool.orSkip("heif-enc", "--help");
  }

  private static Photo photo(Path file) throws IOException {
    PictureHeader header = new PictureHeaders().read(file);
    return TestPhotos.photo(
        file, header.format(), header.stored(), header.turned().orElse(ExifOrientation.TOP_LEFT));
  }

  private Path jpeg(BufferedImage picture) throws IOException {
    byte[] jpeg = new JpegEncoder(0.97f, true, Optional.empty(), false).encode(picture);
    return Files.write(
        folder.resolve("twin.jpg"),
        JpegSegments.withProfile(jpeg, TestProfiles.displayP3().getData()));
  }

  private Path heic(Path jpeg) throws IOException {
    Path heic = folder.resolve("twin.heic");
    String said = encoder.run("-q", "95", "-o", heic.toString(), jpeg.toString());
    assertTrue(Files.exists(heic), said);
    return heic;
  }

  private static BufferedImage print(Path file, PixelBox window, PixelSize target)
      throws IOException {
    return new Pictures().part(photo(file), window, target);
  }

  @Test
  void flatPatchesOfAllHuesPrintAlike() throws IOException {
    BufferedImage patches = new BufferedImage(8 * 64, 8 * 64, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 512; y++) {
      for (int x = 0; x < 512; x++) {
        int n = y / 64 * 8 + x / 64; // 4 x 4 x 4 levels
        int red = 20 + 70 * (n / 16);
        int green = 20 + 70 * (n / 4 % 4);
        int blue = 20 + 70 * (n % 4);
        patches.setRGB(x, y, red << 16 | green << 8 | blue);
      }
    }
    Path jpeg = jpeg(patches);
    PixelSize target = new PixelSize(400, 400);
    BufferedImage first = print(jpeg, patches(), target);
    BufferedImage second = print(heic(jpeg), patches(), target);
    double worst = 0;
    double sum = 0;
    for (int n = 0; n < 64; n++) {
      double difference = ofPatch(first, second, 50 * (n % 8) + 25, 50 * (n / 8) + 25);
      worst = Math.max(worst, difference);
      sum += difference;
    }
    assertTrue(worst <= MOST_OF_A_PATCH, "worst patch " + worst);
    assertTrue(sum / 64 <= MOST_MEAN, "mean of patches " + sum / 64);
    assertTheProfileMatters(first, patches);
  }

  private static PixelBox patches() {
    return new PixelBox(0, 0, 512, 512);
  }

  /** Or the test would pass for two pictures whose profile was forgotten. */
  private static void assertTheProfileMatters(BufferedImage shown, BufferedImage coded) {
    double[] converted = lab(shown.getRGB(7 * 50 + 25, 6 * 50 + 25));
    double[] raw = lab(coded.getRGB(7 * 64 + 32, 6 * 64 + 32));
    assertTrue(distance(converted, raw) > 5, "the profile changes nothing");
  }

  @Test
  void aPhotographPrintsAlike() throws IOException {
    Path source = TestPhotos.fromJar("exif/Landscape_1.jpg", folder);
    BufferedImage scene =
        new Pictures().whole(TestPhotos.upright(source, PhotoFormat.JPEG, 1800, 1200), 1800);
    Path jpeg = jpeg(scene);
    PixelBox window = new PixelBox(10, 20, 1500, 1000);
    PixelSize target = new PixelSize(900, 600);
    BufferedImage first = print(jpeg, window, target);
    BufferedImage second = print(heic(jpeg), window, target);
    assertEquals(first.getWidth(), second.getWidth());
    double sum = 0;
    for (int y = 0; y < 600; y++) {
      for (int x = 0; x < 900; x++) {
        sum += distance(lab(first.getRGB(x, y)), lab(second.getRGB(x, y)));
      }
    }
    assertTrue(sum / (900 * 600) <= MOST_MEAN, "mean " + sum / (900 * 600));
  }

  private static double ofPatch(BufferedImage a, BufferedImage b, int x, int y) {
    double sum = 0;
    for (int i = 0; i < 25; i++) {
      sum +=
          distance(
              lab(a.getRGB(x - 2 + i % 5, y - 2 + i / 5)),
              lab(b.getRGB(x - 2 + i % 5, y - 2 + i / 5)));
    }
    return sum / 25;
  }

  private static double distance(double[] a, double[] b) {
    return Math.sqrt(
        Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
  }

  /** Of an sRGB colour (IEC 61966-2-1:1999, 5.2; CIE 15:2004, 8.2.1). */
  private static double[] lab(int rgb) {
    double r = TestProfiles.srgbDecoded((rgb >> 16 & 0xff) / 255.0);
    double g = TestProfiles.srgbDecoded((rgb >> 8 & 0xff) / 255.0);
    double b = TestProfiles.srgbDecoded((rgb & 0xff) / 255.0);
    double x = cubeRoot((0.4124 * r + 0.3576 * g + 0.1805 * b) / D65[0]);
    double y = cubeRoot((0.2126 * r + 0.7152 * g + 0.0722 * b) / D65[1]);
    double z = cubeRoot((0.0193 * r + 0.1192 * g + 0.9505 * b) / D65[2]);
    return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
  }

  private static double cubeRoot(double t) {
    return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
  }
}
