package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * One strong colour of PQ worked out step by step with the printed numbers (Rec. ITU-R BT.2100-2,
 * tables 4 and 6; Report BT.2390, 5.4.1; BT.2407, 2.2; IEC 61966-2-1), in doubles and without any
 * of the program's own formulas: an orange at the edge of what sRGB can show.
 */
class HandWorkedColourTest {
  private static final Cicp PQ = new Cicp(9, 16, 9, false);

  @Test
  void aStrongOrangeIsWhatTheStandardsMakeOfIt() {
    int y = 440;
    int cb = 432;
    int cr = 592;
    double luma = (y - 64) / 876.0; // 0.42922
    double blue = luma + 1.8814 * (cb - 512) / 896.0; // 0.26124
    double red = luma + 1.4746 * (cr - 512) / 896.0; // 0.56088
    double green = (luma - 0.2627 * red - 0.0593 * blue) / 0.6780; // 0.39290
    double r = light(red); // 167.8 cd/m²
    double g = light(green); // 30.0
    double b = light(blue); // 6.0
    double left =
        rolledOff(r)
            / r; // 144.5 of 167.8: the largest of the three is rolled off, so the hue stays
    double scale = left / 203;
    // more red than sRGB has, clipped to 255; 66.5; 9.3
    assertCode(1.6605 * r - 0.5876 * g - 0.0728 * b, scale, y, cb, cr, 16);
    assertCode(-0.1246 * r + 1.1329 * g - 0.0083 * b, scale, y, cb, cr, 8);
    assertCode(-0.0182 * r - 0.1006 * g + 1.1187 * b, scale, y, cb, cr, 0);
  }

  private static void assertCode(double light, double scale, int y, int cb, int cr, int shift) {
    double part = Math.max(0, Math.min(1, light * scale));
    double code =
        255 * (part <= 0.0031308 ? 12.92 * part : 1.055 * Math.pow(part, 1 / 2.4) - 0.055);
    int ours = new WideToSrgb(PQ, 10).rgb(y, cb, cr) >> shift & 0xff;
    assertEquals(code, ours, 1, "at bit " + shift);
  }

  /** BT.2100, table 4: the display's light, cd/m². */
  private static double light(double signal) {
    double root = Math.pow(signal, 1 / 78.84375);
    return 10_000
        * Math.pow(
            Math.max(root - 0.8359375, 0) / (18.8515625 - 18.6875 * root), 1 / 0.1593017578125);
  }

  /** BT.2390, 5.4.1: E2 of E1, from 1,000 to 203 cd/m², whose signals are 0.7518 and 0.5807. */
  private static double rolledOff(double light) {
    double y = Math.pow(light / 10_000, 0.1593017578125);
    double e1 = Math.pow((0.8359375 + 18.8515625 * y) / (1 + 18.6875 * y), 78.84375) / 0.751827;
    double maxLum = 0.580689 / 0.751827;
    double ks = 1.5 * maxLum - 0.5;
    double t = (e1 - ks) / (1 - ks);
    double e2 =
        (2 * t * t * t - 3 * t * t + 1) * ks
            + (t * t * t - 2 * t * t + t) * (1 - ks)
            + (-2 * t * t * t + 3 * t * t) * maxLum;
    return e1 < ks ? light : light(e2 * 0.751827);
  }
}
