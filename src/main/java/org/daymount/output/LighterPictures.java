package org.daymount.output;

import java.awt.image.BufferedImage;
import org.daymount.image.Lightener;
import org.daymount.image.Lightening;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/** Pictures made lighter for the print, or as they are when that is not asked for. */
public final class LighterPictures implements PictureSource {
  private final PictureSource pictures;
  private final Lightener lightener;

  public LighterPictures(PictureSource pictures, Lightening lightening) {
    this.pictures = pictures;
    this.lightener = new Lightener(lightening);
  }

  @Override
  public BufferedImage part(Photo photo, PixelBox window, PixelSize target) throws UnusablePicture {
    return lightener.lighten(pictures.part(photo, window, target));
  }
}
