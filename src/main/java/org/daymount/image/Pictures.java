package org.daymount.image;

import java.awt.image.BufferedImage;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/** Decoded pictures: always upright, always sRGB (IEC 61966-2-1), always TYPE_INT_RGB. */
public final class Pictures {
  /** The whole picture with a long edge of at most {@code longEdge} pixels; never enlarged. */
  public BufferedImage whole(Photo photo, int longEdge) throws UnusablePicture {
    throw new UnsupportedOperationException();
  }

  /**
   * Part of the picture, resampled with Lanczos-3 to exactly {@code target} pixels.
   *
   * @param window upright pixels of the whole photo
   */
  public BufferedImage part(Photo photo, PixelBox window, PixelSize target) throws UnusablePicture {
    throw new UnsupportedOperationException();
  }
}
