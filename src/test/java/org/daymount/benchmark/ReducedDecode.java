package org.daymount.benchmark;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.daymount.image.jpeg.JpegRefused;
import org.daymount.image.jpeg.ReducedJpeg;
import org.daymount.image.jpeg.Reduction;

/** The reduced decoder alone, brightness of every file of a folder. */
final class ReducedDecode {
  private ReducedDecode() {}

  public static void main(String[] arguments) throws IOException {
    Reduction reduction = Reduction.valueOf(arguments[1]);
    long sum = 0;
    int refused = 0;
    try (DirectoryStream<Path> files = Files.newDirectoryStream(Path.of(arguments[0]), "*.jpg")) {
      for (Path file : files) {
        try {
          sum += ReducedJpeg.decode(Files.readAllBytes(file), reduction).brightness().length;
        } catch (JpegRefused e) {
          refused++;
        }
      }
    }
    System.out.println(sum + " pixels, " + refused + " files refused");
  }
}
