package org.daymount.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.Random;
import org.daymount.evaluate.Alter;
import org.junit.jupiter.api.Test;

class DefocusEstimateTest {
  private final Measurer measurer = new Measurer();

  /**
   * An edge between two greys, blurred with sigma s, has at blurs of sigma 1 and 2 the slopes of
   * Gaussians of variance s^2 + 1 and s^2 + 4 (Zhuo and Sim 2011, equation 5).
   */
  @Test
  void edgesBlurredBySigmaTwoPointNineAreHalfClearWhateverItsContrast() {
    for (int contrast : new int[] {40, 200}) {
      BufferedImage edge = Painted.plain(200, 200, new Color(20, 20, 20));
      int grey = 20 + contrast;
      for (int y = 0; y < 200; y++) {
        for (int x = 0; x < 200; x++) {
          if ((x + y) / 24 % 2 == 0) {
            edge.setRGB(x, y, grey << 16 | grey << 8 | grey);
          }
        }
      }
      // edges aslant, so that each direction sees them; blurred pictures are whole luma steps
      double clarity = measurer.measure(Alter.blurred(edge, 2.9)).clarity();
      assertEquals(0.5, clarity, 0.05, "contrast " + contrast);
    }
  }

  @Test
  void noiseIsNotClarity() {
    BufferedImage scene = Painted.scene(480, 360, 3);
    BufferedImage soft = Alter.blurred(scene, 8);
    double original = measurer.measure(scene).clarity();
    double noisy = measurer.measure(Alter.noisy(soft, 3, new Random(1))).clarity();
    assertTrue(noisy < 0.5 * original, noisy + " of " + original);
    BufferedImage nothing = Painted.plain(480, 360, new Color(12, 12, 12));
    assertEquals(0, measurer.measure(Alter.noisy(nothing, 4, new Random(2))).clarity());
  }

  @Test
  void aPictureThatIsNearlyBlackOrBlurredIsSpoiltAndASoundOneIsNot() {
    BufferedImage scene = Painted.scene(480, 360, 3);
    assertTrue(!measurer.mainLook(scene, Optional.empty()).isSpoilt());
    assertTrue(measurer.mainLook(Alter.blurred(scene, 5), Optional.empty()).isBlurred());
    BufferedImage dark = new BufferedImage(480, 360, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 360; y++) {
      for (int x = 0; x < 480; x++) {
        Color colour = new Color(scene.getRGB(x, y));
        dark.setRGB(
            x,
            y,
            new Color(colour.getRed() / 5, colour.getGreen() / 5, colour.getBlue() / 5).getRGB());
      }
    }
    assertTrue(measurer.mainLook(dark, Optional.empty()).isTooDark());
  }
}
