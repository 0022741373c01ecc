package org.daymount.ingest;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * An XMP file beside a photo: {@code name.xmp} by the standard (XMP part 3, "External storage of
 * metadata"; ISO 16684-1), {@code name.ext.xmp} as several programs write it (common practice, no
 * source).
 */
final class Sidecar {
  private static final int MOST_BYTES = 1 << 20;

  private Sidecar() {}

  /** The dates it tells, best first; none where there is no such file, or none that can be read. */
  static List<String> dates(Path photo) {
    String name = photo.getFileName().toString();
    for (String beside : List.of(FileKind.base(name), name)) {
      for (String ending : List.of(".xmp", ".XMP")) {
        Path file = photo.resolveSibling(beside + ending);
        if (Files.isRegularFile(file)) {
          return read(file);
        }
      }
    }
    return List.of();
  }

  private static List<String> read(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      return bytes.length > MOST_BYTES ? List.of() : new TagReader().xmpDates(bytes);
    } catch (IOException e) {
      return List.of();
    }
  }
}
