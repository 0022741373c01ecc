package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PrintJpegEncoderTest {
  @TempDir Path folder;

  private final BufferedImage painted = Painted.scene(180, 120);

  @Test
  void theJfifHeaderGivesThePrintSizeInDotsPerInch() {
    byte[] file = PrintJpegEncoder.encode(painted, Ppi.ppi(300));
    // ITU-T T.871 (05/2011), 10.1: SOI, APP0, length 16, "JFIF" NUL, version 1.02, units at offset
    // 13 (1: dots per inch), then the two densities, two bytes each, high byte first.
    assertArrayEquals(
        new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe0, 0, 16},
        Arrays.copyOf(file, 6));
    assertEquals("JFIF\0", new String(file, 6, 5, StandardCharsets.US_ASCII));
    assertArrayEquals(
        new byte[] {1, 300 >> 8, (byte) 300, 300 >> 8, (byte) 300},
        Arrays.copyOfRange(file, 13, 18));
  }

  @Test
  void itIsBaselineInFullColourWithTheSrgbProfileAndNoExif() {
    byte[] file = PrintJpegEncoder.encode(painted, Ppi.ppi(300));
    JpegSegments segments = JpegSegments.of(file);

    byte[] frame = segments.only(0xc0); // SOF0, baseline: ITU-T T.81, table B.1
    assertEquals(3, frame[5], "components");
    for (int component = 0; component < 3; component++) {
      assertEquals(0x11, frame[7 + 3 * component], "sampling factors of component " + component);
    }
    byte[] icc = segments.only(0xe2); // ICC.1:2010, B.4: "ICC_PROFILE" NUL, number, count
    assertEquals("ICC_PROFILE\0", new String(icc, 0, 12, StandardCharsets.US_ASCII));
    assertArrayEquals(
        ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData(),
        Arrays.copyOfRange(icc, 14, icc.length));
    assertTrue(segments.of(0xe1).isEmpty(), "APP1 would hold EXIF or XMP");
  }

  @Test
  void thePictureComesBackNearlyAsItWas() throws IOException {
    byte[] file = PrintJpegEncoder.encode(painted, Ppi.ppi(300));
    BufferedImage back = ImageIO.read(new ByteArrayInputStream(file));
    double difference = TestPhotos.lumaDifference(painted, back);
    assertTrue(difference < 1, "mean luma difference " + difference);
  }

  @Test
  void theSamePixelsGiveTheSameBytes() {
    assertArrayEquals(
        PrintJpegEncoder.encode(painted, Ppi.ppi(300)),
        PrintJpegEncoder.encode(Painted.scene(180, 120), Ppi.ppi(300)));
  }

  @Test
  void aPictureThatMayBeTransparentIsRefused() {
    BufferedImage clear = new BufferedImage(4, 4, BufferedImage.TYPE_INT_ARGB);
    assertThrows(
        IllegalArgumentException.class, () -> PrintJpegEncoder.encode(clear, Ppi.ppi(300)));
  }

  @Test
  void exiftoolReadsThreeHundredDotsPerInchAndNoExif() throws IOException {
    Tool exiftool = Tool.orSkip("exiftool", "-ver");
    String said = exiftool.run("-a", "-G1", "-s", written().toString());
    assertTrue(said.contains("XResolution                     : 300"), said);
    assertTrue(said.contains("YResolution                     : 300"), said);
    assertTrue(said.contains("ResolutionUnit                  : inches"), said);
    assertTrue(said.contains("YCbCr4:4:4"), said);
    assertTrue(said.contains("Baseline DCT"), said);
    assertTrue(said.contains("sRGB"), said);
    assertTrue(!said.contains("[IFD0]") && !said.contains("[XMP"), said);
  }

  @Test
  void identifyReadsQualityNinetyFive() throws IOException {
    Tool identify = Tool.orSkip("identify", "-version");
    assertEquals(
        "JPEG 180x120 300x300 PixelsPerInch Q95 sRGB",
        identify.run("-format", "%m %wx%h %xx%y %U Q%Q %[colorspace]", written().toString()));
  }

  private Path written() throws IOException {
    return Files.write(folder.resolve("sheet.jpg"), PrintJpegEncoder.encode(painted, Ppi.ppi(300)));
  }
}
