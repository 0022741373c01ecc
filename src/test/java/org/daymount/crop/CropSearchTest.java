package org.daymount.crop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.daymount.look.SaliencyMap;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Test;

/** Where the largest window goes that a picture has. */
class CropSearchTest {
  private static final PaperSize TALL = PaperSize.inches(4, 6);
  private static final PaperSize WIDE = PaperSize.inches(6, 4);

  @Test
  void noWindowKeepsMoreThanTheOneTaken() {
    for (long seed = 0; seed < 20; seed++) {
      Random random = new Random(seed);
      float[] weights = new float[96];
      for (int i = 0; i < weights.length; i++) {
        weights[i] = random.nextInt(4) == 0 ? random.nextFloat() : 0.01f;
      }
      SaliencyMap map = new SaliencyMap(96, 1, weights); // cells of 10 x 480 px
      CropSearch placing = placing(new SomePhoto(new PixelSize(960, 480), map), TALL);
      double most = 0;
      for (int x = 0; x + 320 <= 960; x++) {
        most = Math.max(most, inColumns(map, x, x + 320));
      }
      PixelBox window = placing.window();
      assertEquals(320, window.width());
      assertEquals(most, inColumns(map, window.x(), window.right()), 0.0003, "seed " + seed);
      assertEquals(most, placing.kept(), 0.0003);
    }
  }

  /** What a stretch of the picture holds, pixel by pixel. */
  private static double inColumns(SaliencyMap map, int from, int to) {
    double sum = 0;
    for (int x = from; x < to; x++) {
      sum += map.weight(x / 10, 0) / 10;
    }
    return sum;
  }

  // The rule of thirds: common practice in composition, no source.
  @Test
  void whereEveryWindowKeepsAsMuchTheMiddleOfInterestGoesToTheCentreOrAThird() {
    // In the middle of the picture: to the centre of the window. Beside it: to the third at which
    // the window is nearest to the middle of the picture.
    assertEquals(485 - 160, placing(onlyAround(485), TALL).window().x(), 1);
    assertEquals(255 - 320 / 3.0, placing(onlyAround(255), TALL).window().x(), 1.5);
    assertEquals(705 - 2 * 320 / 3.0, placing(onlyAround(705), TALL).window().x(), 1.5);
  }

  /** A picture of 960 x 480 in which a strip of 10 px is all that matters. */
  private static SomePhoto onlyAround(int x) {
    float[] weights = new float[96];
    weights[x / 10] = 1;
    return new SomePhoto(new PixelSize(960, 480), new SaliencyMap(96, 1, weights));
  }

  @Test
  void whatLiesAtAnEdgeIsKept() {
    assertEquals(640, placing(onlyAround(955), TALL).window().x());
    assertEquals(1, placing(onlyAround(955), TALL).kept(), 1e-6);
    assertEquals(0, placing(onlyAround(5), TALL).window().x());
  }

  @Test
  void aSureMainThingIsKeptWholeThoughMoreOfTheRestIsLost() {
    // 300 px that fit into 320; what else matters lies to the right of both.
    SomePhoto photo = onlyAround(325).subject(0, 0, 300, 480, "boat", 0.6);
    assertEquals(0, placing(photo, TALL).window().x());
    SomePhoto unsure = onlyAround(325).subject(0, 0, 300, 480, "boat", 0.2);
    assertTrue(placing(unsure, TALL).window().x() > 5);
  }

  @Test
  void aDoubtfulThingIsTheMainOneOnlyWhereItIsLarge() {
    SomePhoto large = onlyAround(325).subject(0, 0, 300, 480, "bed", 0.3); // .31 of the picture
    assertEquals(0, placing(large, TALL).window().x());
    SomePhoto small = onlyAround(325).subject(0, 0, 300, 200, "bed", 0.3); // .13
    assertTrue(placing(small, TALL).window().x() > 5);
  }

  @Test
  void threeOfAKindAreManyOfWhichNoneIsTheMainOne() {
    SomePhoto two =
        onlyAround(500)
            .subject(400, 100, 150, 200, "bird", 0.7)
            .subject(600, 100, 150, 200, "bird", 0.7);
    assertFalse(placing(two, TALL).isOneOfMany());
    assertTrue(placing(two.subject(200, 100, 150, 200, "bird", 0.7), TALL).isOneOfMany());
  }

  @Test
  void aHeadHasAirAboveItWhereThatCostsNextToNothing() {
    CropSearch placing = placing(person().subject(0, 2000, 3000, 1390, "boat", 0.02), WIDE);
    assertTrue(placing.window().y() <= AIR_BEGINS, placing.window().toString());
    assertTrue(placing.hasAir());
  }

  @Test
  void airGivesWayToWhatThePictureIsAbout() {
    CropSearch placing = placing(person().subject(0, 2000, 3000, 1390, "boat", 0.45), WIDE);
    assertTrue(placing.window().y() > AIR_BEGINS, placing.window().toString());
    assertTrue(placing.window().y() <= HEAD_BEGINS, placing.window().toString());
    assertFalse(placing.hasAir());
  }

  @Test
  void aHeadWithoutAirIsSaidToHaveNone() {
    // From the edge above the upper hair to that below the lower chin, of the 2,000 px there are:
    // 1,000 - 240 - 63 = 697 to 1,990 + 400 + 80 + 63 = 2,533, and 160 more for the air: 1,996.
    assertTrue(placing(pair(1990), WIDE).hasAir());
    CropSearch lower = placing(pair(2010), WIDE);
    assertTrue(lower.holdsFaces());
    assertFalse(lower.hasAir());
  }

  /** Two people of whom no more is seen than their faces, one at 1,000 and one further down. */
  static SomePhoto pair(int lower) {
    return SomePhoto.of(3000, 4000)
        .subject(600, 1000, 300, 400, "person", 0.9)
        .face(600, 1000, 300, 400, 0.9)
        .subject(1900, lower, 300, 400, "person", 0.9)
        .face(1900, lower, 300, 400, 0.9);
  }

  // A face of 400 x 400 in a window of 3,000 x 2,000 on 6 x 4 in: 240 px of hair and 63 for the
  // edge above it, and 160 of air.
  private static final int HEAD_BEGINS = 1700 - 240 - 63;
  private static final int AIR_BEGINS = HEAD_BEGINS - 160;

  private static SomePhoto person() {
    return SomePhoto.of(3000, 4000).face(1300, 1700, 400, 400, 0.9);
  }

  private static CropSearch placing(SomePhoto photo, PaperSize piece) {
    return new CropSearch(photo.looked(), piece, CropSettings.of(Ppi.ppi(300), Ppi.ppi(200)));
  }
}
