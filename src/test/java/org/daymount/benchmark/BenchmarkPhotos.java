package org.daymount.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.daymount.photo.Photo;

/**
 * What the microbenchmarks read: one photo of each kind that {@link PaintedMonth} has, painted at
 * the first use into the folder that the build may throw away.
 *
 * @param baseline 12 megapixels
 * @param progressive 12 megapixels
 * @param large 48 megapixels
 */
public record BenchmarkPhotos(Photo baseline, Photo progressive, Photo large) {
  private static final Path FOLDER = Path.of("target", "benchmark", "month-10");

  public static BenchmarkPhotos make() throws IOException {
    List<Path> month = PaintedMonth.make(FOLDER, 10);
    return new BenchmarkPhotos(
        read(month.get(PaintedMonth.BASELINE)),
        read(month.get(PaintedMonth.PROGRESSIVE)),
        read(month.get(PaintedMonth.LARGE)));
  }

  /** Its tags; nothing is decoded. */
  public static Photo read(Path file) {
    return FirstLook.found(file, 1).photos().get(0);
  }
}
