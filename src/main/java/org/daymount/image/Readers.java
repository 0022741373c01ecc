package org.daymount.image;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;

/**
 * The decoder for a format. For JPEG, TIFF and WebP always TwelveMonkeys, whatever order the
 * readers were registered in: of the readers at hand it alone gives right colours for CMYK and
 * YCCK, and for plain JPEG it hands the work to the JDK's reader at no measurable cost.
 */
final class Readers {
  private static final String PREFERRED = "com.twelvemonkeys.";

  private Readers() {}

  /** A new reader; the caller disposes of it. */
  static ImageReader forFormat(PhotoFormat format) throws UnusablePicture {
    String name = imageIoName(format);
    List<ImageReaderSpi> known = new ArrayList<>();
    Iterator<ImageReaderSpi> all =
        IIORegistry.getDefaultInstance().getServiceProviders(ImageReaderSpi.class, true);
    while (all.hasNext()) {
      ImageReaderSpi spi = all.next();
      if (List.of(spi.getFormatNames()).contains(name)) {
        known.add(spi.getClass().getName().startsWith(PREFERRED) ? 0 : known.size(), spi);
      }
    }
    if (known.isEmpty()) {
      throw new IllegalStateException("no decoder for " + name + " on the class path");
    }
    try {
      return known.get(0).createReaderInstance();
    } catch (IOException e) {
      throw new IllegalStateException("the decoder for " + name + " does not start", e);
    }
  }

  private static String imageIoName(PhotoFormat format) throws UnusablePicture {
    return switch (format) {
      case JPEG -> "jpeg";
      case PNG -> "png";
      case WEBP -> "webp";
      case TIFF -> "tiff";
      case GIF -> "gif";
      case BMP -> "bmp";
      case RAW ->
          throw new UnusablePicture(
              Problem.Kind.NOT_YET_READABLE,
              "is a raw file, whose own picture is not developed here; save a JPEG copy of it");
      case HEIF, AVIF -> throw new IllegalArgumentException(format + " has its own reader");
    };
  }
}
