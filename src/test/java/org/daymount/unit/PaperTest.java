package org.daymount.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class PaperTest {
  private static final Length INCH = Length.inches(1);
  private static final Length NANOMETRE = new Length(1);
  private static final PaperSize POCKET = PaperSize.inches(4, 6);

  /** International yard and pound agreement, 1959: one inch is 25.4 mm. */
  @Test
  void anInchIsExactlyTwentyFiveMillimetresAndFourTenths() {
    assertEquals(25_400_000, INCH.nanometres());
    assertEquals(Length.millimetres(25.4), INCH);
    assertEquals(25.4, INCH.inMillimetres());
    assertEquals(2.5, Length.inches(2.5).inInches());
    assertEquals(3_175_000, Length.inchFraction(1, 8).nanometres());
    assertEquals(396_875, Length.inchFraction(1, 64).nanometres());
  }

  /** ISO 32000-1:2008, 8.3.2.3: a unit of default user space is 1/72 inch. */
  @Test
  void aPointIsASeventySecondOfAnInch() {
    assertEquals(72, INCH.inPoints());
    assertEquals(9, Length.inchFraction(1, 8).inPoints());
  }

  @Test
  void lengthsAddUpWithoutRounding() {
    assertEquals(Length.inches(4), Length.inches(3.75).plus(Length.inchFraction(1, 8).times(2)));
    assertEquals(Length.inches(3.75), Length.inches(4).minus(Length.inchFraction(1, 4)));
    assertEquals(Length.inches(2), Length.inches(4).half());
    assertThrows(ArithmeticException.class, () -> new Length(Long.MAX_VALUE).plus(NANOMETRE));
  }

  @Test
  void theLongerLengthIsTold() {
    Length more = INCH.plus(NANOMETRE);
    assertTrue(more.isLongerThan(INCH));
    assertFalse(INCH.isLongerThan(INCH));
    assertEquals(INCH, INCH.min(more));
    assertEquals(INCH, more.min(INCH));
    assertEquals(more, INCH.max(more));
    assertEquals(more, more.max(INCH));
    assertTrue(INCH.compareTo(more) < 0);
    assertTrue(more.compareTo(INCH) > 0);
    assertTrue(NANOMETRE.isPositive());
    assertFalse(Length.ZERO.isPositive());
  }

  @Test
  void aLengthIsWrittenWithoutNeedlessDigits() {
    assertEquals("4", Length.inches(4).inchText());
    assertEquals("40", Length.inches(40).inchText());
    assertEquals("3.75", Length.inches(3.75).inchText());
    assertEquals("0.125", Length.inchFraction(1, 8).inchText());
    assertEquals("0", Length.ZERO.inchText());
    assertEquals("3.75 in", Length.inches(3.75).toString());
    assertEquals("3.75x5.75", PaperSize.inches(3.75, 5.75).toString());
  }

  @Property
  void edgesThatMeetOnPaperMeetInThePicture(
      @ForAll @LongRange(min = 1, max = 500_000_000) long first,
      @ForAll @LongRange(min = 1, max = 500_000_000) long second) {
    Ppi ppi = Ppi.ppi(300);
    PaperBox left = new PaperBox(Length.ZERO, Length.ZERO, new Length(first), INCH);
    PaperBox right = new PaperBox(left.right(), Length.ZERO, new Length(second), INCH);
    int whole = right.right().toPixels(ppi);
    int parts =
        left.right().toPixels(ppi) + (right.right().toPixels(ppi) - right.x().toPixels(ppi));
    assertEquals(whole, parts);
    assertEquals((first + second) / 25_400_000.0 * 300, whole, 0.5000001);
  }

  @Test
  void halfAPixelIsAWholeOne() {
    assertEquals(2, new Length(25_400_000L * 3 / 2).toPixels(Ppi.ppi(1)));
    assertEquals(1, new Length(25_400_000L * 3 / 2 - 1).toPixels(Ppi.ppi(1)));
    assertEquals(new PixelSize(1200, 1800), POCKET.toPixels(Ppi.ppi(300)));
    assertEquals(new PixelSize(1, 1), new PaperSize(NANOMETRE, NANOMETRE).toPixels(Ppi.ppi(300)));
  }

  @Test
  void paperHasADirectionAndCanBeTurned() {
    assertEquals(Orientation.PORTRAIT, POCKET.direction());
    assertEquals(Orientation.LANDSCAPE, POCKET.turned().direction());
    assertEquals(Orientation.SQUARE, PaperSize.inches(4, 4).direction());
    assertEquals(PaperSize.inches(6, 4), POCKET.towards(Orientation.LANDSCAPE));
    assertEquals(POCKET, POCKET.towards(Orientation.PORTRAIT));
    assertEquals(POCKET, POCKET.towards(Orientation.SQUARE));
    assertEquals(POCKET, PaperSize.inches(6, 4).towards(Orientation.PORTRAIT));
    assertTrue(PaperSize.inches(4, 4).isSquare());
    assertFalse(POCKET.isSquare());
    for (Orientation direction : Orientation.values()) {
      assertEquals(direction, direction.other().other());
      assertEquals(direction == Orientation.SQUARE, direction == direction.other());
    }
    assertEquals("landscape", Orientation.LANDSCAPE.word());
  }

  /**
   * Common practice, no source: a reveal of 1/8 in makes of a 4x6 mat a picture of 3 3/4 x 5 3/4.
   */
  @Test
  void aMarginIsTakenOffEachSide() {
    assertEquals(PaperSize.inches(3.75, 5.75), POCKET.inset(Length.inchFraction(1, 8)));
    assertEquals(24, POCKET.squareInches());
    assertEquals(4 / 6.0, POCKET.aspect());
  }

  @Test
  void paperFitsIntoPaperThatIsNoSmallerEitherWay() {
    PaperSize wider = new PaperSize(POCKET.width().plus(NANOMETRE), POCKET.height());
    PaperSize taller = new PaperSize(POCKET.width(), POCKET.height().plus(NANOMETRE));
    assertTrue(POCKET.fitsInto(POCKET));
    assertTrue(POCKET.fitsInto(wider));
    assertFalse(wider.fitsInto(POCKET));
    assertFalse(taller.fitsInto(POCKET));
  }

  @Test
  void boxesThatOnlyTouchDoNotOverlap() {
    PaperBox box = PaperBox.at(INCH, INCH, POCKET);
    assertEquals(Length.inches(5), box.right());
    assertEquals(Length.inches(7), box.bottom());
    assertEquals(POCKET, box.size());
    assertFalse(box.overlaps(PaperBox.at(box.right(), INCH, POCKET)));
    assertFalse(box.overlaps(PaperBox.at(INCH, box.bottom(), POCKET)));
    assertFalse(PaperBox.at(box.right(), INCH, POCKET).overlaps(box));
    assertFalse(PaperBox.at(INCH, box.bottom(), POCKET).overlaps(box));
    PaperBox corner =
        PaperBox.at(box.right().minus(NANOMETRE), box.bottom().minus(NANOMETRE), POCKET);
    assertTrue(box.overlaps(corner));
    assertTrue(corner.overlaps(box));
  }

  @Test
  void paperOfNoSizeCannotBeMade() {
    assertThrows(IllegalArgumentException.class, () -> new PaperSize(Length.ZERO, INCH));
    assertThrows(IllegalArgumentException.class, () -> new PaperSize(INCH, Length.ZERO));
    assertThrows(IllegalArgumentException.class, () -> new PaperBox(INCH, INCH, Length.ZERO, INCH));
    assertThrows(IllegalArgumentException.class, () -> new PaperBox(INCH, INCH, INCH, Length.ZERO));
  }

  @Test
  void resolutionIsPixelsOverInchesAndIsRoundedDownInWords() {
    assertEquals(Ppi.ppi(300), Ppi.of(1800, Length.inches(6)));
    assertEquals("199 ppi", Ppi.ppi(199.99).toString());
    assertTrue(Ppi.ppi(199.99).isBelow(Ppi.ppi(200)));
    assertFalse(Ppi.ppi(200).isBelow(Ppi.ppi(200)));
    assertTrue(Ppi.ppi(150).compareTo(Ppi.ppi(200)) < 0);
    for (double none : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> Ppi.ppi(none));
    }
  }
}
