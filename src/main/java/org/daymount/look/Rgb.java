package org.daymount.look;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import org.daymount.unit.PixelSize;

/** A picture as three planes of sRGB values, 0 to 255. */
record Rgb(Plane red, Plane green, Plane blue) {
  // ITU-R BT.601-7, 2.5.1
  private static final float LUMA_RED = 0.299f;
  private static final float LUMA_GREEN = 0.587f;
  private static final float LUMA_BLUE = 0.114f;

  /** The picture averaged by area to the given size; the same size copies it. */
  static Rgb of(BufferedImage picture, PixelSize size) {
    Span[] columns = Span.all(picture.getWidth(), size.width());
    Span[] rows = Span.all(picture.getHeight(), size.height());
    Plane red = Plane.empty(size.width(), size.height());
    Plane green = Plane.empty(size.width(), size.height());
    Plane blue = Plane.empty(size.width(), size.height());
    Raster raster = checked(picture).getRaster();
    int[] line = new int[picture.getWidth()];
    for (int row = 0; row < size.height(); row++) {
      for (int y = 0; y < rows[row].shares().length; y++) {
        raster.getDataElements(0, rows[row].first() + y, line.length, 1, line);
        for (int column = 0; column < size.width(); column++) {
          int at = row * size.width() + column;
          Span span = columns[column];
          for (int x = 0; x < span.shares().length; x++) {
            int rgb = line[span.first() + x];
            float share = span.shares()[x] * rows[row].shares()[y];
            red.values()[at] += share * ((rgb >> 16) & 0xff);
            green.values()[at] += share * ((rgb >> 8) & 0xff);
            blue.values()[at] += share * (rgb & 0xff);
          }
        }
      }
    }
    return new Rgb(red, green, blue);
  }

  /** As {@link #of} and {@link #luma()}, without the colours in between. */
  static Plane luma(BufferedImage picture, PixelSize size) {
    Plane whole = Plane.empty(picture.getWidth(), picture.getHeight());
    Raster raster = checked(picture).getRaster();
    int[] line = new int[picture.getWidth()];
    for (int y = 0, at = 0; y < whole.height(); y++) {
      raster.getDataElements(0, y, line.length, 1, line);
      for (int rgb : line) {
        whole.values()[at++] =
            LUMA_RED * (rgb >> 16 & 0xff)
                + LUMA_GREEN * (rgb >> 8 & 0xff)
                + LUMA_BLUE * (rgb & 0xff);
      }
    }
    return size.width() == whole.width() && size.height() == whole.height()
        ? whole
        : Span.average(whole, size.width(), size.height());
  }

  private static BufferedImage checked(BufferedImage picture) {
    if (picture.getType() != BufferedImage.TYPE_INT_RGB) {
      throw new IllegalArgumentException(
          "pictures are measured as TYPE_INT_RGB, was type " + picture.getType());
    }
    return picture;
  }

  int width() {
    return red.width();
  }

  int height() {
    return red.height();
  }

  Plane luma() {
    Plane out = Plane.empty(width(), height());
    for (int i = 0; i < out.values().length; i++) {
      out.values()[i] =
          LUMA_RED * red.values()[i]
              + LUMA_GREEN * green.values()[i]
              + LUMA_BLUE * blue.values()[i];
    }
    return out;
  }
}
