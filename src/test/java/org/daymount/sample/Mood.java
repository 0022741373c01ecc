package org.daymount.sample;

/** The light of an hour and its weather. Angles in degrees; colours 0xRRGGBB as on a screen. */
record Mood(
    double sunAzimuth,
    double sunHeight,
    int sun,
    double sunPower,
    int skyTop,
    int skyLow,
    double clouds,
    int cloudLit,
    int cloudDark,
    double ambient,
    double haze,
    double exposure,
    boolean night) {

  static Mood morning() {
    return new Mood(
        -60, 22, 0xffe2b8, 2.3, 0x5f95d8, 0xe8e3d4, .45, 0xfff4e6, 0xa9b4c6, .62, .0008, 1.25,
        false);
  }

  static Mood noon() {
    return new Mood(
        -40, 52, 0xfff6e4, 2.5, 0x2f6fc4, 0xbfdcf2, .38, 0xffffff, 0xb9c6d6, .6, .0004, 1.1, false);
  }

  static Mood afternoon() {
    return new Mood(
        55, 34, 0xffe9c4, 2.5, 0x3f7ccb, 0xd6e4ea, .5, 0xfffaf0, 0xa7b2c2, .6, .0006, 1.15, false);
  }

  static Mood overcast() {
    return new Mood(
        30, 60, 0xe8ecf0, .6, 0x9aa8b4, 0xd5dadc, .95, 0xe4e8ea, 0x9aa3ab, 1.15, .0022, 1.15,
        false);
  }

  static Mood fog() {
    return new Mood(
        20, 50, 0xeef0f0, .4, 0xc4ccd0, 0xdde1e2, .3, 0xe4e8ea, 0xc8ced2, 1.2, .028, 1.1, false);
  }

  static Mood evening() {
    return new Mood(
        48, 11, 0xffb978, 2.6, 0x4a6fae, 0xf6cf9a, .55, 0xffc998, 0x8d7f96, .52, .001, 1.3, false);
  }

  static Mood sunset() {
    return new Mood(
        8, 3.5, 0xff8a48, 2.4, 0x35508f, 0xffa45c, .62, 0xff9a6a, 0x5d5478, .5, .0014, 1.35, false);
  }

  static Mood dusk() {
    return new Mood(
        20, 12, 0x7a88b8, .35, 0x16244e, 0x8c6a86, .45, 0x6a5a82, 0x2c3052, .34, .0012, 1.6, false);
  }

  static Mood moonlight() {
    return new Mood(
        14, 24, 0xb8c8f0, .30, 0x060b1e, 0x1c2c4c, .35, 0x46557a, 0x10182e, .14, .0004, 2.1, true);
  }

  /** Soft light from a window on the left. */
  static Mood indoors() {
    return new Mood(
        -62, 32, 0xfff2e0, 1.5, 0xb8c4cc, 0xd8d2c8, 0, 0xffffff, 0xffffff, .62, 0, 1.15, false);
  }

  static Mood lamplight() {
    return new Mood(
        -30, 48, 0xffc488, .9, 0x5a4636, 0x8a6a4c, 0, 0xffffff, 0xffffff, .5, 0, 1.5, false);
  }

  double[] sunDirection() {
    double a = StrictMath.toRadians(sunAzimuth);
    double e = StrictMath.toRadians(sunHeight);
    return new double[] {
      StrictMath.sin(a) * StrictMath.cos(e),
      StrictMath.sin(e),
      StrictMath.cos(a) * StrictMath.cos(e)
    };
  }

  Mood sunFrom(double azimuth, double height) {
    return new Mood(
        azimuth, height, sun, sunPower, skyTop, skyLow, clouds, cloudLit, cloudDark, ambient, haze,
        exposure, night);
  }

  Mood exposed(double factor) {
    return new Mood(
        sunAzimuth,
        sunHeight,
        sun,
        sunPower,
        skyTop,
        skyLow,
        clouds,
        cloudLit,
        cloudDark,
        ambient,
        haze,
        exposure * factor,
        night);
  }
}
