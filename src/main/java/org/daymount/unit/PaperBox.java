package org.daymount.unit;

/** A rectangle on paper; x and y from the top left corner. */
public record PaperBox(Length x, Length y, Length width, Length height) {
  public PaperBox {
    if (!width.isPositive() || !height.isPositive()) {
      throw new IllegalArgumentException(
          "a box needs a width and a height, was " + width + " x " + height);
    }
  }

  public static PaperBox at(Length x, Length y, PaperSize size) {
    return new PaperBox(x, y, size.width(), size.height());
  }

  public Length right() {
    return x.plus(width);
  }

  public Length bottom() {
    return y.plus(height);
  }

  public PaperSize size() {
    return new PaperSize(width, height);
  }

  public boolean contains(PaperBox other) {
    return x.compareTo(other.x) <= 0
        && y.compareTo(other.y) <= 0
        && right().compareTo(other.right()) >= 0
        && bottom().compareTo(other.bottom()) >= 0;
  }

  public boolean overlaps(PaperBox other) {
    return x.compareTo(other.right()) < 0
        && other.x.compareTo(right()) < 0
        && y.compareTo(other.bottom()) < 0
        && other.y.compareTo(bottom()) < 0;
  }
}
