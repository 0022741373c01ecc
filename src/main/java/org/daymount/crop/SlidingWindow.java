package org.daymount.crop;

import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * The largest windows of a piece's shape in a picture. They fill the picture along one axis and
 * slide along the other, so that where to crop is one number: the offset.
 *
 * @param sideways whether the windows slide left and right; else up and down
 * @param length of the picture along the slide, in pixels
 * @param window how much of {@code length} a window takes; the exact shape to half a pixel
 * @param across the picture's extent along the other axis, all of it in every window
 */
record SlidingWindow(boolean sideways, int length, int window, int across) {

  static SlidingWindow of(PixelSize picture, PaperSize piece) {
    double aspect = piece.aspect();
    boolean sideways = picture.width() > picture.height() * aspect;
    int length = sideways ? picture.width() : picture.height();
    int across = sideways ? picture.height() : picture.width();
    double exact = sideways ? across * aspect : across / aspect;
    int window = Math.max(1, Math.min(length, (int) Math.round(exact)));
    return new SlidingWindow(sideways, length, window, across);
  }

  /** The largest offset; the smallest is 0. */
  int slack() {
    return length - window;
  }

  PixelBox at(int offset) {
    return sideways
        ? new PixelBox(offset, 0, window, across)
        : new PixelBox(0, offset, across, window);
  }

  /** The extent of a box along the slide. */
  Extent along(PixelBox box) {
    return sideways ? new Extent(box.x(), box.right()) : new Extent(box.y(), box.bottom());
  }

  /** The extent of a box along the other axis. */
  Extent across(PixelBox box) {
    return sideways ? new Extent(box.y(), box.bottom()) : new Extent(box.x(), box.right());
  }
}
