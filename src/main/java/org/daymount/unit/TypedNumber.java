package org.daymount.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers as people type them: {@code 4}, {@code 3 3/4}, {@code 3¾}, {@code 0.25}, {@code 0,25}.
 */
final class TypedNumber {
  static final String FRACTIONS = "¼½¾⅛⅜⅝⅞";
  private static final int[][] FRACTION_VALUES = {
    {1, 4}, {1, 2}, {3, 4}, {1, 8}, {3, 8}, {5, 8}, {7, 8}
  };
  static final String PATTERN =
      "(?:\\d{1,6}(?: +| ?- ?)\\d{1,3}/\\d{1,3}|\\d{1,3}/\\d{1,3}|\\d{0,6} ?["
          + FRACTIONS
          + "]|\\d{1,6}[.,]\\d{1,6}|[.,]\\d{1,6}|\\d{1,6})";

  private TypedNumber() {}

  /** A decimal, a fraction or a whole number with a fraction, times a unit, to the nanometre. */
  static BigDecimal times(String number, BigDecimal perUnit) {
    String text = number.strip();
    int glyph = FRACTIONS.indexOf(text.charAt(text.length() - 1));
    if (glyph >= 0) {
      int[] value = FRACTION_VALUES[glyph];
      return mixed(text.substring(0, text.length() - 1).strip(), value[0], value[1], perUnit);
    }
    int slash = text.indexOf('/');
    if (slash < 0) {
      return decimal(text).multiply(perUnit).setScale(0, RoundingMode.HALF_UP);
    }
    String[] parts = text.substring(0, slash).split("[ -]+");
    String whole = parts.length == 2 ? parts[0] : "";
    int denominator = Integer.parseInt(text.substring(slash + 1));
    if (denominator == 0) {
      throw new IllegalArgumentException(SizeText.quoted(number) + " divides by zero");
    }
    return mixed(whole, Integer.parseInt(parts[parts.length - 1]), denominator, perUnit);
  }

  private static BigDecimal mixed(String whole, int top, int bottom, BigDecimal perUnit) {
    BigDecimal units =
        BigDecimal.valueOf(whole.isEmpty() ? 0 : Integer.parseInt(whole))
            .multiply(BigDecimal.valueOf(bottom))
            .add(BigDecimal.valueOf(top));
    return units.multiply(perUnit).divide(BigDecimal.valueOf(bottom), 0, RoundingMode.HALF_UP);
  }

  private static BigDecimal decimal(String text) {
    if (text.matches("[1-9]\\d{0,2},\\d{3}")) {
      throw new IllegalArgumentException(
          SizeText.quoted(text)
              + " may mean thousands or a decimal comma; write "
              + text.replace(",", "")
              + " or "
              + text.replace(',', '.'));
    }
    return new BigDecimal(text.replace(',', '.'));
  }
}
