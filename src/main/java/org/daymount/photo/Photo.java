package org.daymount.photo;

import java.util.Optional;
import org.daymount.unit.PixelSize;

/**
 * One readable picture file and what its header and tags say. Nothing of its pixels has been
 * decoded.
 *
 * @param bytes of the file; of a still, of its coded picture
 * @param sha256 of the whole file, lower case hexadecimal
 * @param size upright pixels
 * @param orientation as the tag says; {@link ExifOrientation#TOP_LEFT} when there is none
 * @param orientationTagged whether the file has an ExifOrientation tag at all
 * @param model the camera's model, for {@code --clock}; empty when unknown
 * @param burst what the phone marked the frames of one burst with, when it did: the same text in
 *     each, and nothing that can be read from it
 * @param screenshot why this is taken for a picture of a screen, when it is
 */
public record Photo(
    PhotoFile file,
    long bytes,
    String sha256,
    PhotoFormat format,
    PixelSize size,
    ExifOrientation orientation,
    boolean orientationTagged,
    Taken taken,
    Optional<String> model,
    Optional<String> burst,
    Optional<String> screenshot) {

  /** The same photo, seen turned clockwise: what a person asked for on top of the tag. */
  public Photo turned(int quarterTurns) {
    return new Photo(
        file,
        bytes,
        sha256,
        format,
        size.turned(quarterTurns),
        orientation.turned(quarterTurns),
        orientationTagged,
        taken,
        model,
        burst,
        screenshot);
  }

  /** The same photo at another time. */
  public Photo at(Taken other) {
    return new Photo(
        file,
        bytes,
        sha256,
        format,
        size,
        orientation,
        orientationTagged,
        other,
        model,
        burst,
        screenshot);
  }

  public Shape shape() {
    return Shape.of(size);
  }
}
