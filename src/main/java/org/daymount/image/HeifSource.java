package org.daymount.image;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Upright pictures out of HEIF and AVIF files. When the whole picture is wanted small, a stored
 * thumbnail of at least that size is decoded in its place.
 */
final class HeifSource {
  private HeifSource() {}

  static BufferedImage upright(Photo photo, PixelBox window, PixelSize target) throws IOException {
    ExifOrientation orientation = photo.orientation();
    PixelSize storedTarget = orientation.stored(target);
    boolean whole = window.equals(photo.size().whole());
    Optional<PixelSize> thumbnail =
        whole ? HeifRegionReader.thumbnail(photo.file().path(), storedTarget) : Optional.empty();
    PixelSize stored = thumbnail.orElse(orientation.stored(photo.size()));
    PixelBox storedWindow =
        thumbnail
            .map(PixelSize::whole)
            .orElse(Orienter.toStored(window, photo.size(), orientation));
    ReadPlan plan = ReadPlan.of(stored, storedWindow, storedTarget);
    BufferedImage region =
        HeifRegionReader.read(photo.file().path(), stored, thumbnail.isPresent(), plan);
    return Pictures.upright(region, plan, orientation);
  }
}
