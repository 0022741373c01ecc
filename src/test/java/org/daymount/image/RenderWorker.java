package org.daymount.image;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.daymount.photo.Photo;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Looks at a large picture as a run does, prints a sheet of nearly all of it and one of a small
 * part, and says what memory that took. Arguments: the picture, x, y, width and height of the part,
 * a PNG file for the part at its own size.
 */
final class RenderWorker {
  private RenderWorker() {}

  public static void main(String[] arguments) throws IOException {
    Path file = Path.of(arguments[0]);
    PictureHeader header = new PictureHeaders().read(file);
    PixelSize size = header.stored();
    Photo photo = TestPhotos.upright(file, header.format(), size.width(), size.height());
    Pictures pictures = new Pictures();
    pictures.whole(photo, 1000);
    int high = size.width() * 2 / 3;
    pictures.part(photo, new PixelBox(0, 100, size.width(), high), new PixelSize(1800, 1200));
    PixelBox window = new PixelBox(number(arguments[1]), number(arguments[2]), 3600, 2400);
    pictures.part(photo, window, new PixelSize(1800, 1200));
    PixelBox part =
        new PixelBox(
            number(arguments[1]), number(arguments[2]), number(arguments[3]), number(arguments[4]));
    ImageIO.write(pictures.part(photo, part, part.size()), "png", new File(arguments[5]));
    System.out.println("memory " + mostMemory());
  }

  private static int number(String argument) {
    return Integer.parseInt(argument);
  }

  /** The most the process ever held, in kB; 0 where the system does not tell. */
  private static long mostMemory() throws IOException {
    Path status = Path.of("/proc/self/status");
    return Files.notExists(status)
        ? 0
        : Files.readAllLines(status).stream()
            .filter(line -> line.startsWith("VmHWM:"))
            .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
            .findFirst()
            .orElse(0);
  }
}
