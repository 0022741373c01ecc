package org.daymount.pick;

import static org.daymount.pick.Pictures.LANDSCAPE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.awt.image.BufferedImage;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.daymount.evaluate.Alter;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Measurer;
import org.daymount.look.Measures;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.Painted;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

class BurstWinnerTest {
  private static final int SCENE = 1;
  private static final double GOOD_LIGHT = 0.8;
  private static final double FAIR_LIGHT = 0.65;

  private final Measurer measurer = new Measurer();

  @Property(tries = 60)
  void aBlurredCopyNeverBeatsItsOriginal(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @DoubleRange(min = 0.4, max = 4) double sigma,
      @ForAll boolean lookedAtClosely,
      @ForAll boolean originalFirst) {
    BufferedImage picture = Painted.scene(320, 240, seed);
    AnalysedPhoto original = seen("original.jpg", picture, lookedAtClosely);
    AnalysedPhoto blurred = seen("blurred.jpg", Alter.blurred(picture, sigma), lookedAtClosely);
    List<AnalysedPhoto> burst =
        originalFirst ? List.of(original, blurred) : List.of(blurred, original);
    assertSame(original, BurstWinner.of(burst).looked());
  }

  @Test
  void theClearlySharperFrameWinsEvenInPoorerLight() {
    AnalysedPhoto sharp = Pictures.of("sharp.jpg", LANDSCAPE, SCENE, FAIR_LIGHT, 200);
    AnalysedPhoto light = Pictures.of("light.jpg", LANDSCAPE, SCENE, GOOD_LIGHT, 100);
    assertSame(sharp, BurstWinner.of(List.of(light, sharp)).looked());
  }

  @Test
  void ofFramesAboutAsSharpTheBetterLitOneWins() {
    AnalysedPhoto dull = Pictures.of("dull.jpg", LANDSCAPE, SCENE, FAIR_LIGHT, 105);
    AnalysedPhoto light = Pictures.of("light.jpg", LANDSCAPE, SCENE, GOOD_LIGHT, 100);
    assertSame(light, BurstWinner.of(List.of(dull, light)).looked());
  }

  @Test
  void sharpnessOnTheFaceOverrulesThatOfTheWholePicture() {
    AnalysedPhoto sharpBackground =
        closely(Pictures.of("background.jpg", LANDSCAPE, SCENE, GOOD_LIGHT, 300), 20);
    AnalysedPhoto sharpFace =
        closely(Pictures.of("face.jpg", LANDSCAPE, SCENE, GOOD_LIGHT, 100), 60);
    assertSame(sharpFace, BurstWinner.of(List.of(sharpBackground, sharpFace)).looked());
  }

  @Test
  void whereNotEveryFrameWasLookedAtCloselyTheFirstLookDecidesForAll() {
    AnalysedPhoto sharp = Pictures.of("sharp.jpg", LANDSCAPE, SCENE, GOOD_LIGHT, 300);
    AnalysedPhoto soft = closely(Pictures.of("soft.jpg", LANDSCAPE, SCENE, GOOD_LIGHT, 100), 900);
    assertSame(sharp, BurstWinner.of(List.of(soft, sharp)).looked());
  }

  @Test
  void theOthersFollowSharpestFirst() {
    AnalysedPhoto best = Pictures.of("best.jpg", LANDSCAPE, SCENE, GOOD_LIGHT, 300);
    AnalysedPhoto next = Pictures.of("next.jpg", LANDSCAPE, SCENE, GOOD_LIGHT, 200);
    AnalysedPhoto last = Pictures.of("last.jpg", LANDSCAPE, SCENE, GOOD_LIGHT, 100);
    assertEquals(List.of(next, last), BurstWinner.of(List.of(last, best, next)).alike());
  }

  private AnalysedPhoto seen(String name, BufferedImage picture, boolean closely) {
    PixelSize size = new PixelSize(picture.getWidth(), picture.getHeight());
    Measures measures = measurer.measure(picture);
    AnalysedPhoto looked = new AnalysedPhoto(Pictures.photo(name, size), measures);
    PixelBox middle = new PixelBox(80, 60, 160, 120);
    return closely
        ? closely(looked, measurer.sharpnessIn(picture, middle, measures.map()))
        : looked;
  }

  private static AnalysedPhoto closely(AnalysedPhoto looked, double sharpness) {
    return looked.withClose(new CloseLook(List.of(), List.of(), sharpness));
  }
}
