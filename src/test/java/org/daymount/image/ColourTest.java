package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ColourTest {
  /**
   * The same colour in Display P3 and in sRGB, as the web platform tests publish them
   * (css/css-color display-p3-006 and the colour suites): red, green, blue of 0 to 1, then 8-bit
   * sRGB.
   */
  private static final double[][] PUBLISHED = {
    {0.21604, 0.49418, 0.13151, 0x00, 0x80, 0x00},
    {0.26374, 0.59085, 0.16434, 0x00, 0x99, 0x00},
    {1, 1, 0.330897, 0xff, 0xff, 0x00},
    {0.465377, 0.532768, 0.317713, 0.448436 * 255, 0.53537 * 255, 0.288112 * 255},
    {0.91749, 0.20029, 0.13856, 0xff, 0x00, 0x00},
  };

  /** 8-bit Display P3 and sRGB, computed by LittleCMS 2.14 ({@code transicc}). */
  private static final int[][] MEASURED = {
    {200, 100, 50, 215, 93, 31}, {128, 64, 192, 138, 59, 199}
  };

  @TempDir Path folder;

  @Test
  void publishedColoursInDisplayP3BecomeTheirSrgb() throws IOException {
    BufferedImage shown =
        shown(
            TestPngs.withProfile(
                TestPngs.png(TestPngs.row16(PUBLISHED)), TestProfiles.displayP3()));
    for (int x = 0; x < PUBLISHED.length; x++) {
      for (int channel = 0; channel < 3; channel++) {
        assertEquals(
            PUBLISHED[x][3 + channel],
            channel(shown, x, channel),
            1.0,
            "colour " + x + ", " + channel);
      }
    }
  }

  @Test
  void measuredColoursInDisplayP3BecomeTheirSrgbInEightBitPngAndJpeg() throws IOException {
    for (int[] pair : MEASURED) {
      BufferedImage plain = Painted.plain(16, 16, pair[0] << 16 | pair[1] << 8 | pair[2]);
      assertColour(
          pair, 1, shown(TestPngs.withProfile(TestPngs.png(plain), TestProfiles.displayP3())));
      byte[] jpeg = new JpegEncoder(1, true, Optional.empty(), false).encode(plain);
      jpeg = JpegSegments.withProfile(jpeg, TestProfiles.displayP3().getData());
      assertColour(pair, 2, shown(jpeg, PhotoFormat.JPEG, 16, 16)); // 1 more for JPEG's rounding
    }
  }

  private static void assertColour(int[] pair, int tolerance, BufferedImage shown) {
    for (int channel = 0; channel < 3; channel++) {
      assertEquals(pair[3 + channel], channel(shown, 8 % shown.getWidth(), channel), tolerance);
    }
  }

  /**
   * How a colour outside sRGB is brought inside is each engine's own affair; that it is, is not.
   */
  @Test
  void aColourOutsideSrgbEndsAtTheEdgeOfSrgb() throws IOException {
    double[][] outside = {{1, 0, 0}, {0, 1, 0}, {1, 128 / 255.0, 0}};
    BufferedImage shown =
        shown(
            TestPngs.withProfile(TestPngs.png(TestPngs.row16(outside)), TestProfiles.displayP3()));
    assertEquals(255, channel(shown, 0, 0), 1);
    assertEquals(0, channel(shown, 0, 1), 2);
    assertEquals(255, channel(shown, 1, 1), 1);
    assertEquals(0, channel(shown, 1, 0), 2);
    assertEquals(255, channel(shown, 2, 0), 1); // clipped: 255, 119, 0
    assertEquals(119, channel(shown, 2, 1), 4);
    assertEquals(0, channel(shown, 2, 2), 2);
  }

  @Test
  void greysInDisplayP3StayTheGreysTheyAre() throws IOException {
    BufferedImage greys = new BufferedImage(256, 1, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 256; x++) {
      greys.setRGB(x, 0, x * 0x010101);
    }
    BufferedImage shown =
        shown(TestPngs.withProfile(TestPngs.png(greys), TestProfiles.displayP3()));
    for (int x = 0; x < 256; x++) {
      for (int channel = 0; channel < 3; channel++) {
        assertEquals(x, channel(shown, x, channel), 1, "grey " + x);
      }
    }
  }

  @Test
  void greysWithoutAProfileAreShownAsCodedInPngAndJpeg() throws IOException {
    BufferedImage greys = new BufferedImage(16, 16, BufferedImage.TYPE_BYTE_GRAY);
    for (int y = 0; y < 16; y++) {
      for (int x = 0; x < 16; x++) {
        greys.getRaster().setSample(x, y, 0, 100);
      }
    }
    assertEquals(100, channel(shown(TestPngs.png(greys)), 3, 1));
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(greys, "jpeg", jpeg));
    assertEquals(100, channel(shown(jpeg.toByteArray(), PhotoFormat.JPEG, 16, 16), 3, 1));
  }

  @Test
  void aGreyProfileIsFollowed() throws IOException {
    BufferedImage greys = new BufferedImage(256, 1, BufferedImage.TYPE_BYTE_GRAY);
    for (int x = 0; x < 256; x++) {
      greys.getRaster().setSample(x, 0, 0, x);
    }
    BufferedImage shown = shown(TestPngs.withProfile(TestPngs.png(greys), TestProfiles.grey(1.8)));
    for (int x = 0; x < 256; x += 5) {
      double light = Math.pow(x / 255.0, 1.8);
      double expected = // IEC 61966-2-1:1999, 5.2
          255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055);
      assertEquals(expected, channel(shown, x, 0), 1.5, "grey " + x);
      assertEquals(channel(shown, x, 0), channel(shown, x, 1), 1);
      assertEquals(channel(shown, x, 0), channel(shown, x, 2), 1);
    }
  }

  @Test
  void aPaletteFollowsTheProfileToo() throws IOException {
    int[] pair = MEASURED[0];
    BufferedImage palette =
        new BufferedImage(
            4,
            4,
            BufferedImage.TYPE_BYTE_INDEXED,
            new IndexColorModel(
                8,
                2,
                new int[] {0, pair[0] << 16 | pair[1] << 8 | pair[2]},
                0,
                false,
                -1,
                DataBuffer.TYPE_BYTE));
    for (int x = 0; x < 4; x++) {
      for (int y = 0; y < 4; y++) {
        palette.getRaster().setSample(x, y, 0, 1);
      }
    }
    assertColour(
        pair, 1, shown(TestPngs.withProfile(TestPngs.png(palette), TestProfiles.displayP3())));
  }

  /** Photos with damaged profiles in the test jar of imageio-jpeg. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "jpeg/corrupted-icc-srgb.jpg, 1024, 685",
        "jpeg/cmm-exception-invalid-icc-profile-data.jpg, 1993, 1038",
        "jpeg/exif-empty-icc-profile.jpeg, 612, 816",
        "jpeg/invalid-icc-single-chunk-bad-sequence-number.jpg, 1772, 2126"
      })
  void aPhotoWithABrokenProfileIsStillShown(String photo) throws IOException {
    String[] parts = photo.split(", ");
    Path file = TestPhotos.fromJar(parts[0], folder);
    BufferedImage shown =
        new Pictures()
            .whole(
                TestPhotos.upright(
                    file, PhotoFormat.JPEG, Integer.parseInt(parts[1]), Integer.parseInt(parts[2])),
                200);
    assertNotNull(shown);
    BufferedImage black = Painted.plain(shown.getWidth(), shown.getHeight(), 0);
    assertTrue(TestPhotos.lumaDifference(shown, black) > 5, "all black");
  }

  @Test
  void aBrokenProfileInAPngIsAsGoodAsNone() throws IOException {
    byte[] plain = TestPngs.png(Painted.scene(40, 30));
    byte[] broken = TestProfiles.displayP3().getData();
    Arrays.fill(broken, 140, broken.length, (byte) 0x5a);
    BufferedImage expected = shown(plain, PhotoFormat.PNG, 40, 30);
    for (byte[] profile :
        List.of(broken, new byte[3], new byte[0], TestProfiles.grey(2).getData())) {
      BufferedImage shown = shown(TestPngs.withProfile(plain, profile), PhotoFormat.PNG, 40, 30);
      TestPhotos.assertSamePixels(expected, shown, 0);
    }
  }

  private BufferedImage shown(byte[] png) throws IOException {
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(png));
    return shown(png, PhotoFormat.PNG, read.getWidth(), read.getHeight());
  }

  private BufferedImage shown(byte[] bytes, PhotoFormat format, int width, int height)
      throws IOException {
    Path file = Files.write(folder.resolve("photo"), bytes);
    Photo photo = TestPhotos.upright(file, format, width, height);
    return new Pictures().whole(photo, Math.max(width, height));
  }

  private static int channel(BufferedImage picture, int x, int channel) {
    return picture.getRGB(x, 0) >> (16 - 8 * channel) & 0xff;
  }
}
