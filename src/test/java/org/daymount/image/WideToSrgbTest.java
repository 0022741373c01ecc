package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WideToSrgbTest {
  private static final Cicp HLG = new Cicp(9, 18, 9, false);
  private static final Cicp PQ = new Cicp(9, 16, 9, false);

  /** Report ITU-R BT.2408, table 1: HDR reference white and 18% grey at 203 and 26 cd/m². */
  @Test
  void referenceLevelsAreThoseOfTheReport() {
    assertEquals(203, WideToSrgb.pqLight(0.58), 2);
    assertEquals(26, WideToSrgb.pqLight(0.38), 1);
    assertEquals(203, 1000 * Math.pow(WideToSrgb.hlgScene(0.75), 1.2), 1);
    assertEquals(26, 1000 * Math.pow(WideToSrgb.hlgScene(0.38), 1.2), 1);
  }

  /** Rec. ITU-R BT.2100, tables 4 and 5: the ends of both curves, and the middle of HLG's. */
  @Test
  void curvesEndWhereTheRecommendationEndsThem() {
    assertEquals(10_000, WideToSrgb.pqLight(1), 1e-6);
    assertEquals(0, WideToSrgb.pqLight(0), 1e-12);
    assertEquals(1, WideToSrgb.hlgScene(1), 1e-6);
    assertEquals(1.0 / 12, WideToSrgb.hlgScene(0.5), 1e-12);
    assertEquals(0.58, WideToSrgb.pqSignal(WideToSrgb.pqLight(0.58)), 1e-12);
  }

  /** Report ITU-R BT.2390, 5.4.1: the peak of the source becomes that of the target, in order. */
  @Test
  void brightLightIsRolledOffAndNeverTurnsBack() {
    assertEquals(50, WideToSrgb.rolledOff(50), 1e-9);
    assertEquals(WideToSrgb.WHITE, WideToSrgb.rolledOff(WideToSrgb.PEAK), 1e-6);
    double before = 0;
    for (double light = 1; light <= 1000; light++) {
      double shown = WideToSrgb.rolledOff(light);
      assertTrue(shown > before && shown <= light + 1e-9, light + " becomes " + shown);
      before = shown;
    }
  }

  @Test
  void greyStaysGreyAndTheEndsAreBlackAndWhite() {
    for (Cicp colour : new Cicp[] {HLG, PQ}) {
      WideToSrgb conversion = new WideToSrgb(colour, 10);
      assertEquals(0, conversion.rgb(64, 512, 512));
      assertEquals(0xffffff, conversion.rgb(940, 512, 512));
      for (int y = 64; y < 940; y += 7) {
        int grey = conversion.rgb(y, 512, 512);
        assertEquals(grey >> 16, grey >> 8 & 0xff, 1);
        assertEquals(grey >> 16, grey & 0xff, 1);
      }
    }
  }
}
