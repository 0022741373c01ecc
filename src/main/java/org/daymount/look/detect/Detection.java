package org.daymount.look.detect;

import org.daymount.unit.PixelBox;

/**
 * A place where a detector sees something; pixels with fractions, before it is sure enough to be
 * told to anyone. It may reach beyond the picture.
 *
 * @param confidence 0 to 1
 */
record Detection(double x, double y, double width, double height, double confidence) {

  double right() {
    return x + width;
  }

  double bottom() {
    return y + height;
  }

  double area() {
    return width * height;
  }

  double centreX() {
    return x + width / 2;
  }

  double centreY() {
    return y + height / 2;
  }

  Detection moved(double byX, double byY) {
    return new Detection(x + byX, y + byY, width, height, confidence);
  }

  Detection withConfidence(double other) {
    return new Detection(x, y, width, height, other);
  }

  double sharedArea(Detection other) {
    double shareWidth = Math.min(right(), other.right()) - Math.max(x, other.x);
    double shareHeight = Math.min(bottom(), other.bottom()) - Math.max(y, other.y);
    return shareWidth <= 0 || shareHeight <= 0 ? 0 : shareWidth * shareHeight;
  }

  /** Shared area over the area of both together, 0 to 1 (Jaccard index). */
  double overlap(Detection other) {
    double shared = sharedArea(other);
    return shared == 0 ? 0 : shared / (area() + other.area() - shared);
  }

  /** Shared area over the area of the smaller one, 0 to 1. */
  double nesting(Detection other) {
    double shared = sharedArea(other);
    return shared == 0 ? 0 : shared / Math.min(area(), other.area());
  }

  /** Whether the middle of this spot lies inside the other. */
  boolean isCentredIn(Detection other) {
    return centreX() >= other.x
        && centreX() <= other.right()
        && centreY() >= other.y
        && centreY() <= other.bottom();
  }

  /** Whole pixels that hold the spot, at least one. */
  PixelBox box() {
    int left = (int) Math.floor(x);
    int top = (int) Math.floor(y);
    return PixelBox.edges(
        left,
        top,
        Math.max(left + 1, (int) Math.ceil(right())),
        Math.max(top + 1, (int) Math.ceil(bottom())));
  }
}
