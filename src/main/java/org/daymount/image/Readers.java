package org.daymount.image;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import org.daymount.photo.PhotoFormat;

/**
 * The decoder for a format. For JPEG, TIFF and WebP always TwelveMonkeys, whatever order the
 * readers were registered in: of the readers at hand it alone gives right colours for CMYK and
 * YCCK, and for plain JPEG it hands the work to the JDK's reader at no measurable cost.
 */
final class Readers {
  private static final String PREFERRED = "com.twelvemonkeys.";

  static {
    ImageIO.setUseCache(false); // no copies of pictures in the temporary directory
  }

  private Readers() {}

  /** A new reader; the caller disposes of it. */
  static ImageReader forFormat(PhotoFormat format) {
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

  private static String imageIoName(PhotoFormat format) {
    return switch (format) {
      case JPEG, RAW -> "jpeg"; // of a raw file, the preview in it
      case PNG -> "png";
      case WEBP -> "webp";
      case TIFF -> "tiff";
      case GIF -> "gif";
      case BMP -> "bmp";
      case HEIF, AVIF -> throw new IllegalArgumentException(format + " has its own reader");
    };
  }
}
