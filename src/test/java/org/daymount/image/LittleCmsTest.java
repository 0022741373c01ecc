package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import org.daymount.file.FileBytes;
import org.daymount.photo.PhotoFormat;
import org.daymount.unit.PixelBox;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The reference is LittleCMS ({@code transicc}, to its own sRGB, intent perceptual): within 2 of
 * 255 in each channel. Where it is not installed, these tests are shown as skipped.
 */
@Tag("slow")
class LittleCmsTest {
  private static final int COLOURS = 1000;
  private static final double TOLERANCE = 2;
  private static final String COLORIMETRIC = "-t1";

  /** What separations are made for: their darkest ink becomes black. */
  private static final String PERCEPTUAL = "-t0";

  @TempDir Path folder;

  /** Profiles of the kinds that photos carry. */
  enum Kind {
    DISPLAY_P3(TestProfiles.displayP3()),
    DISPLAY_P3_VERSION_4(TestProfiles.displayP3Version4()),
    ADOBE_RGB(TestProfiles.adobeRgb()),
    ADOBE_RGB_VERSION_4(TestProfiles.adobeRgbVersion4()),
    PROPHOTO(TestProfiles.proPhoto()),
    TABLE_VERSION_4(TestProfiles.table());

    private final ICC_Profile profile;

    Kind(ICC_Profile profile) {
      this.profile = profile;
    }
  }

  /** Random colours, and a tenth of them greys. */
  private static double[][] colours() {
    Random chance = new Random(1);
    double[][] colours = new double[COLOURS][];
    for (int i = 0; i < COLOURS; i++) {
      int grey = chance.nextInt(256);
      colours[i] =
          i % 10 == 0
              ? new double[] {grey, grey, grey}
              : new double[] {chance.nextInt(256), chance.nextInt(256), chance.nextInt(256)};
    }
    return colours;
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void eightBitColoursAgree(Kind kind) throws IOException {
    double[][] colours = colours();
    BufferedImage row = new BufferedImage(COLOURS, 1, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < COLOURS; x++) {
      row.setRGB(x, 0, (int) colours[x][0] << 16 | (int) colours[x][1] << 8 | (int) colours[x][2]);
    }
    byte[] png = TestPngs.withProfile(TestPngs.png(row), kind.profile);
    assertAgree(
        kind.profile,
        colours,
        shown(png, PhotoFormat.PNG, COLOURS, 1),
        kind != Kind.TABLE_VERSION_4);
  }

  /** A JPEG with patches large enough for its blocks; its own rounding is allowed for with 1. */
  @ParameterizedTest
  @EnumSource(Kind.class)
  void colouredPatchesOfAJpegAgree(Kind kind) throws IOException {
    BufferedImage patches = new BufferedImage(16 * 64, 16, BufferedImage.TYPE_INT_RGB);
    double[][] colours = new double[64][];
    for (int i = 0; i < 64; i++) {
      int[] levels = {40 + 55 * (i / 16), 40 + 55 * (i / 4 % 4), 40 + 55 * (i % 4)};
      int rgb = levels[0] << 16 | levels[1] << 8 | levels[2];
      for (int at = 0; at < 256; at++) {
        patches.setRGB(16 * i + at % 16, at / 16, rgb);
      }
    }
    byte[] jpeg = new JpegEncoder(1, true, Optional.empty(), false).encode(patches);
    BufferedImage asCoded = shown(jpeg, PhotoFormat.JPEG, 16 * 64, 16); // after its rounding
    BufferedImage shown =
        shown(JpegSegments.withProfile(jpeg, kind.profile.getData()), PhotoFormat.JPEG, 1024, 16);
    for (int i = 0; i < 64; i++) {
      int rgb = asCoded.getRGB(16 * i + 8, 8);
      colours[i] = new double[] {rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff};
    }
    List<double[]> expected = expected(kind.profile.getData(), colours, COLORIMETRIC);
    for (int i = 0; i < 64; i++) {
      assertColour(expected.get(i), shown.getRGB(16 * i + 8, 8), "patch " + i);
    }
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void sixteenBitColoursAgree(Kind kind) throws IOException {
    Random chance = new Random(2);
    double[][] ofOne = new double[COLOURS][3];
    double[][] of255 = new double[COLOURS][3];
    for (int x = 0; x < COLOURS; x++) {
      for (int channel = 0; channel < 3; channel++) {
        ofOne[x][channel] = chance.nextInt(65536) / 65535.0;
        of255[x][channel] = ofOne[x][channel] * 255;
      }
    }
    byte[] png = TestPngs.withProfile(TestPngs.png(TestPngs.row16(ofOne)), kind.profile);
    assertAgree(kind.profile, of255, shown(png, PhotoFormat.PNG, COLOURS, 1), false);
  }

  /** Written by ImageMagick: TIFF of 8 and 16 bits, and lossless WebP. */
  @ParameterizedTest
  @CsvSource({"TIFF, tif, 8", "TIFF, tif, 16", "WEBP, webp, 8"})
  void otherFormatsAgreeToo(PhotoFormat format, String ending, int bits) throws IOException {
    Tool convert = Tool.imageMagickOrSkip();
    double[][] colours = colours();
    double[][] ofOne = new double[COLOURS][3];
    for (int x = 0; x < COLOURS; x++) {
      for (int channel = 0; channel < 3; channel++) {
        ofOne[x][channel] = colours[x][channel] / 255;
      }
    }
    Path png = Files.write(folder.resolve("row.png"), TestPngs.png(TestPngs.row16(ofOne)));
    ICC_Profile profile = TestProfiles.adobeRgb();
    Path icc = Files.write(folder.resolve("own.icc"), profile.getData());
    Path file = folder.resolve("row." + ending);
    convert.run(
        png.toString(),
        "+profile",
        "*",
        "-depth",
        "" + bits,
        "-define",
        "webp:lossless=true",
        "-profile",
        icc.toString(),
        file.toString());
    assertTrue(Files.size(file) > profile.getData().length / 10, "written by convert");
    assertAgree(profile, colours, shown(Files.readAllBytes(file), format, COLOURS, 1), true);
  }

  @ParameterizedTest
  @CsvSource({"1.8", "2.2"})
  void greysOfAProfileAgree(double gamma) throws IOException {
    ICC_Profile profile = TestProfiles.grey(gamma);
    BufferedImage greys = new BufferedImage(256 * 8, 8, BufferedImage.TYPE_BYTE_GRAY);
    double[][] levels = new double[256][];
    for (int x = 0; x < 256 * 8; x++) {
      levels[x / 8] = new double[] {x / 8};
      for (int y = 0; y < 8; y++) {
        greys.getRaster().setSample(x, y, 0, x / 8);
      }
    }
    List<double[]> expected = expected(profile.getData(), levels, COLORIMETRIC);
    byte[] png = TestPngs.withProfile(TestPngs.png(greys), profile);
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(greys, "jpeg", jpeg));
    BufferedImage ofPng = shown(png, PhotoFormat.PNG, 256 * 8, 8);
    BufferedImage ofJpeg =
        shown(
            JpegSegments.withProfile(jpeg.toByteArray(), profile.getData()),
            PhotoFormat.JPEG,
            256 * 8,
            8);
    for (int i = 0; i < 256; i++) {
      for (BufferedImage shown : List.of(ofPng, ofJpeg)) {
        int rgb = shown.getRGB(8 * i + 4, 4);
        assertColour(expected.get(i), rgb, "grey " + i);
        assertGrey(rgb);
      }
    }
  }

  /**
   * Photos of the test jars of imageio-jpeg and commons-imaging in four inks, with the profiles
   * they carry; what their inks are is read by ImageMagick. The same inks in a TIFF look the same.
   */
  @ParameterizedTest
  @CsvSource({
    "IMAGING-136/1402522741337.jpg, 680, 241",
    "jpeg/cmyk-sample-multiple-chunk-icc.jpg, 2707, 3804",
    "jpeg/cmyk-sample-custom-icc-bright.jpg, 4256, 2832"
  })
  void inksAgree(String resource, int width, int height) throws IOException {
    Tool convert = Tool.imageMagickOrSkip();
    Tool.orSkip("transicc");
    Path photo = TestPhotos.fromJar(resource, folder);
    PixelBox window = new PixelBox(width / 3, height / 3, width / 3, 80);
    Path raw = folder.resolve("inks.cmyk");
    convert.run(
        photo.toString(),
        "-crop",
        window.width() + "x" + window.height() + "+" + window.x() + "+" + window.y(),
        "-depth",
        "8",
        "cmyk:" + raw);
    byte[] inks = Files.readAllBytes(raw);
    assertEquals(4 * window.area(), inks.length);
    byte[] profile;
    try (FileBytes bytes = FileBytes.open(photo)) {
      profile = ProfileBytes.read(bytes, photo, PhotoFormat.JPEG).orElseThrow();
    }
    BufferedImage shown =
        new Pictures()
            .part(
                TestPhotos.upright(photo, PhotoFormat.JPEG, width, height), window, window.size());
    int[] places = new Random(3).ints(COLOURS, 0, (int) window.area()).toArray();
    double[][] percent = new double[COLOURS][4];
    for (int i = 0; i < COLOURS; i++) {
      for (int ink = 0; ink < 4; ink++) {
        percent[i][ink] = (inks[4 * places[i] + ink] & 0xff) * 100 / 255.0;
      }
    }
    Path tiff = folder.resolve("same inks.tif");
    convert.run(
        photo.toString(),
        "-crop",
        window.width() + "x" + window.height() + "+" + window.x() + "+" + window.y(),
        "+repage",
        "-compress",
        "none",
        tiff.toString());
    BufferedImage asTiff =
        new Pictures()
            .whole(
                TestPhotos.upright(tiff, PhotoFormat.TIFF, window.width(), window.height()), width);
    List<double[]> expected = expected(profile, percent, PERCEPTUAL);
    for (int i = 0; i < COLOURS; i++) {
      int x = places[i] % window.width();
      int y = places[i] / window.width();
      assertColour(expected.get(i), shown.getRGB(x, y), "pixel " + places[i]);
      assertColour(expected.get(i), asTiff.getRGB(x, y), "pixel " + places[i] + " of the TIFF");
    }
  }

  private void assertAgree(
      ICC_Profile profile, double[][] colours, BufferedImage shown, boolean greysStay)
      throws IOException {
    List<double[]> expected = expected(profile.getData(), colours, COLORIMETRIC);
    for (int x = 0; x < colours.length; x++) {
      assertColour(expected.get(x), shown.getRGB(x, 0), "colour " + x);
      if (greysStay && colours[x][0] == colours[x][1] && colours[x][1] == colours[x][2]) {
        assertGrey(shown.getRGB(x, 0));
      }
    }
  }

  private static void assertColour(double[] expected, int rgb, String which) {
    for (int channel = 0; channel < 3; channel++) {
      assertEquals(
          expected[channel], rgb >> 16 - 8 * channel & 0xff, TOLERANCE, which + ", " + channel);
    }
  }

  private static void assertGrey(int rgb) {
    assertEquals(rgb >> 16 & 0xff, rgb >> 8 & 0xff, 1);
    assertEquals(rgb >> 8 & 0xff, rgb & 0xff, 1);
  }

  private List<double[]> expected(byte[] profile, double[][] samples, String intent)
      throws IOException {
    Tool transicc = Tool.orSkip("transicc");
    Path icc = Files.write(folder.resolve("profile.icc"), profile);
    StringBuilder asked = new StringBuilder();
    for (double[] sample : samples) {
      for (double value : sample) {
        asked.append(String.format(Locale.ROOT, "%.4f ", value));
      }
      asked.append('\n');
    }
    Path list = Files.writeString(folder.resolve("colours.txt"), asked);
    List<double[]> found = new ArrayList<>();
    for (String line :
        transicc.runOn(list, "-n", "-s", intent, "-i" + icc, "-o*sRGB").lines().toList()) {
      String[] parts = line.strip().split("\\s+");
      if (parts.length >= 3) {
        found.add(
            new double[] {
              Double.parseDouble(parts[0]),
              Double.parseDouble(parts[1]),
              Double.parseDouble(parts[2])
            });
      }
    }
    assertEquals(samples.length, found.size());
    return found;
  }

  private BufferedImage shown(byte[] bytes, PhotoFormat format, int width, int height)
      throws IOException {
    Path file = Files.write(folder.resolve("photo"), bytes);
    return new Pictures()
        .whole(TestPhotos.upright(file, format, width, height), Math.max(width, height));
  }
}
