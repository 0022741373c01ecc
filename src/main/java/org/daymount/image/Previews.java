package org.daymount.image;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import net.coobird.thumbnailator.Thumbnails;
import org.daymount.unit.PixelSize;

/** Small pictures for web pages and reports: quick and light, not for printing. */
public final class Previews {
  private Previews() {}

  /**
   * A JPEG with a long edge of at most {@code longEdge} pixels; never enlarged.
   *
   * @param picture sRGB, TYPE_INT_RGB
   * @param quality 0 to 1
   */
  public static byte[] jpeg(BufferedImage picture, int longEdge, double quality) {
    return new JpegEncoder((float) quality, false, Optional.empty(), false)
        .encode(scaled(picture, longEdge));
  }

  /** A new picture, TYPE_INT_RGB, with a long edge of at most {@code longEdge}; never enlarged. */
  public static BufferedImage scaled(BufferedImage picture, int longEdge) {
    PixelSize size = new PixelSize(picture.getWidth(), picture.getHeight()).within(longEdge);
    try {
      return Thumbnails.of(picture)
          .forceSize(size.width(), size.height())
          .imageType(BufferedImage.TYPE_INT_RGB)
          .asBufferedImage();
    } catch (IOException e) {
      throw new UncheckedIOException("a picture in memory could not be scaled", e);
    }
  }
}
