package org.daymount.image;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Upright pictures out of HEIF and AVIF files. When the whole picture is wanted small and only to
 * be shown, a stored thumbnail of at least that size is decoded in its place; one that cannot be is
 * no fault of the picture.
 */
final class HeifSource {
  private HeifSource() {}

  /** The whole picture, from its thumbnail where that is large enough. */
  static BufferedImage shown(Photo photo, PixelSize target) throws IOException {
    if (!TileReaders.isAvailable()) {
      return upright(photo, photo.size().whole(), target);
    }
    PixelSize storedTarget = photo.orientation().stored(target);
    try {
      Optional<PixelSize> thumbnail = HeifRegionReader.thumbnail(photo.file().path(), storedTarget);
      if (thumbnail.isPresent()) {
        return upright(photo, thumbnail.get(), true, thumbnail.get().whole(), storedTarget);
      }
    } catch (IOException e) {
      // the picture itself has the word
    }
    return upright(photo, photo.size().whole(), target);
  }

  /** With the decoder that comes along; where it does not load, a converter's picture. */
  static BufferedImage upright(Photo photo, PixelBox window, PixelSize target) throws IOException {
    if (!TileReaders.isAvailable()) {
      try (HeifConverter.Converted converted = HeifConverter.convert(photo)) {
        return RegionSource.upright(converted.photo(), window, target);
      }
    }
    ExifOrientation orientation = photo.orientation();
    return upright(
        photo,
        orientation.stored(photo.size()),
        false,
        ExifRotator.toStored(window, photo.size(), orientation),
        orientation.stored(target));
  }

  private static BufferedImage upright(
      Photo photo, PixelSize stored, boolean thumbnail, PixelBox window, PixelSize target)
      throws IOException {
    DecodeRegion plan = DecodeRegion.of(stored, window, target);
    BufferedImage region = HeifRegionReader.read(photo.file().path(), stored, thumbnail, plan);
    return RegionSource.upright(region, plan, photo.orientation());
  }
}
