package org.daymount.unit;

/** Pixels per printed inch. */
public record Ppi(double value) implements Comparable<Ppi> {
  public Ppi {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException("ppi must be above zero, was " + value);
    }
  }

  public static Ppi ppi(double value) {
    return new Ppi(value);
  }

  /** What {@code pixels} come to when they are spread over {@code paper}. */
  public static Ppi of(int pixels, Length paper) {
    return new Ppi(pixels / paper.inInches());
  }

  public boolean isBelow(Ppi other) {
    return value < other.value;
  }

  @Override
  public int compareTo(Ppi other) {
    return Double.compare(value, other.value);
  }

  /** Whole ppi, rounded down so that nothing is promised that is not there. */
  @Override
  public String toString() {
    return (int) Math.floor(value) + " ppi";
  }
}
