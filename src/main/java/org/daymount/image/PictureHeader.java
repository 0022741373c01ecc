package org.daymount.image;

import java.util.Optional;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.PhotoFormat;
import org.daymount.unit.PixelSize;

/**
 * What the first bytes of a picture file say; nothing has been decoded.
 *
 * @param stored width and height as stored, before any orientation
 * @param turned how HEIF and AVIF say themselves that they are to be turned; empty when they do
 *     not, and for all other formats, where the EXIF tag says it
 */
public record PictureHeader(
    PhotoFormat format, PixelSize stored, Optional<ExifOrientation> turned) {
  public PictureHeader(PhotoFormat format, PixelSize stored) {
    this(format, stored, Optional.empty());
  }
}
