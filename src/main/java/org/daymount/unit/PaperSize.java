package org.daymount.unit;

/** The size of a piece of paper, width first. {@code 4x6} is 4 in wide and 6 in tall. */
public record PaperSize(Length width, Length height) {
  /** ANSI/ASME Y14.1, size A. */
  public static final PaperSize LETTER = inches(8.5, 11);

  /** ISO 216. */
  public static final PaperSize A4 = millimetres(210, 297);

  public PaperSize {
    if (!width.isPositive() || !height.isPositive()) {
      throw new IllegalArgumentException(
          "paper needs a width and a height, was " + width + " x " + height);
    }
  }

  public static PaperSize inches(double width, double height) {
    return new PaperSize(Length.inches(width), Length.inches(height));
  }

  public static PaperSize millimetres(double width, double height) {
    return new PaperSize(Length.millimetres(width), Length.millimetres(height));
  }

  public Orientation direction() {
    int byWidth = width.compareTo(height);
    return byWidth > 0
        ? Orientation.LANDSCAPE
        : byWidth < 0 ? Orientation.PORTRAIT : Orientation.SQUARE;
  }

  /** The same paper lying the given way; a square stays as it is. */
  public PaperSize towards(Orientation direction) {
    return direction == direction() || direction == Orientation.SQUARE || isSquare()
        ? this
        : turned();
  }

  public PaperSize turned() {
    return new PaperSize(height, width);
  }

  public boolean isSquare() {
    return width.equals(height);
  }

  /** Width over height. */
  public double aspect() {
    return width.nanometres() / (double) height.nanometres();
  }

  /** Smaller by {@code margin} on each of the four sides. */
  public PaperSize inset(Length margin) {
    return new PaperSize(width.minus(margin.times(2)), height.minus(margin.times(2)));
  }

  public boolean fitsInto(PaperSize other) {
    return !width.isLongerThan(other.width) && !height.isLongerThan(other.height);
  }

  /** As it is, or a quarter turned. */
  public boolean fitsEitherWayInto(PaperSize other) {
    return fitsInto(other) || turned().fitsInto(other);
  }

  public double squareInches() {
    return width.inInches() * height.inInches();
  }

  public PixelSize toPixels(Ppi ppi) {
    return new PixelSize(Math.max(1, width.toPixels(ppi)), Math.max(1, height.toPixels(ppi)));
  }

  /** As a person writes it: {@code 4x6}, {@code 3.75x5.75}; inches. */
  @Override
  public String toString() {
    return width.inchText() + "x" + height.inchText();
  }
}
