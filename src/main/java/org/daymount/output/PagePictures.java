package org.daymount.output;

import java.awt.image.BufferedImage;
import java.io.IOException;
import org.daymount.cache.Cache;
import org.daymount.crop.Crop;
import org.daymount.image.Previews;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/**
 * The pictures of the pages as JPEG, each decoded once for all documents that show the pages. Safe
 * for several threads.
 */
public final class PagePictures {
  /** Enough to judge a crop by; the prints themselves are in sheets. */
  static final Ppi PPI = new Ppi(110);

  private static final double QUALITY = 0.85;

  private final PictureSource pictures;
  private final DrawnPictures drawn;

  public PagePictures(PictureSource pictures) {
    this(pictures, Cache.NONE);
  }

  /**
   * @param kept pictures of earlier runs
   */
  public PagePictures(PictureSource pictures, Cache kept) {
    this.pictures = pictures;
    this.drawn = new DrawnPictures(kept);
  }

  /**
   * What the crop shows.
   *
   * @throws IOException when the photo cannot be read any more; the message names it
   */
  byte[] jpeg(Photo photo, Crop crop) throws IOException {
    PixelSize size = crop.picture().toPixels(PPI);
    String recipe =
        Recipe.of(
            "page picture",
            photo.sha256(),
            photo.size(),
            photo.orientation(),
            crop.window(),
            size,
            QUALITY);
    try {
      return drawn.get(recipe, () -> jpeg(pictures.part(photo, crop.window(), size)));
    } catch (UnusablePicture e) {
      throw new IOException(photo.file() + ": " + e.getMessage(), e);
    }
  }

  static byte[] jpeg(BufferedImage image) {
    return Previews.jpeg(image, Math.max(image.getWidth(), image.getHeight()), QUALITY);
  }
}
