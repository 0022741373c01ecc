package org.daymount.crop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.daymount.crop.Crop.Fit;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Test;

/** When a picture that lies across its piece is shown whole. What a person would do: judgement. */
class WhiteBorderTest {
  private static final PaperSize WIDE = PaperSize.inches(6, 4);
  private static final PaperSize TALL = PaperSize.inches(4, 6);

  @Test
  void foodThatFillsItsPictureIsOnlyTakenCloser() {
    assertEquals(
        Fit.FILL, fit(SomePhoto.of(3000, 2000).subject(200, 100, 2600, 1800, "pizza", 0.8), TALL));
    assertEquals(
        Fit.BORDER, fit(SomePhoto.of(3000, 2000).subject(200, 100, 2600, 1800, "boat", 0.8), TALL));
    assertEquals(
        Fit.BORDER, fit(SomePhoto.of(3000, 2000).subject(200, 800, 2600, 500, "pizza", 0.8), TALL));
  }

  @Test
  void aFaceInTheMiddleNeedsNoWhiteForWhatIsHeldAboveIt() {
    SomePhoto umbrella =
        SomePhoto.of(2000, 3000)
            .subject(100, 100, 1800, 2800, "umbrella", 0.9)
            .subject(600, 700, 900, 2200, "person", 0.7);
    assertEquals(Fit.BORDER, fit(umbrella, WIDE));
    assertEquals(Fit.FILL, fit(umbrella.face(850, 900, 300, 300, 0.95), WIDE));
  }

  @Test
  void legsMayBeLostButNotTheHandsThatHoldSomething() {
    SomePhoto player =
        SomePhoto.of(2000, 3000)
            .subject(500, 200, 900, 2600, "person", 0.9)
            .face(800, 350, 300, 300, 0.95);
    assertEquals(Fit.FILL, fit(player, WIDE));
    assertEquals(Fit.FILL, fit(player.subject(700, 1500, 80, 80, "ball", 0.6), WIDE), "small");
    assertEquals(Fit.BORDER, fit(player.subject(700, 1250, 500, 500, "ball", 0.6), WIDE));
  }

  @Test
  void aMotorcycleIsNotHalvedForItsRider() {
    SomePhoto rider =
        SomePhoto.of(2000, 3000)
            .subject(100, 1200, 1800, 1600, "motorcycle", 0.8)
            .subject(600, 500, 800, 1500, "person", 0.5)
            .face(850, 650, 280, 280, 0.95);
    assertEquals(Fit.BORDER, fit(rider, WIDE));
  }

  @Test
  void aRowOfThingsOfWhichMostWouldGoIsShownWhole() {
    SomePhoto row = SomePhoto.of(3000, 1600);
    for (int i = 0; i < 4; i++) {
      row.subject(50 + 730 * i, 400, 700, 900, i % 2 == 0 ? "cow" : "horse", 0.7);
    }
    assertEquals(Fit.BORDER, fit(row, TALL));
  }

  @Test
  void armsMayBeLostOfAPortraitButNotAPersonWhoLies() {
    SomePhoto portrait =
        SomePhoto.of(3000, 2000)
            .subject(600, 200, 1700, 1800, "person", 0.9)
            .face(1250, 500, 400, 400, 0.95);
    assertEquals(Fit.FILL, fit(portrait, TALL));
    assertEquals(
        Fit.BORDER,
        fit(
            SomePhoto.of(3000, 2000)
                .subject(300, 1000, 2400, 600, "person", 0.9)
                .face(400, 1100, 200, 200, 0.95),
            TALL));
  }

  @Test
  void ofAnAnimalThatStandsTheHeadIsKept() {
    SomePhoto giraffe = SomePhoto.of(2000, 3000).subject(600, 200, 700, 1500, "giraffe", 0.8);
    assertEquals(
        0, Math.max(0, new Cropper().fill(giraffe.looked(), WIDE, settings()).window().y() - 200));
  }

  private static Fit fit(SomePhoto photo, PaperSize piece) {
    return new Cropper().crop(photo.looked(), piece, settings()).fit();
  }

  private static CropSettings settings() {
    return CropSettings.of(Ppi.ppi(300), Ppi.ppi(100));
  }
}
