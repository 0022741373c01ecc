package org.daymount.image;

import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;

/** Width and height as a header claims them, before anything believes them. */
record StoredSize(long width, long height) {
  PixelSize checked() throws UnusablePicture {
    if (width <= 0 || height <= 0) {
      throw new UnusablePicture(
          Problem.Kind.UNREADABLE,
          "has a header without a width and height; copy it again from the phone");
    }
    if (width > Integer.MAX_VALUE || height > Integer.MAX_VALUE) {
      throw new UnusablePicture(
          Problem.Kind.TOO_LARGE,
          "claims " + width + " x " + height + " pixels; its header is damaged, copy it again");
    }
    return new PixelSize((int) width, (int) height);
  }
}
