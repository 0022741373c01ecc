package org.daymount.unit;

import java.util.Locale;

/**
 * A length on paper, kept as whole nanometres so that inches, eighths and millimetres add up
 * without rounding: one inch is exactly 25.4 mm (international yard and pound agreement, 1959), an
 * eighth of an inch 3,175,000 nm, a sixty-fourth 396,875 nm.
 */
public record Length(long nanometres) implements Comparable<Length> {
  public static final Length ZERO = new Length(0);
  private static final long NANOMETRES_PER_INCH = 25_400_000L;
  private static final long NANOMETRES_PER_MILLIMETRE = 1_000_000L;
  private static final double POINTS_PER_INCH = 72; // ISO 32000-1:2008, 8.3.2.3

  public static Length inches(double inches) {
    return new Length(Math.round(inches * NANOMETRES_PER_INCH));
  }

  /** A fraction of an inch, such as {@code inchFraction(1, 8)}; exact down to sixty-fourths. */
  public static Length inchFraction(int numerator, int denominator) {
    return new Length(numerator * NANOMETRES_PER_INCH / denominator);
  }

  public static Length millimetres(double millimetres) {
    return new Length(Math.round(millimetres * NANOMETRES_PER_MILLIMETRE));
  }

  public double inInches() {
    return nanometres / (double) NANOMETRES_PER_INCH;
  }

  public double inMillimetres() {
    return nanometres / (double) NANOMETRES_PER_MILLIMETRE;
  }

  /** In PDF units, 1/72 inch. */
  public double inPoints() {
    return inInches() * POINTS_PER_INCH;
  }

  /**
   * Nearest whole pixel, halves up, so that edges that meet on paper still meet in the picture.
   * Works for positions as well as for sizes: turn both edges into pixels, then subtract.
   */
  public int toPixels(Ppi ppi) {
    return (int) Math.floor(inInches() * ppi.value() + 0.5);
  }

  public Length plus(Length other) {
    return new Length(Math.addExact(nanometres, other.nanometres));
  }

  public Length minus(Length other) {
    return new Length(Math.subtractExact(nanometres, other.nanometres));
  }

  public Length times(int factor) {
    return new Length(Math.multiplyExact(nanometres, factor));
  }

  public Length half() {
    return new Length(nanometres / 2);
  }

  public boolean isPositive() {
    return nanometres > 0;
  }

  public boolean isLongerThan(Length other) {
    return nanometres > other.nanometres;
  }

  public Length min(Length other) {
    return nanometres <= other.nanometres ? this : other;
  }

  public Length max(Length other) {
    return nanometres >= other.nanometres ? this : other;
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(nanometres, other.nanometres);
  }

  /** Inches without needless digits: {@code 4}, {@code 3.75}, {@code 0.125}. */
  public String inchText() {
    String text = String.format(Locale.ROOT, "%.4f", inInches());
    return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
  }

  @Override
  public String toString() {
    return inchText() + " in";
  }
}
