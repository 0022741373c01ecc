package org.daymount.ingest;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.daymount.file.SmallFile;
import org.daymount.photo.TakenFrom;

/**
 * An XMP file beside a photo: {@code name.xmp} by the standard (XMP part 3, "External storage of
 * metadata"; ISO 16684-1), {@code name.ext.xmp} as several programs write it (common practice, no
 * source).
 */
final class Sidecar {
  private static final int MOST_BYTES = 1_000_000;

  private Sidecar() {}

  /** The dates it tells, best first; none where there is no such file, or none that can be read. */
  static List<String> dates(Path photo) {
    return of(photo).map(Sidecar::read).map(Read::dates).orElse(List.of());
  }

  /**
   * Why the file beside a photo tells nothing, with its name; empty where there is none, it can be
   * read, or it was not asked.
   *
   * @param from where the photo's time was found in the end
   */
  static Optional<String> remark(Path photo, TakenFrom from) {
    return switch (from) {
      case PERSON, ORIGINAL, DIGITIZED, XMP, SIDECAR -> Optional.empty();
      default ->
          of(photo)
              .flatMap(
                  file ->
                      read(file)
                          .wrong()
                          .map(
                              why ->
                                  "has no date of its own, and the file beside it, "
                                      + file.getFileName()
                                      + ", "
                                      + why));
    };
  }

  private static Optional<Path> of(Path photo) {
    String name = photo.getFileName().toString();
    for (String beside : List.of(FileKind.base(name), name)) {
      for (String ending : List.of(".xmp", ".XMP")) {
        Path file = photo.resolveSibling(beside + ending);
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(file)) {
          return Optional.of(file);
        }
      }
    }
    return Optional.empty();
  }

  /**
   * @param wrong why there are none
   */
  private record Read(List<String> dates, Optional<String> wrong) {}

  private static Read read(Path file) {
    try {
      return new TagReader()
          .xmpDates(SmallFile.bytes(file, MOST_BYTES))
          .map(dates -> new Read(dates, Optional.empty()))
          .orElseGet(() -> unread("is no XMP that can be read; write it anew, or remove it"));
    } catch (SmallFile.Odd e) {
      return unread(e.getMessage());
    }
  }

  private static Read unread(String why) {
    return new Read(List.of(), Optional.of(why));
  }
}
