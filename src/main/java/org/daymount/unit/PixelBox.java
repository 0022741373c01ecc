package org.daymount.unit;

/**
 * A rectangle in a picture, in whole upright pixels (after the EXIF orientation has been applied);
 * x and y from the top left corner. A box may reach beyond the picture until {@link #within} cuts
 * it.
 */
public record PixelBox(int x, int y, int width, int height) {
  public PixelBox {
    if (width <= 0 || height <= 0) {
      throw new IllegalArgumentException("a box needs pixels, was " + width + " x " + height);
    }
    if ((long) x + width > Integer.MAX_VALUE || (long) y + height > Integer.MAX_VALUE) {
      throw new IllegalArgumentException(
          "no picture is so large as a box of %d x %d at %d, %d".formatted(width, height, x, y));
    }
  }

  /** From edges; right and bottom are the first pixel outside. */
  public static PixelBox edges(int left, int top, int right, int bottom) {
    return new PixelBox(left, top, right - left, bottom - top);
  }

  public int right() {
    return x + width;
  }

  public int bottom() {
    return y + height;
  }

  public double centreX() {
    return x + width / 2.0;
  }

  public double centreY() {
    return y + height / 2.0;
  }

  public long area() {
    return (long) width * height;
  }

  public PixelSize size() {
    return new PixelSize(width, height);
  }

  public boolean contains(PixelBox other) {
    return x <= other.x && y <= other.y && right() >= other.right() && bottom() >= other.bottom();
  }

  public boolean overlaps(PixelBox other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }

  /** Area shared with another box, in pixels; 0 when they do not overlap. */
  public long sharedArea(PixelBox other) {
    long shareWidth = Math.min(right(), other.right()) - Math.max(x, other.x);
    long shareHeight = Math.min(bottom(), other.bottom()) - Math.max(y, other.y);
    return shareWidth <= 0 || shareHeight <= 0 ? 0 : shareWidth * shareHeight;
  }

  /** The smallest box around both. */
  public PixelBox around(PixelBox other) {
    return edges(
        Math.min(x, other.x),
        Math.min(y, other.y),
        Math.max(right(), other.right()),
        Math.max(bottom(), other.bottom()));
  }

  /** Grown by whole pixels on each side; negative amounts shrink. */
  public PixelBox grown(int left, int top, int right, int bottom) {
    return edges(x - left, y - top, right() + right, bottom() + bottom);
  }

  /** The part of this box inside a picture of the given size; at least one pixel is kept. */
  public PixelBox within(PixelSize picture) {
    int left = Math.max(0, Math.min(x, picture.width() - 1));
    int top = Math.max(0, Math.min(y, picture.height() - 1));
    return edges(
        left,
        top,
        Math.max(left + 1, Math.min(right(), picture.width())),
        Math.max(top + 1, Math.min(bottom(), picture.height())));
  }

  /**
   * The same part of the picture after that was turned clockwise.
   *
   * @param whole size of the picture before it is turned
   */
  public PixelBox turned(PixelSize whole, int quarterTurns) {
    return switch (quarterTurns & 3) {
      case 1 -> new PixelBox(whole.height() - bottom(), x, height, width);
      case 2 -> new PixelBox(whole.width() - right(), whole.height() - bottom(), width, height);
      case 3 -> new PixelBox(y, whole.width() - right(), height, width);
      default -> this;
    };
  }

  /** The same part of the picture when that is seen at another size; edges to the nearest pixel. */
  public PixelBox scaled(PixelSize from, PixelSize to) {
    double sx = to.width() / (double) from.width();
    double sy = to.height() / (double) from.height();
    int left = (int) Math.round(x * sx);
    int top = (int) Math.round(y * sy);
    return edges(
        left,
        top,
        Math.max(left + 1, (int) Math.round(right() * sx)),
        Math.max(top + 1, (int) Math.round(bottom() * sy)));
  }
}
