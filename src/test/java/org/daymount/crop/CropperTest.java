package org.daymount.crop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.SaliencyMap;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Test;

class CropperTest {
  private static final CropSettings SETTINGS = CropSettings.of(Ppi.ppi(300), Ppi.ppi(200));
  private static final PaperSize WIDE = PaperSize.inches(6, 4);
  private static final PaperSize TALL = PaperSize.inches(4, 6);

  private final Cropper cropper = new Cropper();

  @Provide
  Arbitrary<PaperSize> pieces() {
    return Arbitraries.of(
        WIDE,
        TALL,
        PaperSize.inches(3, 4),
        PaperSize.inches(4, 3),
        PaperSize.inches(3.75, 5.75),
        PaperSize.inches(4, 4),
        PaperSize.inches(6, 8),
        PaperSize.millimetres(100, 150),
        PaperSize.inches(0.2, 3));
  }

  @Property(tries = 400)
  void aFillIsInsideThePictureAndOfThePiecesShapeToHalfAPixel(
      @ForAll("pieces") PaperSize piece,
      @ForAll @IntRange(min = 1, max = 9000) int width,
      @ForAll @IntRange(min = 1, max = 9000) int height,
      @ForAll @LongRange(min = 0, max = 100_000) long seed) {
    PixelSize size = new PixelSize(width, height);
    PixelBox window = cropper.fill(random(size, seed), piece, SETTINGS).window();
    assertTrue(size.whole().contains(window), window + " in " + size);
    boolean full = window.width() == width || window.height() == height;
    assertTrue(full, "not the largest: " + window);
    double byWidth = Math.abs(window.height() - window.width() / piece.aspect());
    double byHeight = Math.abs(window.width() - window.height() * piece.aspect());
    boolean thin = window.width() == 1 || window.height() == 1; // no pixel is too few
    assertTrue(thin || Math.min(byWidth, byHeight) <= 0.5 + 1e-9, window + " for " + piece);
  }

  @Property(tries = 400)
  void everyMainFaceIsWholeWithItsRoomOrThePictureIs(
      @ForAll("pieces") PaperSize piece,
      @ForAll @IntRange(min = 300, max = 5000) int width,
      @ForAll @IntRange(min = 300, max = 5000) int height,
      @ForAll @LongRange(min = 0, max = 100_000) long seed) {
    AnalysedPhoto looked = random(new PixelSize(width, height), seed);
    Crop crop = cropper.crop(looked, piece, SETTINGS);
    if (crop.window().equals(looked.photo().size().whole())) {
      return;
    }
    double safe = crop.window().width() / piece.width().inInches() / 8;
    List<Face> main = looked.measures().mainFaces(looked.photo().size());
    for (Face face : main) {
      if (face.isProtected()) {
        PixelBox box = face.box();
        assertTrue(
            box.x() - 0.25 * box.width() - safe >= crop.window().x() || crop.window().x() == 0);
        assertTrue(
            box.right() + 0.25 * box.width() + safe <= crop.window().right()
                || crop.window().right() == width);
        boolean closeUp = box.height() > 0.35 * crop.window().height(); // hair may be cut
        double hair = closeUp ? 0 : 0.6 * box.height();
        assertTrue(box.y() - hair - safe >= crop.window().y() || crop.window().y() == 0);
        assertTrue(
            box.bottom() + 0.2 * box.height() + safe <= crop.window().bottom()
                || crop.window().bottom() == height);
      }
    }
  }

  @Property(tries = 400)
  void thePpiIsThatOfTheWindowOverItsPrintAndNeverBelowTheLeast(
      @ForAll("pieces") PaperSize piece,
      @ForAll @IntRange(min = 20, max = 5000) int width,
      @ForAll @IntRange(min = 20, max = 5000) int height,
      @ForAll @LongRange(min = 0, max = 100_000) long seed) {
    Crop crop = cropper.crop(random(new PixelSize(width, height), seed), piece, SETTINGS);
    double across = crop.window().width() / crop.picture().width().inInches();
    double down = crop.window().height() / crop.picture().height().inInches();
    assertEquals(Math.min(across, down), crop.ppi().value(), 1e-6);
    assertTrue(crop.ppi().value() >= 200, crop.ppi().toString());
    assertTrue(crop.quality() >= 0 && crop.quality() <= 1, "quality " + crop.quality());
    assertEquals(crop.fit() == Crop.Fit.FILL, crop.picture().equals(piece));
  }

  @Test
  void aTwelveMegapixelPhotoFillsSixByFourAtSixHundredAndSeventyPpi() {
    // 4032 x 3024 to 3:2 keeps 4032 x 2688; 4032 / 6 = 672
    Crop crop = cropper.crop(SomePhoto.of(4032, 3024).looked(), WIDE, SETTINGS);
    assertEquals(new PixelSize(4032, 2688), crop.window().size());
    assertEquals(672, crop.ppi().value(), 1e-9);
    assertEquals(Crop.Fit.FILL, crop.fit());
    assertEquals(List.of("cropped top and bottom"), crop.reasons());
  }

  @Test
  void aPhotoOfThePiecesShapeIsNotCropped() {
    Crop crop = cropper.crop(SomePhoto.of(3000, 2000).looked(), WIDE, SETTINGS);
    assertEquals(new PixelBox(0, 0, 3000, 2000), crop.window());
    assertEquals(List.of(), crop.reasons());
    assertEquals(1, crop.quality(), 1e-6);
  }

  @Test
  void aHeadNearTheTopPushesTheWindowUp() {
    Crop crop =
        cropper.crop(
            SomePhoto.of(4000, 3000).face(1800, 200, 400, 500, 0.9).looked(), WIDE, SETTINGS);
    assertEquals(0, crop.window().y());
    assertEquals(List.of("cropped bottom; the face inside"), crop.reasons());
  }

  @Test
  void facesTooFarApartForATallPieceLeaveWhiteAroundTheWholePicture() {
    AnalysedPhoto looked =
        SomePhoto.of(4000, 3000)
            .face(300, 1200, 400, 500, 0.9)
            .face(3300, 1200, 400, 500, 0.9)
            .looked();
    Crop crop = cropper.crop(looked, TALL, SETTINGS);
    assertEquals(Crop.Fit.BORDER, crop.fit());
    assertEquals(new PixelBox(0, 0, 4000, 3000), crop.window());
    assertEquals(Length.inches(3.75), crop.picture().width());
    assertEquals(
        List.of("the whole picture with white around it: no crop to 4x6 holds both faces"),
        crop.reasons());
    assertTrue(crop.quality() < cropper.crop(looked, WIDE, SETTINGS).quality());
    Crop insisted = cropper.fill(looked, TALL, SETTINGS);
    assertEquals(Crop.Fit.FILL, insisted.fit());
    assertTrue(insisted.reasons().get(0).endsWith("; not every face inside"));
  }

  @Test
  void aFaceNobodyIsSureOfDoesNotForceABorder() {
    AnalysedPhoto looked =
        SomePhoto.of(4000, 3000)
            .face(300, 1200, 400, 500, 0.9)
            .face(3300, 1200, 400, 500, 0.2)
            .looked();
    assertEquals(Crop.Fit.FILL, cropper.crop(looked, TALL, SETTINGS).fit());
  }

  @Test
  void tooFewPixelsArePrintedSmallerAndNeverMadeUp() {
    Crop crop = cropper.crop(SomePhoto.of(840, 560).looked(), WIDE, SETTINGS);
    assertEquals(Crop.Fit.BORDER, crop.fit());
    assertEquals(200, crop.ppi().value(), 1e-3);
    assertEquals(4.2, crop.picture().width().inInches(), 1e-6);
    assertEquals(2.8, crop.picture().height().inInches(), 1e-6);
    assertEquals(
        List.of("printed smaller than its space, where it would look soft (140 ppi)"),
        crop.reasons());
  }

  @Test
  void pixelsBetweenLeastAndWantedAreSaid() {
    Crop crop = cropper.crop(SomePhoto.of(1500, 1000).looked(), WIDE, SETTINGS);
    assertEquals(Crop.Fit.FILL, crop.fit());
    assertEquals(List.of("sharp enough to print (250 ppi)"), crop.reasons());
  }

  @Test
  void aPanoramaIsShownWhole() {
    Crop crop = cropper.crop(SomePhoto.of(9000, 2400).looked(), WIDE, SETTINGS);
    assertEquals(new PixelBox(0, 0, 9000, 2400), crop.window());
    assertEquals(Crop.Fit.BORDER, crop.fit());
    assertEquals(Length.inches(5.75), crop.picture().width());
    assertEquals(List.of("the whole picture with white around it: a panorama"), crop.reasons());
  }

  @Test
  void theWindowFollowsTheSubjectAndSaysSo() {
    AnalysedPhoto looked =
        SomePhoto.of(4000, 3000).subject(2300, 800, 1200, 2000, "dog", 0.8).looked();
    Crop crop = cropper.crop(looked, TALL, SETTINGS);
    assertEquals(Crop.Fit.FILL, crop.fit());
    assertTrue(crop.window().contains(new PixelBox(2300, 800, 1200, 2000)));
    assertEquals(List.of("cropped left and right; the whole dog inside"), crop.reasons());
  }

  @Test
  void aSubjectLostByTurningThePictureLeavesWhiteInstead() {
    AnalysedPhoto looked =
        SomePhoto.of(3000, 4000).subject(300, 200, 2400, 3600, "person", 0.9).looked();
    Crop crop = cropper.crop(looked, WIDE, SETTINGS);
    assertEquals(Crop.Fit.BORDER, crop.fit());
    assertFalse(crop.reasons().isEmpty());
    assertEquals(Crop.Fit.FILL, cropper.crop(looked, TALL, SETTINGS).fit());
  }

  @Test
  void squarePiecesTakeTheWholeShortSide() {
    Crop crop = cropper.crop(SomePhoto.of(4000, 3000).looked(), PaperSize.inches(4, 4), SETTINGS);
    assertEquals(new PixelSize(3000, 3000), crop.window().size());
    assertEquals(500, crop.window().x(), 1); // nothing says otherwise: the middle
  }

  /** A 6 x 8 in piece on 4 x 6 in sheets: two lie across it and meet in its middle. */
  private static final Seams ACROSS_THE_MIDDLE =
      piece ->
          List.of(
              PaperBox.at(
                  Length.ZERO, Length.ZERO, new PaperSize(piece.width(), piece.height().half())),
              PaperBox.at(
                  Length.ZERO,
                  piece.height().half(),
                  new PaperSize(piece.width(), piece.height().minus(piece.height().half()))));

  private static final PaperSize LARGE = PaperSize.inches(6, 8);

  @Test
  void aFaceIsKeptOffTheJoinOfTwoSheetsByMovingTheWindow() {
    // 3 : 4.5 for 3 : 4 leaves 500 px to slide; the face is in the middle of the usual window
    AnalysedPhoto looked = SomePhoto.of(3000, 4500).face(1300, 2050, 400, 400, 0.9).looked();
    Crop crop = cropper.crop(looked, LARGE, SETTINGS.with(ACROSS_THE_MIDDLE));
    assertTrue(isOffTheMiddle(crop, new PixelBox(1200, 1810, 600, 720)), crop.toString());
    assertTrue(
        crop.reasons().stream().anyMatch(r -> r.startsWith("moved so that no face lies")),
        crop.reasons().toString());
    assertFalse(
        isOffTheMiddle(cropper.crop(looked, LARGE, SETTINGS), new PixelBox(1200, 1810, 600, 720)));
  }

  @Test
  void aPictureOfThePiecesOwnShapeIsTakenCloserToKeepAFaceOffTheJoin() {
    AnalysedPhoto looked = SomePhoto.of(3000, 4000).face(1350, 1900, 250, 250, 0.9).looked();
    Crop crop = cropper.crop(looked, LARGE, SETTINGS.with(ACROSS_THE_MIDDLE));
    assertTrue(isOffTheMiddle(crop, new PixelBox(1288, 1750, 375, 450)), crop.toString());
    assertTrue(crop.window().width() >= 0.75 * 3000 - 1, crop.toString());
    assertTrue(crop.reasons().toString().contains("closer for it"), crop.reasons().toString());
  }

  @Test
  void aFaceThatNoWindowKeepsOffTheJoinIsSaidAndMakesTheCropWorthLess() {
    AnalysedPhoto looked = SomePhoto.of(3000, 4000).face(600, 900, 1800, 2200, 0.9).looked();
    Crop joined = cropper.crop(looked, LARGE, SETTINGS.with(ACROSS_THE_MIDDLE));
    Crop whole = cropper.crop(looked, LARGE, SETTINGS);
    assertTrue(joined.reasons().toString().contains("where the sheets of this piece meet"));
    assertTrue(joined.quality() < 0.5 * whole.quality());
  }

  @Property(tries = 200)
  void aWindowMovedForAJoinHoldsEveryMainFaceAndHasNoneOnTheJoin(
      @ForAll @IntRange(min = 1500, max = 5000) int width,
      @ForAll @IntRange(min = 1500, max = 5000) int height,
      @ForAll @LongRange(min = 0, max = 100_000) long seed) {
    AnalysedPhoto looked = random(new PixelSize(width, height), seed);
    Crop crop = cropper.crop(looked, LARGE, SETTINGS.with(ACROSS_THE_MIDDLE));
    boolean moved = crop.reasons().stream().anyMatch(r -> r.startsWith("moved so that"));
    boolean onJoin = crop.reasons().stream().anyMatch(r -> r.startsWith("a face lies where"));
    if (crop.fit() == Crop.Fit.FILL && !onJoin) {
      for (Face face : looked.measures().mainFaces(looked.photo().size())) {
        if (face.isProtected()) {
          PixelBox box = face.box();
          assertTrue(!moved || crop.window().contains(box), crop.toString());
          assertTrue(isOffTheMiddle(crop, box), crop + " " + box);
        }
      }
    }
  }

  private static boolean isOffTheMiddle(Crop crop, PixelBox head) {
    double middle = crop.window().centreY();
    return head.bottom() <= middle + 0.5 || head.y() >= middle - 0.5;
  }

  @Test
  void theFacesAPersonWouldSeeAreCounted() {
    SomePhoto photo = SomePhoto.of(4000, 3000).face(1000, 900, 300, 400, 0.9);
    assertEquals(List.of("cropped top and bottom; the face inside"), said(photo, WIDE));
    photo.face(1600, 900, 300, 400, 0.35); // kept, but perhaps none
    assertEquals(List.of("cropped top and bottom; the face inside"), said(photo, WIDE));
    photo.face(2200, 900, 300, 400, 0.9);
    assertEquals(List.of("cropped top and bottom; both faces inside"), said(photo, WIDE));
    photo.face(2800, 900, 300, 400, 0.9);
    assertEquals(List.of("cropped top and bottom; all 3 faces inside"), said(photo, WIDE));
  }

  private List<String> said(SomePhoto photo, PaperSize piece) {
    return cropper.crop(photo.looked(), piece, SETTINGS).reasons();
  }

  @Test
  void whatIsLostOfAThingIsSaidAndMakesTheCropWorthLess() {
    double before = 1;
    for (int width : new int[] {2100, 2200, 2600}) { // of 2,000 that the window has
      AnalysedPhoto looked =
          SomePhoto.of(3000, 3000).subject(200, 300, width, 900, "dog", 0.9).looked();
      Crop crop = cropper.crop(looked, TALL, SETTINGS);
      assertEquals(List.of("cropped left and right; part of the dog is lost"), crop.reasons());
      assertEquals(Crop.Fit.FILL, crop.fit()); // a square picture does not lie across any piece
      double kept = new CropSearch(looked, TALL, SETTINGS).kept();
      assertTrue(crop.quality() < kept, width + ": " + crop.quality() + " of " + kept);
      assertTrue(crop.quality() < before, width + ": " + crop.quality() + " after " + before);
      before = crop.quality();
    }
  }

  @Test
  void aHeadCutOffOrWithoutAirMakesACropWorthLess() {
    SomePhoto apart = CropSearchTest.pair(2010); // no room for air, see there
    Crop held = cropper.fill(apart.looked(), WIDE, SETTINGS);
    CropSearch placing = new CropSearch(apart.looked(), WIDE, SETTINGS);
    assertTrue(held.quality() < placing.kept(), held.quality() + " of " + placing.kept());
    SomePhoto further = CropSearchTest.pair(2400);
    Crop cut = cropper.fill(further.looked(), WIDE, SETTINGS);
    assertEquals(List.of("cropped top and bottom; not every face inside"), cut.reasons());
    assertTrue(cut.quality() < 0.4 * held.quality(), cut.quality() + " of " + held.quality());
  }

  @Test
  void aPrintOfHalfThePieceIsWorthAboutSixTenths() {
    // 840 x 560 px at 200 ppi are 4.2 x 2.8 in: .49 of the piece
    assertEquals(
        0.63, cropper.crop(SomePhoto.of(840, 560).looked(), WIDE, SETTINGS).quality(), 0.01);
  }

  @Test
  void aWholePictureWithTooFewPixelsIsPrintedSmallerInItsOwnShape() {
    Crop crop = cropper.crop(SomePhoto.of(900, 240).looked(), WIDE, SETTINGS);
    assertEquals(4.5, crop.picture().width().inInches(), 1e-6); // 900 px at 200 ppi
    assertEquals(1.2, crop.picture().height().inInches(), 1e-6);
    assertEquals(
        List.of(
            "the whole picture with white around it: a panorama",
            "printed smaller than its space, where it would look soft (156 ppi)"),
        crop.reasons());
    assertEquals("border", crop.fit().word()); // as docs/month-json.md has it
  }

  @Test
  void aWholePictureKeepsItsShape() {
    Crop lying = cropper.crop(SomePhoto.of(9000, 2400).looked(), WIDE, SETTINGS);
    assertEquals(5.75 * 2400 / 9000, lying.picture().height().inInches(), 1e-6);
    Crop standing = cropper.crop(SomePhoto.of(2400, 9000).looked(), WIDE, SETTINGS);
    assertEquals(Length.inches(3.75), standing.picture().height());
    assertEquals(3.75 * 2400 / 9000, standing.picture().width().inInches(), 1e-6);
  }

  @Test
  void aWholePictureWithAFaceOnTheJoinSaysSoAndCountsFourTenths() {
    AnalysedPhoto looked = SomePhoto.of(2000, 8000).face(800, 3800, 300, 400, 0.9).looked();
    Crop alone = cropper.crop(looked, LARGE, SETTINGS);
    Crop joined = cropper.crop(looked, LARGE, SETTINGS.with(ACROSS_THE_MIDDLE));
    assertEquals(Crop.Fit.BORDER, joined.fit());
    assertTrue(
        joined
            .reasons()
            .contains("a face lies where the sheets of this piece meet; no crop avoids it"),
        joined.reasons().toString());
    assertEquals(0.4 * alone.quality(), joined.quality(), 1e-9);
  }

  @Test
  void aCloserWindowIsWorthLessByAsMuchAsItsSidesAreShorter() {
    SomePhoto photo = SomePhoto.of(3000, 4000).face(1350, 1900, 250, 250, 0.9);
    Crop closer = cropper.crop(photo.looked(), LARGE, SETTINGS.with(ACROSS_THE_MIDDLE));
    Crop whole = cropper.crop(photo.looked(), LARGE, SETTINGS);
    assertTrue(closer.window().width() < 3000);
    assertEquals(whole.quality() * closer.window().width() / 3000, closer.quality(), 1e-3);
  }

  @Test
  void withNoEdgeToKeepAHeadMayLieAtTheEdge() {
    CropSettings noEdge = new CropSettings(Ppi.ppi(300), Ppi.ppi(200), Length.ZERO);
    CropSettings usual = CropSettings.of(Ppi.ppi(300), Ppi.ppi(200));
    // heads from 400 to 2,350 of a window that is 2,000 px wide
    SomePhoto photo = SomePhoto.of(3000, 3000).face(450, 1000, 200, 300, 0.9);
    photo.face(2100, 1000, 200, 300, 0.9);
    assertEquals(Crop.Fit.FILL, cropper.crop(photo.looked(), TALL, noEdge).fit());
    assertEquals(Crop.Fit.BORDER, cropper.crop(photo.looked(), TALL, usual).fit());
  }

  @Test
  void theSameQuestionHasTheSameAnswer() {
    for (long seed = 0; seed < 50; seed++) {
      PixelSize size = new PixelSize(4000, 3000);
      assertEquals(
          cropper.crop(random(size, seed), TALL, SETTINGS),
          cropper.crop(random(size, seed), TALL, SETTINGS));
    }
  }

  private static AnalysedPhoto random(PixelSize size, long seed) {
    Random random = new Random(seed);
    float[] weights = new float[48 * 32];
    for (int i = 0; i < weights.length; i++) {
      weights[i] = random.nextFloat();
    }
    SomePhoto some = new SomePhoto(size, new SaliencyMap(48, 32, weights));
    for (int i = random.nextInt(4); i > 0; i--) {
      int side = 1 + random.nextInt(Math.max(1, size.shortEdge() / 3));
      int x = random.nextInt(size.width());
      int y = random.nextInt(size.height());
      if (random.nextBoolean()) {
        some.face(x, y, side, side, random.nextDouble());
      } else {
        some.subject(x, y, 2 * side, side, "boat", random.nextDouble());
      }
    }
    return some.looked();
  }

  @Test
  void onlyLegsAreLostOfAStandingPersonWithoutAWhiteBorderButAClockIsShownWhole() {
    SomePhoto standing = SomePhoto.of(3000, 4000).subject(1000, 300, 900, 3200, "person", 0.8);
    Crop crop = cropper.crop(standing.looked(), WIDE, SETTINGS);
    assertEquals(Crop.Fit.FILL, crop.fit());
    assertTrue(crop.window().y() <= 300, crop.window().toString());
    AnalysedPhoto clock =
        SomePhoto.of(3000, 4000).subject(1000, 300, 900, 3200, "clock", 0.8).looked();
    assertEquals(Crop.Fit.BORDER, cropper.crop(clock, WIDE, SETTINGS).fit());
  }

  @Test
  void aThingThatFitsStandsClearOfThePiecesEdge() {
    AnalysedPhoto two =
        SomePhoto.of(6000, 3000)
            .subject(3000, 800, 1600, 1600, "cat", 0.8)
            .subject(100, 800, 1700, 1700, "table", 0.9)
            .looked();
    PixelBox window = cropper.crop(two, TALL, SETTINGS).window();
    int margin = (int) (0.025 * window.width());
    assertTrue(window.x() <= 3000 - margin, window.toString());
    assertTrue(window.right() >= 4600 + margin, window.toString());
  }

  @Test
  void twoOfAKindAreHeldTogetherWhereThereIsRoom() {
    AnalysedPhoto giraffes =
        SomePhoto.of(4500, 3000)
            .subject(700, 500, 700, 2000, "giraffe", 0.8)
            .subject(1800, 500, 650, 2000, "giraffe", 0.7)
            .looked();
    PixelBox window = cropper.crop(giraffes, TALL, SETTINGS).window();
    assertTrue(window.x() <= 700 && window.right() >= 2450, window.toString());
  }

  @Test
  void aBorderWeighsWhatIsLostByHowSureItIs() {
    // The upright window of 4x6 takes 1,333 of 3,000 px across; a thing 1,500 and more.
    assertEquals(Crop.Fit.FILL, acrossWith("boat", 1500, 0.6).fit()); // 11 % lost of a sure one
    assertEquals(Crop.Fit.BORDER, acrossWith("boat", 2000, 0.6).fit()); // a third
    assertEquals(Crop.Fit.FILL, acrossWith("boat", 2000, 0.3).fit()); // a third of a guess
    Crop half = acrossWith("boat", 2800, 0.3); // more than half of one
    assertEquals(Crop.Fit.BORDER, half.fit());
    assertEquals(
        "the whole picture with white around it: no crop to 4x6 holds the whole main thing",
        half.reasons().get(0));
  }

  private Crop acrossWith(String what, int width, double confidence) {
    SomePhoto photo = SomePhoto.of(3000, 2000).subject(100, 400, width, 1000, what, confidence);
    return cropper.crop(photo.looked(), PaperSize.inches(4, 6), SETTINGS);
  }

  @Test
  void aFlockFillsThePieceThoughSomeOfItIsLost() {
    SomePhoto flock = SomePhoto.of(3000, 2000);
    for (int x = 100; x < 2600; x += 600) {
      flock.subject(x, 500, 500, 700, "bird", 0.7);
    }
    Crop crop = cropper.crop(flock.looked(), PaperSize.inches(4, 6), SETTINGS);
    assertEquals(Crop.Fit.FILL, crop.fit());
  }
}
