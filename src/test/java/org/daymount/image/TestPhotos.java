package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelSize;

/** Photos for the tests of this package: files written by a test, or pictures of the test jars. */
final class TestPhotos {
  private TestPhotos() {}

  static Photo photo(Path file, PhotoFormat format, PixelSize stored, ExifOrientation orientation) {
    try {
      return PhotoBuilder.at(file.getParent(), file.getFileName().toString())
          .bytes(Files.size(file))
          .format(format)
          .size(orientation.upright(stored))
          .orientation(orientation)
          .photo();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Photo upright(Path file, PhotoFormat format, int width, int height) {
    return photo(file, format, new PixelSize(width, height), ExifOrientation.TOP_LEFT);
  }

  /** Copies a picture of a test jar to a folder. */
  static Path fromJar(String resource, Path folder) {
    try (InputStream in = TestPhotos.class.getResourceAsStream("/" + resource)) {
      if (in == null) {
        throw new IllegalStateException("not on the test class path: " + resource);
      }
      Path file = folder.resolve(resource.substring(resource.lastIndexOf('/') + 1));
      Files.copy(in, file, StandardCopyOption.REPLACE_EXISTING);
      return file;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Fails at the first pixel that differs by more than {@code tolerance} levels. */
  static void assertSamePixels(BufferedImage expected, BufferedImage actual, int tolerance) {
    assertEquals(expected.getWidth(), actual.getWidth(), "width");
    assertEquals(expected.getHeight(), actual.getHeight(), "height");
    for (int y = 0; y < expected.getHeight(); y++) {
      for (int x = 0; x < expected.getWidth(); x++) {
        int a = expected.getRGB(x, y);
        int b = actual.getRGB(x, y);
        for (int shift = 0; shift <= 16; shift += 8) {
          if (Math.abs((a >> shift & 0xff) - (b >> shift & 0xff)) > tolerance) {
            fail(String.format("pixel %d,%d is %06x, not %06x", x, y, b & 0xffffff, a & 0xffffff));
          }
        }
      }
    }
  }

  /** Mean absolute difference of luma (ITU-R BT.601), 0 to 255. */
  static double lumaDifference(BufferedImage a, BufferedImage b) {
    double sum = 0;
    for (int y = 0; y < a.getHeight(); y++) {
      for (int x = 0; x < a.getWidth(); x++) {
        sum += Math.abs(luma(a.getRGB(x, y)) - luma(b.getRGB(x, y)));
      }
    }
    return sum / a.getWidth() / a.getHeight();
  }

  private static double luma(int rgb) {
    return 0.299 * (rgb >> 16 & 0xff) + 0.587 * (rgb >> 8 & 0xff) + 0.114 * (rgb & 0xff);
  }
}
