package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

/** One inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
class MeasureTest {
  @Test
  void inchesAreSaidWithTheFractionsOfARule() {
    assertEquals("3 3/4 in (9.5 cm)", Measure.of(Length.inches(3.75)));
    assertEquals("1/8 in (0.3 cm)", Measure.of(Length.inchFraction(1, 8)));
    assertEquals("5 1/32 in (12.8 cm)", Measure.of(Length.inchFraction(161, 32)));
    assertEquals("6 in (15.2 cm)", Measure.of(Length.inches(6)));
  }

  @Test
  void metricLengthsAreSaidToBeAboutTheirInches() {
    assertEquals("about 3 15/16 in (10 cm)", Measure.of(Length.millimetres(100)));
    assertEquals(
        "about 3 15/16 x about 5 29/32 in (10 x 15 cm)",
        Measure.of(PaperSize.millimetres(100, 150)));
  }
}
