package org.daymount.choices;

import org.daymount.unit.PixelBox;

/**
 * The part of a photo a person wants printed.
 *
 * @param window upright pixels of the whole photo, as its EXIF orientation has it, before any
 *     quarter turn the person asked for
 * @param sha256 of the photo it was drawn on; on any other content it means nothing
 */
public record CropChoice(PixelBox window, String sha256, UnknownFields other) {
  public CropChoice(PixelBox window, String sha256) {
    this(window, sha256, UnknownFields.NONE);
  }
}
