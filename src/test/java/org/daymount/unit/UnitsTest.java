package org.daymount.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** One inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
class UnitsTest {
  @Test
  void inchesAreSaidWithTheFractionsOfARule() {
    assertEquals("3 3/4 in (9.5 cm)", Units.INCHES.of(Length.inches(3.75)));
    assertEquals("1/8 in (0.3 cm)", Units.INCHES.of(Length.inchFraction(1, 8)));
    assertEquals("5 1/32 in (12.8 cm)", Units.INCHES.of(Length.inchFraction(161, 32)));
    assertEquals("6 in (15.2 cm)", Units.INCHES.of(Length.inches(6)));
  }

  @Test
  void metricLengthsAreSaidToBeAboutTheirInches() {
    assertEquals("about 3 15/16 in (10 cm)", Units.INCHES.of(Length.millimetres(100)));
    assertEquals(
        "about 3 15/16 x about 5 29/32 in (10 x 15 cm)",
        Units.INCHES.of(PaperSize.millimetres(100, 150)));
  }

  @Test
  void metricPeopleReadCentimetresFirst() {
    assertEquals("9.5 cm (3 3/4 in)", Units.CENTIMETRES.of(Length.inches(3.75)));
    assertEquals("7.6 x 10.2 cm (3 x 4 in)", Units.CENTIMETRES.of(PaperSize.inches(3, 4)));
  }

  /** That these names mean these prints is common practice, no source. */
  @Test
  void printsAreCalledAsTheyAreSold() {
    assertEquals("10x15 cm (4x6)", Units.CENTIMETRES.name(PaperSize.inches(4, 6)));
    assertEquals("18x13 cm (7x5 in)", Units.CENTIMETRES.sized(PaperSize.inches(7, 5)));
    assertEquals("13x18 cm", Units.CENTIMETRES.name(PaperSize.millimetres(130, 180)));
    assertEquals("7.6x10.2 cm (3x4)", Units.CENTIMETRES.name(PaperSize.inches(3, 4)));
    assertEquals("21x29.7 cm", Units.CENTIMETRES.sized(PaperSize.A4));
    assertEquals("4x6", Units.INCHES.name(PaperSize.inches(4, 6)));
    assertEquals("4x6 in", Units.INCHES.sized(PaperSize.inches(4, 6)));
    assertEquals("130x180mm", Units.INCHES.sized(PaperSize.millimetres(130, 180)));
  }

  @Test
  void kindsOfPagesAreNamedByTheirPocketsInBothUnits() {
    String kind = "one 4x6 and two 3x4";
    assertEquals(kind, Units.INCHES.kind(kind));
    assertEquals("one 10x15 cm (4x6) and two 7.6x10.2 cm (3x4)", Units.CENTIMETRES.kind(kind));
    assertEquals("full", Units.CENTIMETRES.kind("full"));
    assertEquals("two 10x15 cm", Units.CENTIMETRES.kind("two 100x150mm"));
  }

  /** Unicode CLDR 47, measurementSystem, asked of ICU4J 77.1 for every country of ISO 3166. */
  @Test
  void whoReadsInchesFirstIsAsUnicodeHasIt() {
    List<String> inches =
        Arrays.stream(Locale.getISOCountries())
            .filter(country -> Units.of(new Locale("", country)) == Units.INCHES)
            .toList();
    assertEquals(List.of("GB", "LR", "MM", "US"), inches);
    assertEquals(Units.CENTIMETRES, Units.of(Locale.CANADA_FRENCH));
  }

  @Test
  void whatALocaleSaysOfItselfGoesBefore() {
    assertEquals(Units.CENTIMETRES, Units.of(Locale.forLanguageTag("en-US-u-ms-metric")));
    assertEquals(Units.INCHES, Units.of(Locale.forLanguageTag("de-DE-u-ms-ussystem")));
    assertEquals(Units.INCHES, Units.of(Locale.ROOT));
  }
}
