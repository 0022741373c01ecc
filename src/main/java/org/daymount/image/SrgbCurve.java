package org.daymount.image;

/** The curve between samples and light of sRGB (IEC 61966-2-1, 5.2); both from 0 to 1. */
public final class SrgbCurve {
  private SrgbCurve() {}

  public static double light(double sample) {
    return sample <= 0.04045 ? sample / 12.92 : Math.pow((sample + 0.055) / 1.055, 2.4);
  }

  public static double sample(double light) {
    return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
  }
}
