package org.daymount.output;

import java.util.Locale;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;

/** Lengths as they are read off a ruler: {@code 3 3/4 in (9.5 cm)}. */
final class Measure {
  private static final int FINEST = 32; // the finest marks on a common steel rule
  private static final long FINEST_STEP = Length.inchFraction(1, FINEST).nanometres();

  private Measure() {}

  /** Inches and centimetres. */
  static String of(Length length) {
    return inches(length) + " in (" + centimetres(length) + " cm)";
  }

  static String of(PaperSize size) {
    return inches(size.width())
        + " x "
        + inches(size.height())
        + " in ("
        + centimetres(size.width())
        + " x "
        + centimetres(size.height())
        + " cm)";
  }

  /** Inches with a fraction: {@code 3 3/4}; "about" when it is not on a mark of 1/32. */
  static String inches(Length length) {
    long steps = Math.round(length.nanometres() / (double) FINEST_STEP);
    String text = fraction(steps);
    return steps * FINEST_STEP == length.nanometres() ? text : "about " + text;
  }

  private static String fraction(long steps) {
    long whole = steps / FINEST;
    long numerator = steps % FINEST;
    if (numerator == 0) {
      return Long.toString(whole);
    }
    long denominator = FINEST;
    while (numerator % 2 == 0) {
      numerator /= 2;
      denominator /= 2;
    }
    return (whole == 0 ? "" : whole + " ") + numerator + "/" + denominator;
  }

  /** To the millimetre: {@code 9.5}. */
  static String centimetres(Length length) {
    String text = String.format(Locale.ROOT, "%.1f", length.inMillimetres() / 10);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
