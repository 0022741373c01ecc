package org.daymount.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SizeTextTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "4x6",
        "4X6",
        "4×6",
        "4 x 6",
        "4 by 6",
        "4by6",
        "4x6in",
        "4x6\"",
        "4\"x6\"",
        "4” × 6”",
        "4x6 inches",
        " 4x6 ",
        "４ｘ６",
        "4\u00a0x\u00a06",
        "4in x 6in",
        "4''x6''",
        "4*6",
        "4.0x6,0"
      })
  void fourBySixIsReadAsPeopleTypeIt(String text) {
    assertEquals(PaperSize.inches(4, 6), SizeText.parseSize(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "3 3/4 x 5 3/4",
        "3.75x5.75in",
        "3,75 x 5,75",
        "3¾x5¾",
        "3 ¾ x 5 ¾",
        "3-3/4 x 5-3/4",
        "3 3⁄4 x 5 3⁄4",
        "15/4 x 23/4"
      })
  void fractionsAndDecimalsAgree(String text) {
    assertEquals(PaperSize.inches(3.75, 5.75), SizeText.parseSize(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "10x15cm",
        "100 x 150 mm",
        "10cm x 15",
        "10cm x 150mm",
        "10,0x15,0cm",
        "10cmx15cm"
      })
  void metricSizesAgree(String text) {
    assertEquals(PaperSize.millimetres(100, 150), SizeText.parseSize(text));
  }

  @Test
  void aDecimalCommaIsRead() {
    assertEquals(PaperSize.millimetres(105, 150), SizeText.parseSize("10,5x15cm"));
  }

  // ISO 216:2007, table 2 (values from memory): each size is the one before, cut across the middle.
  @ParameterizedTest
  @CsvSource({"A4,210,297", "a5,148,210", "A6,105,148"})
  void namedSizesAreThoseOfIso216(String name, double width, double height) {
    assertEquals(PaperSize.millimetres(width, height), SizeText.parseSize(name));
  }

  @ParameterizedTest
  @CsvSource({
    "1/8in,3175000", "1/8,3175000", "0.125in,3175000", "3mm,3000000", "0.3 cm,3000000",
    "1 1/16 in,26987500", "'.5',12700000", "0,0", "1/64,396875", "½ inch,12700000",
    "'0,125 in',3175000"
  })
  void lengthsAreExactToTheNanometre(String text, long nanometres) {
    assertEquals(new Length(nanometres), SizeText.parseLength(text));
  }

  @ParameterizedTest
  @CsvSource({
    "'',is missing",
    "4pt,'pt' is not a unit",
    "1/0in,divides by zero",
    "wide,is not a length",
    "-3mm,is not a length",
    "'1,000mm',write 1000 or 1.000",
    "99999in,longer than any paper",
    "4x6,is not a length"
  })
  void aLengthNotUnderstoodIsExplained(String text, String words) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> SizeText.parseLength(text)).getMessage();
    assertTrue(message.contains(words), message);
  }

  @ParameterizedTest
  @CsvSource({
    "'',is missing",
    "4,is not a size",
    "4x,is not a size",
    "0x6,above 0",
    "4x6x8,is not a size",
    "4 x 6 x 8,is not a size",
    "A9,is not a size",
    "4x6 tall,is not a size",
    "4x6px,is not a size"
  })
  void aSizeNotUnderstoodIsExplained(String text, String words) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> SizeText.parseSize(text)).getMessage();
    assertTrue(message.contains(words), message);
  }

  @Test
  void threeNumbersAreToldApartByTheirSpacing() {
    assertTrue(SizeText.sizeAt("2 x 3x4", 0).isEmpty());
    assertTrue(SizeText.sizeAt("2 x 3 x 4", 0).isEmpty());
    assertEquals(3, SizeText.sizeAt("3x4 x2", 0).orElseThrow().end());
  }

  @Property
  void aWrittenLengthIsReadBackExactly(@ForAll @LongRange(min = 0, max = 5_000_000_000L) long nm) {
    Length length = new Length(nm);
    assertEquals(length, SizeText.parseLength(SizeText.text(length)));
  }

  @Property
  void aWrittenSizeIsReadBackExactly(
      @ForAll @LongRange(min = 1, max = 5_000_000_000L) long width,
      @ForAll @LongRange(min = 1, max = 5_000_000_000L) long height) {
    PaperSize size = new PaperSize(new Length(width), new Length(height));
    assertEquals(size, SizeText.parseSize(SizeText.text(size)));
  }

  @Property
  void noTextEverFailsInAnyOtherWay(@ForAll String text) {
    try {
      SizeText.parseSize(text);
    } catch (IllegalArgumentException expected) {
      assertTrue(expected.getMessage().length() > 10);
    }
  }

  @Test
  void aLengthIsWrittenInInchesWhereThoseAreShort() {
    assertEquals("0.125in", SizeText.text(Length.inchFraction(1, 8)));
    assertEquals("3mm", SizeText.text(Length.millimetres(3)));
    assertEquals("0in", SizeText.text(Length.ZERO));
    assertEquals("4x6", SizeText.text(PaperSize.inches(4, 6)));
    assertEquals("100x150mm", SizeText.text(PaperSize.millimetres(100, 150)));
  }

  // Unicode, blocks Latin-1 Supplement and Number Forms.
  @ParameterizedTest
  @CsvSource({
    "\u00bc,1,4",
    "\u00bd,1,2",
    "\u00be,3,4",
    "\u215b,1,8",
    "\u215c,3,8",
    "\u215d,5,8",
    "\u215e,7,8"
  })
  void aFractionOfOneCharacterIsRead(String fraction, int part, int of) {
    Length expected = Length.inchFraction(part, of);
    assertEquals(expected, SizeText.parseLength(fraction));
    assertEquals(Length.inches(3).plus(expected), SizeText.parseLength("3" + fraction + "in"));
  }

  @Test
  void aLengthThatIsTooLongIsNoneInALongerText() {
    assertEquals(Optional.empty(), SizeText.lengthAt("201in of ribbon", 0));
    assertEquals(
        Optional.of(new SizeText.Found<>(Length.inches(20), 4)),
        SizeText.lengthAt("20in of ribbon", 0));
  }

  @Test
  void theLongestPaperIsTwoHundredInches() {
    assertEquals(Length.inches(200), SizeText.parseLength("200in"));
    var e = assertThrows(IllegalArgumentException.class, () -> SizeText.parseLength("200.0001"));
    assertTrue(e.getMessage().startsWith("'200.0001' is longer"), e.getMessage());
  }

  @Test
  void fullWidthLettersAreReadUpToTheLastOfThem() {
    assertEquals(Length.inches(0.5), SizeText.parseLength("\uff11\uff0f\uff12"));
    assertEquals(Optional.empty(), SizeText.lengthAt("\uff5f", 0));
    assertEquals(PaperSize.millimetres(105, 148), SizeText.parseSize("\uff21\uff16"));
  }
}
