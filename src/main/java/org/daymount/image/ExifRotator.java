package org.daymount.image;

import java.awt.image.BufferedImage;
import org.daymount.photo.ExifOrientation;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Between a picture as stored and the same picture upright, for the eight values of the EXIF
 * ExifOrientation tag (CIPA DC-008, 4.6.4 A).
 */
public final class ExifRotator {
  private ExifRotator() {}

  /** A new picture, upright, TYPE_INT_RGB; the stored one is left alone. */
  public static BufferedImage upright(BufferedImage stored, ExifOrientation orientation) {
    PixelSize storedSize = new PixelSize(stored.getWidth(), stored.getHeight());
    PixelSize size = orientation.upright(storedSize);
    BufferedImage upright =
        new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
    int[] rgb = pixels(stored);
    int[] turned = new int[size.width()];
    for (int y = 0; y < size.height(); y++) {
      int from = storedIndex(0, y, size, orientation, storedSize.width());
      int step =
          size.width() == 1 ? 0 : storedIndex(1, y, size, orientation, storedSize.width()) - from;
      for (int x = 0; x < turned.length; x++) {
        turned[x] = rgb[from + x * step];
      }
      upright.getRaster().setDataElements(0, y, turned.length, 1, turned);
    }
    return upright;
  }

  /** As {@link #upright}, for a stored picture that nobody else needs: it may be the result. */
  static BufferedImage turned(BufferedImage stored, ExifOrientation orientation) {
    return orientation == ExifOrientation.TOP_LEFT && stored.getType() == BufferedImage.TYPE_INT_RGB
        ? stored
        : upright(stored, orientation);
  }

  private static int[] pixels(BufferedImage picture) {
    int width = picture.getWidth();
    int height = picture.getHeight();
    return picture.getType() == BufferedImage.TYPE_INT_RGB
        ? (int[]) picture.getRaster().getDataElements(0, 0, width, height, null)
        : picture.getRGB(0, 0, width, height, null, 0, width);
  }

  private static int storedIndex(
      int x, int y, PixelSize upright, ExifOrientation orientation, int storedWidth) {
    PixelBox pixel = toStored(new PixelBox(x, y, 1, 1), upright, orientation);
    return pixel.y() * storedWidth + pixel.x();
  }

  /**
   * Where a box of the upright picture lies in the stored one.
   *
   * @param upright size of the whole upright picture
   */
  public static PixelBox toStored(PixelBox box, PixelSize upright, ExifOrientation orientation) {
    int left = box.x();
    int top = box.y();
    int fromRight = upright.width() - box.right();
    int fromBottom = upright.height() - box.bottom();
    int width = box.width();
    int height = box.height();
    return switch (orientation) {
      case TOP_LEFT -> box;
      case TOP_RIGHT -> new PixelBox(fromRight, top, width, height);
      case BOTTOM_RIGHT -> new PixelBox(fromRight, fromBottom, width, height);
      case BOTTOM_LEFT -> new PixelBox(left, fromBottom, width, height);
      case LEFT_TOP -> new PixelBox(top, left, height, width);
      case RIGHT_TOP -> new PixelBox(top, fromRight, height, width);
      case RIGHT_BOTTOM -> new PixelBox(fromBottom, fromRight, height, width);
      case LEFT_BOTTOM -> new PixelBox(fromBottom, left, height, width);
    };
  }

  /**
   * Where a box of the stored picture lies in the upright one.
   *
   * @param stored size of the whole stored picture
   */
  public static PixelBox toUpright(PixelBox box, PixelSize stored, ExifOrientation orientation) {
    return toStored(box, stored, orientation.back());
  }
}
