package org.daymount.cli;

import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.TradeSizes;
import org.daymount.day.DayNumbers;
import org.daymount.day.DayStart;
import org.daymount.image.Lightening;
import org.daymount.month.Settings;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;
import org.daymount.unit.SizeText;
import org.daymount.unit.Units;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Texts of the command line to the types of the program, with a sentence when they do not fit. */
final class Converters {
  private Converters() {}

  /** A size of paper, by the trade's names too. */
  static final class Sheet implements ITypeConverter<PaperSize> {
    @Override
    public PaperSize convert(String text) {
      return text.strip().equalsIgnoreCase("letter")
          ? PaperSize.LETTER
          : Converters.<PaperSize>read(
              size -> TradeSizes.asPrinted(SizeText.parseSize(size)), text);
    }
  }

  /** A size, or {@code auto}. */
  static final class Cards implements ITypeConverter<CardChoice> {
    @Override
    public CardChoice convert(String text) {
      return text.strip().equalsIgnoreCase("auto")
          ? new CardChoice(Optional.empty())
          : new CardChoice(Optional.of(read(SizeText::parseSize, text)));
    }
  }

  /**
   * What {@code --cards} asks for.
   *
   * @param size empty: as large as the place that is left
   */
  record CardChoice(Optional<PaperSize> size) {}

  static void register(CommandLine line) {
    line.registerConverter(PaperSize.class, converter(SizeText::parseSize));
    line.registerConverter(Length.class, converter(SizeText::parseLength));
    line.registerConverter(Lightening.class, converter(Converters::lightening));
    line.registerConverter(Units.class, converter(Converters::units));
    line.registerConverter(Ppi.class, converter(Converters::ppi));
    line.registerConverter(YearMonth.class, converter(Converters::month));
    line.registerConverter(DayStart.class, converter(DayStart::parse));
    line.registerConverter(DayNumbers.class, converter(DayNumbers::parse));
    line.registerConverter(Settings.Paper.class, converter(Converters::paper));
  }

  private static <T> ITypeConverter<T> converter(Function<String, T> parser) {
    return text -> read(parser, text);
  }

  private static <T> T read(Function<String, T> parser, String text) {
    try {
      return parser.apply(text);
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException(e.getMessage());
    }
  }

  private static final Pattern STOPS = Pattern.compile("\\+?(\\d+(?:[.,]\\d+)?)(?:/(\\d+))?");

  /** {@code 1/3}, {@code 2/3}, {@code 0.5}; stops of exposure. */
  static Lightening lightening(String text) {
    String plain = text.strip().replace("⅓", "1/3").replace("⅔", "2/3").replace("½", "1/2");
    Matcher stops = STOPS.matcher(plain);
    try {
      if (stops.matches()) {
        double value = Double.parseDouble(stops.group(1).replace(',', '.'));
        double parts = stops.group(2) == null ? 1 : Double.parseDouble(stops.group(2));
        return new Lightening(value / parts);
      }
    } catch (IllegalArgumentException e) {
      // said below
    }
    throw new IllegalArgumentException(
        "'" + text + "' is no lightening; use stops from 0 to 1, such as 1/3 or 2/3");
  }

  private static Units units(String text) {
    for (Units units : Units.values()) {
      if (units.word().equals(text.toLowerCase(Locale.ROOT))) {
        return units;
      }
    }
    throw new IllegalArgumentException("'" + text + "' is not a unit; use inches or cm");
  }

  private static Ppi ppi(String text) {
    try {
      double value = Double.parseDouble(text);
      if (value >= 30 && value <= 2400) {
        return new Ppi(value);
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw new IllegalArgumentException(
        "'" + text + "' is not a resolution; use pixels per inch from 30 to 2400, such as 300");
  }

  private static YearMonth month(String text) {
    try {
      return YearMonth.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException("'" + text + "' is not a month; write it as 2026-06");
    }
  }

  private static Settings.Paper paper(String text) {
    for (Settings.Paper paper : Settings.Paper.values()) {
      if (paper.name().equals(text.toUpperCase(Locale.ROOT))) {
        return paper;
      }
    }
    throw new IllegalArgumentException("'" + text + "' is not a paper; use letter, a4 or sheet");
  }
}
