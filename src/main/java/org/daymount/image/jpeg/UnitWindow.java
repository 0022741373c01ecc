package org.daymount.image.jpeg;

import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Which of a picture's minimum coded units (A.2) are wanted; right and bottom are the first ones
 * that are not.
 */
record UnitWindow(int left, int top, int right, int bottom) {

  /** Those of a region and one more on each side, whose colours reach over the region's edge. */
  static UnitWindow around(PixelBox region, Frame frame) {
    PixelBox inside = region.within(new PixelSize(frame.width(), frame.height()));
    int width = Block.SIDE * frame.mostAcross();
    int height = Block.SIDE * frame.mostDown();
    return new UnitWindow(
        Math.max(0, inside.x() / width - 1),
        Math.max(0, inside.y() / height - 1),
        Math.min(frame.unitsAcross(), Frame.ceil(inside.right(), width) + 1),
        Math.min(frame.unitsDown(), Frame.ceil(inside.bottom(), height) + 1));
  }

  /** No unit, but of each row: all have to be gone through. */
  static UnitWindow none(Frame frame) {
    return new UnitWindow(0, 0, 0, frame.unitsDown());
  }

  int across() {
    return right - left;
  }

  int down() {
    return bottom - top;
  }

  /** What it covers of the picture, in stored pixels. */
  PixelBox pixels(Frame frame) {
    int width = Block.SIDE * frame.mostAcross();
    int height = Block.SIDE * frame.mostDown();
    return PixelBox.edges(
        left * width,
        top * height,
        Math.min(frame.width(), right * width),
        Math.min(frame.height(), bottom * height));
  }
}
