package org.daymount.unit;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The unit a person reads first, and the only place that says lengths and sizes in words. Lengths
 * are read off a ruler: {@code 3 3/4 in (9.5 cm)} or {@code 9.5 cm (3 3/4 in)}.
 */
public enum Units {
  INCHES,
  CENTIMETRES;

  /** Countries that do not measure in metres: Unicode CLDR, measurementSystem US and UK. */
  private static final Set<String> INCH_COUNTRIES = Set.of("US", "LR", "MM", "GB");

  private static final int FINEST = 32; // the finest marks on a common steel rule
  private static final long FINEST_STEP = Length.inchFraction(1, FINEST).nanometres();
  private static final long TENTH_OF_CENTIMETRE = Length.millimetres(1).nanometres();
  private static final Pattern SIZE = Pattern.compile("\\d[\\d.]*x\\d[\\d.]*(?:mm)?");

  /** What the trade calls these prints where centimetres are used (common practice, no source). */
  private static final Map<PaperSize, String> SOLD_AS =
      Map.of(
          PaperSize.inches(3.5, 5), "9x13",
          PaperSize.inches(4, 6), "10x15",
          PaperSize.inches(5, 7), "13x18");

  /**
   * As people of that language and country measure; inches where no country is named. What a locale
   * says of itself goes before ({@code -u-ms-metric}, Unicode UTS 35).
   */
  public static Units of(Locale locale) {
    String said = locale.getUnicodeLocaleType("ms");
    if (said != null) {
      return said.equals("metric") ? CENTIMETRES : INCHES;
    }
    return locale.getCountry().isEmpty() || INCH_COUNTRIES.contains(locale.getCountry())
        ? INCHES
        : CENTIMETRES;
  }

  /** As on the command line and in month.json. */
  public String word() {
    return this == INCHES ? "inches" : "cm";
  }

  /** A length in both units, the person's own first. */
  public String of(Length length) {
    return both(inches(length), centimetres(length));
  }

  public String of(PaperSize size) {
    return both(
        inches(size.width()) + " x " + inches(size.height()),
        centimetres(size.width()) + " x " + centimetres(size.height()));
  }

  private String both(String inches, String centimetres) {
    return this == INCHES
        ? inches + " in (" + centimetres + " cm)"
        : centimetres + " cm (" + inches + " in)";
  }

  /** What prints, spaces and pockets of a size are called: {@code 4x6}, {@code 10x15 cm (4x6)}. */
  public String name(PaperSize size) {
    String written = SizeText.text(size);
    return this == INCHES ? written : metric(size, isWhole(size) ? "" : " (" + size + ")");
  }

  /** A size that stands by itself: {@code 4x6 in}, {@code 10x15 cm (4x6 in)}. */
  public String sized(PaperSize size) {
    if (this == INCHES) {
      String written = SizeText.text(size);
      return written.endsWith("mm") ? written : written + " in";
    }
    return metric(size, isWhole(size) ? "" : " (" + size + " in)");
  }

  /** A kind of page that is named by its pockets: {@code two 4x6 and four 3x4}. */
  public String kind(String kind) {
    return this == INCHES
        ? kind
        : SIZE.matcher(kind).replaceAll(found -> name(SizeText.parseSize(found.group())));
  }

  private static String metric(PaperSize size, String inches) {
    PaperSize upright = size.towards(Orientation.PORTRAIT);
    String trade = SOLD_AS.get(upright);
    if (trade == null) {
      trade = centimetres(upright.width()) + "x" + centimetres(upright.height());
    }
    String[] sides = trade.split("x");
    boolean lies = size.direction() == Orientation.LANDSCAPE;
    return (lies ? sides[1] + "x" + sides[0] : trade) + " cm" + inches;
  }

  /** Whether it was meant in centimetres, so that inches would only confuse. */
  private static boolean isWhole(PaperSize size) {
    return size.width().nanometres() % TENTH_OF_CENTIMETRE == 0
        && size.height().nanometres() % TENTH_OF_CENTIMETRE == 0;
  }

  /** Inches with a fraction: {@code 3 3/4}; "about" when it is not on a mark of 1/32. */
  private static String inches(Length length) {
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
  private static String centimetres(Length length) {
    String text = String.format(Locale.ROOT, "%.1f", length.inMillimetres() / 10);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
