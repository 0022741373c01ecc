package org.daymount.output;

import java.awt.image.BufferedImage;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/** Where a sheet's pictures come from; {@code new Pictures()::part} outside of tests. */
@FunctionalInterface
public interface PictureSource {
  /**
   * Part of a photo, resampled to exactly {@code target} pixels, sRGB.
   *
   * @param window upright pixels of the whole photo
   */
  BufferedImage part(Photo photo, PixelBox window, PixelSize target) throws UnusablePicture;
}
