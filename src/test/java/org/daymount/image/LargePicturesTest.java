package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
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
import org.junit.jupiter.params.provider.ValueSource;

/** Two hundred megapixels in a Java of 512 MB, and what is refused because it needs more. */
@Tag("slow")
class LargePicturesTest {
  private static final int WIDTH = 16_320;
  private static final int STRIP = 128;
  private static final int TIMES = 96; // 200.5 megapixels
  private static final long MOST_KB = 700_000;

  @TempDir Path folder;

  private Path strip(int width, String... options) throws IOException {
    Path ppm = Files.write(folder.resolve("strip.ppm"), TallJpeg.strip(width, STRIP));
    Path jpeg = folder.resolve("strip.jpg");
    List<String> command = new ArrayList<>(List.of("-restart", "1", "-quality", "88"));
    command.addAll(List.of(options));
    command.addAll(List.of("-outfile", jpeg.toString(), ppm.toString()));
    Tool.orSkip("cjpeg", "-version").run(command.toArray(String[]::new));
    Files.delete(ppm);
    return jpeg;
  }

  @ParameterizedTest
  @ValueSource(strings = {"-baseline", "-progressive"})
  void aSheetOfTwoHundredMegapixelsTakesLessThanSevenHundredMegabytes(String kind)
      throws IOException {
    Path strip = strip(WIDTH, kind);
    Path large = folder.resolve("large.jpg");
    TallJpeg.write(Files.readAllBytes(strip), TIMES, large);
    PixelBox part = new PixelBox(7001, 40 * STRIP + 33, 300, 60);
    Path png = folder.resolve("part.png");
    long memory = render(large, part, png);
    assertTrue(memory <= MOST_KB, memory + " kB");

    BufferedImage whole = ImageIO.read(strip.toFile());
    TestPhotos.assertSamePixels(
        whole.getSubimage(part.x(), 33, part.width(), part.height()),
        ImageIO.read(png.toFile()),
        3);
  }

  private static long render(Path file, PixelBox part, Path png) throws IOException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                RenderWorker.class.getName(),
                file.toString(),
                "" + part.x(),
                "" + part.y(),
                "" + part.width(),
                "" + part.height(),
                png.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes());
    assertTrue(said.startsWith("memory "), said);
    return Long.parseLong(said.strip().substring("memory ".length()));
  }

  /** Red, green and blue stored as such are left to a full decoder, which holds 6 bytes a pixel. */
  @Test
  void aLargeProgressivePictureThatOnlyAFullDecoderReadsIsRefused() throws IOException {
    Path large = folder.resolve("large.jpg");
    TallJpeg.write(Files.readAllBytes(strip(WIDTH / 4, "-progressive", "-rgb")), TIMES, large);
    Photo photo = TestPhotos.upright(large, PhotoFormat.JPEG, WIDTH / 4, STRIP * TIMES);
    UnusablePicture refused =
        assertThrows(UnusablePicture.class, () -> new Pictures().whole(photo, 1000));
    assertEquals(Problem.Kind.TOO_LARGE, refused.kind());
    assertEquals(
        "is a progressive JPEG of 50 million pixels, of a kind that takes 300 MB to decode; save it"
            + " as a plain (not progressive) JPEG, or smaller",
        refused.getMessage());
  }

  /** A scan that says "nothing new" takes a few bytes, but a decoder goes over all blocks again. */
  @Test
  void aPictureToldInThousandsOfScansIsRefused() throws IOException {
    Path large = folder.resolve("large.jpg");
    TallJpeg.write(Files.readAllBytes(strip(4096, "-progressive", "-grayscale")), TIMES, large);
    byte[] file = Files.readAllBytes(large);
    int last = lastScan(file);
    ByteArrayOutputStream bomb = new ByteArrayOutputStream();
    bomb.write(file, 0, last);
    for (int i = 0; i < 1000; i++) {
      bomb.write(file, last, 40);
    }
    bomb.write(file, last, file.length - last);
    Files.write(large, bomb.toByteArray());
    Photo photo = TestPhotos.upright(large, PhotoFormat.JPEG, 4096, STRIP * TIMES);
    for (UnusablePicture refused :
        List.of(
            assertThrows(UnusablePicture.class, () -> new Pictures().whole(photo, 1000)),
            assertThrows(
                UnusablePicture.class,
                () ->
                    new Pictures()
                        .part(photo, new PixelBox(0, 0, 60, 40), new PixelSize(60, 40))))) {
      assertEquals(Problem.Kind.UNREADABLE, refused.kind());
      assertTrue(refused.getMessage().contains("scans, far more than"), refused.getMessage());
    }
  }

  private static int lastScan(byte[] file) {
    for (int i = file.length - 2; i > 0; i--) {
      if (file[i] == (byte) 0xff && file[i + 1] == (byte) 0xda) {
        return i;
      }
    }
    throw new IllegalStateException(Arrays.toString(Arrays.copyOf(file, 20)));
  }
}
