package org.daymount.ingest;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.PhotoFormat;
import org.daymount.unit.PixelSize;

/**
 * Whether a picture is one of a screen. A comment or a name that says so is enough unless the
 * camera's settings are there as well; a size alone never is.
 */
final class ScreenshotEvidence {
  private static final Pattern NAME =
      Pattern.compile("screen[ _-]?shots?(?![a-z])", Pattern.CASE_INSENSITIVE);

  /**
   * Screens of phones, short edge x long edge (from memory). Sizes that films and layouts share
   * (1080 x 1920, 1440 x 2560, 720 x 1280 ...) are left out on purpose.
   */
  private static final Set<PixelSize> SCREENS =
      Set.of(
          new PixelSize(750, 1334),
          new PixelSize(828, 1792),
          new PixelSize(1008, 2244),
          new PixelSize(1080, 2280),
          new PixelSize(1080, 2340),
          new PixelSize(1080, 2400),
          new PixelSize(1080, 2408),
          new PixelSize(1080, 2424),
          new PixelSize(1125, 2436),
          new PixelSize(1170, 2532),
          new PixelSize(1179, 2556),
          new PixelSize(1206, 2622),
          new PixelSize(1242, 2208),
          new PixelSize(1242, 2688),
          new PixelSize(1284, 2778),
          new PixelSize(1290, 2796),
          new PixelSize(1320, 2868),
          new PixelSize(1344, 2992),
          new PixelSize(1440, 2960),
          new PixelSize(1440, 3088),
          new PixelSize(1440, 3200));

  private ScreenshotEvidence() {}

  /** The reason in words; empty for a photo. */
  static Optional<String> in(PhotoFile file, PhotoFormat format, PixelSize upright, Tags tags) {
    if (tags.cameraSettings()) {
      return Optional.empty();
    }
    if (tags.userComment().filter(ScreenshotEvidence::saysSo).isPresent()) {
      return Optional.of("its comment says screenshot");
    }
    if (NAME.matcher(file.lastName()).find()) {
      return Optional.of("its name says screenshot");
    }
    if (inScreenshotFolder(file)) {
      return Optional.of("it lies in a folder of screenshots");
    }
    PixelSize tall = upright.width() > upright.height() ? upright.turned() : upright;
    boolean noCamera = tags.model().isEmpty();
    if (format == PhotoFormat.PNG && noCamera && SCREENS.contains(tall)) {
      return Optional.of("it is a PNG without a camera, exactly the size of a phone's screen");
    }
    return Optional.empty();
  }

  static boolean saysSo(String comment) {
    return comment.equalsIgnoreCase("screenshot");
  }

  private static boolean inScreenshotFolder(PhotoFile file) {
    String[] parts = file.name().split("/");
    for (int i = 0; i < parts.length - 1; i++) {
      if (isScreenshotFolder(parts[i])) {
        return true;
      }
    }
    return file.folder().getFileName() != null
        && isScreenshotFolder(file.folder().getFileName().toString());
  }

  private static boolean isScreenshotFolder(String name) {
    return name.toLowerCase(Locale.ROOT).matches("screen[ _-]?shots?");
  }
}
