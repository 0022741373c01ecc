package org.daymount.image;

import java.awt.image.BufferedImage;
import java.util.Optional;
import org.daymount.unit.Ppi;

/**
 * A picture as a print lab wants it (common practice, no source): baseline JPEG of quality 95 with
 * full colour resolution, its print size given by the JFIF density (ITU-T T.871, 10.1), the sRGB
 * profile inside, and nothing about camera or place.
 */
public final class PrintJpegEncoder {
  private static final float QUALITY = 0.95f;
  private static final int MOST_DENSITY = 0xffff; // two bytes in the file

  private PrintJpegEncoder() {}

  /**
   * The file's bytes; the same for the same pixels on the same Java.
   *
   * @param picture sRGB without transparency, TYPE_INT_RGB
   * @param ppi written as the nearest whole number, 1 to 65535
   */
  public static byte[] encode(BufferedImage picture, Ppi ppi) {
    if (picture.getType() != BufferedImage.TYPE_INT_RGB) {
      throw new IllegalArgumentException("not TYPE_INT_RGB but type " + picture.getType());
    }
    int density = (int) Math.min(MOST_DENSITY, Math.max(1, Math.round(ppi.value())));
    return new JpegEncoder(QUALITY, true, Optional.of(density), true).encode(picture);
  }
}
