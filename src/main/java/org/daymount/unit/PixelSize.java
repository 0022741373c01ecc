package org.daymount.unit;

/** Width and height of a picture in pixels. */
public record PixelSize(int width, int height) {
  public PixelSize {
    if (width <= 0 || height <= 0) {
      throw new IllegalArgumentException("a picture needs pixels, was " + width + " x " + height);
    }
  }

  public long area() {
    return (long) width * height;
  }

  public int longEdge() {
    return Math.max(width, height);
  }

  public int shortEdge() {
    return Math.min(width, height);
  }

  /** Width over height. */
  public double aspect() {
    return width / (double) height;
  }

  public PixelSize turned() {
    return new PixelSize(height, width);
  }

  /** Clockwise quarter turns; two of them change nothing. */
  public PixelSize turned(int quarterTurns) {
    return (quarterTurns & 1) == 1 ? turned() : this;
  }

  public Orientation direction() {
    return width > height
        ? Orientation.LANDSCAPE
        : width < height ? Orientation.PORTRAIT : Orientation.SQUARE;
  }

  /**
   * The largest size of the same shape whose long edge is at most {@code longEdge}; never larger.
   */
  public PixelSize within(int longEdge) {
    if (longEdge() <= longEdge) {
      return this;
    }
    double scale = longEdge / (double) longEdge();
    return new PixelSize(
        Math.max(1, (int) Math.round(width * scale)),
        Math.max(1, (int) Math.round(height * scale)));
  }

  public PixelBox whole() {
    return new PixelBox(0, 0, width, height);
  }

  @Override
  public String toString() {
    return width + " x " + height;
  }
}
