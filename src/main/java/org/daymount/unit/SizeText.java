package org.daymount.unit;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths and paper sizes as people type them: {@code 4x6}, {@code 10x15cm}, {@code 3 3/4 x 5 3/4},
 * {@code 1/8in}, {@code 3mm}, {@code 4 by 6}, {@code A6}. A number without a unit is inches. A unit
 * on one side of a size holds for the other side too. A comma is a decimal comma.
 */
public final class SizeText {
  /**
   * What was read out of a longer text.
   *
   * @param end index of the first character after it
   */
  public record Found<T>(T value, int end) {}

  private static final String UNIT = "(?: *(inches|inch|in|\"|''|cm|mm)(?![\\p{L}&&[^x]]))?";
  private static final String END = "(?:'?s)?(?![\\p{L}\\d/]|\\*+ ?\\d|[.,]\\d)";
  // "3x4 x2" is two of 3x4, "2 x 3x4" as well: three numbers are told apart by their spacing.
  private static final Pattern TIGHT_SIZE = sizePattern("[x*]", "");
  private static final Pattern LOOSE_SIZE =
      sizePattern(" *(?:[x*]|by) *", "(?! *[x*] *[\\d.," + TypedNumber.FRACTIONS + "])");
  private static final Pattern NAMED_SIZE = Pattern.compile("(a[3-8])" + END);
  private static final Pattern LENGTH =
      Pattern.compile("(" + TypedNumber.PATTERN + ")" + UNIT + END);
  private static final Pattern ANY_UNIT =
      Pattern.compile("(?:" + TypedNumber.PATTERN + ") *([^\\d\\s.,/x*]+)\\s*");

  /** ISO 216:2007, trimmed sizes of the A series, upright. */
  private static final Map<String, PaperSize> NAMED =
      Map.of(
          "a3", PaperSize.millimetres(297, 420),
          "a4", PaperSize.millimetres(210, 297),
          "a5", PaperSize.millimetres(148, 210),
          "a6", PaperSize.millimetres(105, 148),
          "a7", PaperSize.millimetres(74, 105),
          "a8", PaperSize.millimetres(52, 74));

  private static final Length LONGEST = Length.inches(200);
  private static final long NANOMETRES_PER_INCH = 25_400_000L;
  private static final long NANOMETRES_PER_MILLIMETRE = 1_000_000L;

  private SizeText() {}

  private static Pattern sizePattern(String between, String after) {
    return Pattern.compile(
        "("
            + TypedNumber.PATTERN
            + ")"
            + UNIT
            + between
            + "("
            + TypedNumber.PATTERN
            + ")"
            + UNIT
            + END
            + after);
  }

  /**
   * Reads a length and nothing else; zero is allowed.
   *
   * @throws IllegalArgumentException whose message says in words what is wrong and how to write it
   */
  public static Length parseLength(String text) {
    String plain = plain(text).strip();
    if (plain.isEmpty()) {
      throw new IllegalArgumentException(
          "a length is missing; write it like 1/8in, 0.25in, 3mm or 1cm");
    }
    Matcher whole = LENGTH.matcher(plain);
    if (!whole.matches()) {
      throw new IllegalArgumentException(
          quoted(text)
              + " is not a length"
              + unknownUnit(plain)
              + "; write it like 1/8in, 0.25in, 3mm or 1cm");
    }
    return length(whole.group(1), whole.group(2));
  }

  /**
   * Reads a size and nothing else, width first as written.
   *
   * @throws IllegalArgumentException whose message says in words what is wrong and how to write it
   */
  public static PaperSize parseSize(String text) {
    String plain = plain(text).strip();
    if (plain.isEmpty()) {
      throw new IllegalArgumentException("a size is missing; write it like 4x6, 10x15cm or A6");
    }
    Matcher size = wholeSize(plain);
    if (size == null) {
      throw new IllegalArgumentException(
          quoted(text)
              + " is not a size; write width and height like 4x6 (inches), 3 3/4 x 5 3/4, 10x15cm"
              + " or A6");
    }
    return size(size);
  }

  private static Matcher wholeSize(String plain) {
    for (Pattern pattern : new Pattern[] {NAMED_SIZE, TIGHT_SIZE, LOOSE_SIZE}) {
      Matcher matcher = pattern.matcher(plain);
      if (matcher.matches()) {
        return matcher;
      }
    }
    return null;
  }

  /** The size that starts at {@code from}, if one does; what follows it may be anything. */
  public static Optional<Found<PaperSize>> sizeAt(String text, int from) {
    String plain = plain(text);
    for (Pattern pattern : new Pattern[] {NAMED_SIZE, TIGHT_SIZE, LOOSE_SIZE}) {
      Matcher matcher = pattern.matcher(plain).region(from, plain.length());
      if (matcher.lookingAt()) {
        try {
          return Optional.of(new Found<>(size(matcher), matcher.end()));
        } catch (IllegalArgumentException notASize) {
          return Optional.empty();
        }
      }
    }
    return Optional.empty();
  }

  /** The length that starts at {@code from}, if one does; what follows it may be anything. */
  public static Optional<Found<Length>> lengthAt(String text, int from) {
    String plain = plain(text);
    Matcher matcher = LENGTH.matcher(plain).region(from, plain.length());
    if (!matcher.lookingAt()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Found<>(length(matcher.group(1), matcher.group(2)), matcher.end()));
    } catch (IllegalArgumentException notALength) {
      return Optional.empty();
    }
  }

  /** So that {@link #parseLength} gives exactly this length back: {@code 0.125in}, {@code 3mm}. */
  public static String text(Length length) {
    return isShortInInches(length) ? length.inchText() + "in" : millimetres(length) + "mm";
  }

  /** So that {@link #parseSize} gives exactly this size back: {@code 4x6}, {@code 100x150mm}. */
  public static String text(PaperSize size) {
    return isShortInInches(size.width()) && isShortInInches(size.height())
        ? size.toString()
        : millimetres(size.width()) + "x" + millimetres(size.height()) + "mm";
  }

  private static boolean isShortInInches(Length length) {
    return Length.inches(Double.parseDouble(length.inchText())).equals(length);
  }

  private static String millimetres(Length length) {
    BigDecimal value = BigDecimal.valueOf(length.nanometres(), 6);
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  private static PaperSize size(Matcher matcher) {
    if (matcher.groupCount() == 1) {
      return NAMED.get(matcher.group(1));
    }
    String firstUnit = matcher.group(2);
    String secondUnit = matcher.group(4);
    Length width = length(matcher.group(1), firstUnit == null ? secondUnit : firstUnit);
    Length height = length(matcher.group(3), secondUnit == null ? firstUnit : secondUnit);
    if (!width.isPositive() || !height.isPositive()) {
      throw new IllegalArgumentException(
          quoted(matcher.group().strip()) + " has a side of nothing; both sides must be above 0");
    }
    return new PaperSize(width, height);
  }

  private static Length length(String number, String unit) {
    BigDecimal perUnit =
        switch (unit == null ? "in" : unit) {
          case "mm" -> BigDecimal.valueOf(NANOMETRES_PER_MILLIMETRE);
          case "cm" -> BigDecimal.valueOf(10 * NANOMETRES_PER_MILLIMETRE);
          default -> BigDecimal.valueOf(NANOMETRES_PER_INCH);
        };
    Length length = new Length(TypedNumber.times(number, perUnit).longValueExact());
    if (length.isLongerThan(LONGEST)) {
      throw new IllegalArgumentException(
          quoted(number + (unit == null ? "" : unit)) + " is longer than any paper used here");
    }
    return length;
  }

  private static String unknownUnit(String plain) {
    Matcher unit = ANY_UNIT.matcher(plain);
    return unit.matches()
        ? ": '" + unit.group(1) + "' is not a unit known here (in, cm and mm are)"
        : "";
  }

  static String quoted(String text) {
    return "'" + text.strip() + "'";
  }

  /** One character for one, so that positions stay: digits, spaces, quotes and signs made plain. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      plain.append(plain(text.charAt(i)));
    }
    return plain.toString().toLowerCase(Locale.ROOT).length() == text.length()
        ? plain.toString().toLowerCase(Locale.ROOT)
        : plain.toString();
  }

  private static char plain(char c) {
    if (Character.isDigit(c)) {
      return (char) ('0' + Character.digit(c, 10));
    }
    if (c >= 0xFF01 && c <= 0xFF5E) { // full-width forms of ASCII, Unicode block FF00
      return (char) (c - 0xFEE0);
    }
    return switch (c) {
      case '×', '✕', '✖', '⨯' -> 'x';
      case '“', '”', '„', '″', '‟' -> '"';
      case '‘', '’', '′' -> '\'';
      case '⁄', '∕' -> '/';
      case '‐', '‑', '–', '−' -> '-';
      default -> Character.isWhitespace(c) || Character.isSpaceChar(c) ? ' ' : c;
    };
  }
}
