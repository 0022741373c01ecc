package org.daymount.output;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
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
  private final Cache kept;
  private final Map<String, byte[]> made = new ConcurrentHashMap<>();

  public PagePictures(PictureSource pictures) {
    this(pictures, Cache.NONE);
  }

  /**
   * @param kept pictures of earlier runs
   */
  public PagePictures(PictureSource pictures, Cache kept) {
    this.pictures = pictures;
    this.kept = kept;
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
      return made.computeIfAbsent(
          recipe,
          key ->
              kept.get(Cache.Keep.DRAWN, key, KeptPicture.class)
                  .map(KeptPicture::jpeg)
                  .orElseGet(() -> draw(photo, crop, size, key)));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private byte[] draw(Photo photo, Crop crop, PixelSize size, String recipe) {
    try {
      byte[] jpeg = jpeg(pictures.part(photo, crop.window(), size));
      kept.put(Cache.Keep.DRAWN, recipe, new KeptPicture(jpeg));
      return jpeg;
    } catch (UnusablePicture e) {
      throw new UncheckedIOException(new IOException(photo.file() + ": " + e.getMessage(), e));
    }
  }

  static byte[] jpeg(BufferedImage image) {
    return Previews.jpeg(image, Math.max(image.getWidth(), image.getHeight()), QUALITY);
  }
}
