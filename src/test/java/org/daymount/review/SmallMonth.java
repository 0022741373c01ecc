package org.daymount.review;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.daymount.look.Painted;
import org.daymount.testphoto.ExifPhoto;

/** A few painted pictures of June 2026, with a note: enough for every kind of choice. */
final class SmallMonth {
  static final String NOTE =
      "June 2026\n\n1 4x6\nThe note's own words.\n\n2 two 3x4\nA page with two.\n";

  private SmallMonth() {}

  static Path paint(Path folder) throws IOException {
    Files.createDirectories(folder);
    photo(folder, "one-a.jpg", "2026:06:01 10:00:00", scene(1800, 1200, 1));
    photo(folder, "one-b.jpg", "2026:06:01 15:30:00", scene(1800, 1200, 2));
    photo(folder, "two-a.jpg", "2026:06:02 09:00:00", scene(1600, 1200, 3));
    photo(folder, "two-b.jpg", "2026:06:02 19:00:00", scene(1600, 1200, 4));
    photo(folder, "three.jpg", "2026:06:03 12:00:00", scene(1200, 1800, 5));
    for (int i = 0; i < 3; i++) {
      photo(folder, "four-" + i + ".jpg", "2026:06:04 12:00:0" + i, moved(6, i));
    }
    photo(folder, "five.jpg", "2026:06:05 12:00:00", scene(1800, 1200, 7));
    ExifPhoto.painted().picture(scene(1200, 900, 8)).write(folder.resolve("nodate.jpg"));
    Files.writeString(folder.resolve("note.txt"), NOTE);
    return folder;
  }

  static BufferedImage scene(int width, int height, long seed) {
    return Painted.scene(width, height, seed);
  }

  private static void photo(Path folder, String name, String taken, BufferedImage picture)
      throws IOException {
    ExifPhoto.painted().picture(picture).original(taken).write(folder.resolve(name));
  }

  /** The same scene, the camera moved by a few pixels. */
  private static BufferedImage moved(long seed, int by) {
    BufferedImage scene = scene(1800, 1200, seed);
    BufferedImage moved = Painted.plain(1800, 1200, Color.GRAY);
    Graphics2D pen = moved.createGraphics();
    pen.drawImage(scene, -3 * by, -2 * by, null);
    pen.dispose();
    return moved;
  }
}
