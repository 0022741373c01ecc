package org.daymount.sample;

import java.util.function.Supplier;

/**
 * One file of the sample month: what is before the lens and what the phone writes down.
 *
 * @param clock what the phone's clock showed, as EXIF has it; empty for a file without EXIF
 * @param fraction SubSecTimeOriginal with its leading zeros; empty for none
 * @param offset OffsetTimeOriginal; empty for none
 * @param smear pixels at a long side of 2000 by which the subject alone moved: x, y, softness
 * @param shake the same for the whole picture
 */
record Shot(
    String name,
    Phone phone,
    String clock,
    String fraction,
    String offset,
    int width,
    int height,
    int orientation,
    boolean place,
    boolean thumbnail,
    double[] smear,
    double[] shake,
    boolean rain,
    double grain,
    Supplier<Stage> stage) {

  /** Invented makers. */
  enum Phone {
    TARN("Tarn", "Tarn T4", "T4-2.11", 18, 562, 26),
    ORRERY("Orrery", "Orrery 9", "OR9.4 (1187)", 20, 604, 28);

    final String make;
    final String model;
    final String software;
    final int fNumberTenths;
    final int focalHundredths;
    final int equivalent;

    Phone(String make, String model, String software, int fNumber, int focal, int equivalent) {
      this.make = make;
      this.model = model;
      this.software = software;
      this.fNumberTenths = fNumber;
      this.focalHundredths = focal;
      this.equivalent = equivalent;
    }
  }

  /** A scene and where it is seen from. */
  record Stage(Scene scene, View view) {}

  private static final double[] STILL = {0, 0, 0};

  static Shot tarn(String name, String clock, Supplier<Stage> stage) {
    return new Shot(
        name,
        Phone.TARN,
        clock,
        "",
        "+01:00",
        1640,
        1230,
        1,
        false,
        true,
        STILL,
        STILL,
        false,
        .8,
        stage);
  }

  static Shot orrery(String name, String clock, Supplier<Stage> stage) {
    return new Shot(
        name,
        Phone.ORRERY,
        clock,
        "",
        "",
        1600,
        1200,
        1,
        false,
        false,
        STILL,
        STILL,
        false,
        .9,
        stage);
  }

  boolean isTall() {
    return height > width;
  }

  Shot tall() {
    return sized(height, width);
  }

  Shot sized(int w, int h) {
    return new Shot(
        name,
        phone,
        clock,
        fraction,
        offset,
        w,
        h,
        orientation,
        place,
        thumbnail,
        smear,
        shake,
        rain,
        grain,
        stage);
  }

  Shot turned(int exif) {
    return new Shot(
        name, phone, clock, fraction, offset, width, height, exif, place, thumbnail, smear, shake,
        rain, grain, stage);
  }

  Shot placed() {
    return new Shot(
        name,
        phone,
        clock,
        fraction,
        offset,
        width,
        height,
        orientation,
        true,
        thumbnail,
        smear,
        shake,
        rain,
        grain,
        stage);
  }

  Shot fraction(String digits) {
    return new Shot(
        name,
        phone,
        clock,
        digits,
        offset,
        width,
        height,
        orientation,
        place,
        thumbnail,
        smear,
        shake,
        rain,
        grain,
        stage);
  }

  Shot smeared(double dx, double dy, double soft) {
    return new Shot(
        name,
        phone,
        clock,
        fraction,
        offset,
        width,
        height,
        orientation,
        place,
        thumbnail,
        new double[] {dx, dy, soft},
        shake,
        rain,
        grain,
        stage);
  }

  Shot shaken(double dx, double dy, double soft) {
    return new Shot(
        name,
        phone,
        clock,
        fraction,
        offset,
        width,
        height,
        orientation,
        place,
        thumbnail,
        smear,
        new double[] {dx, dy, soft},
        rain,
        grain,
        stage);
  }

  Shot rainy() {
    return new Shot(
        name,
        phone,
        clock,
        fraction,
        offset,
        width,
        height,
        orientation,
        place,
        thumbnail,
        smear,
        shake,
        true,
        grain,
        stage);
  }

  Shot grainy(double newGrain) {
    return new Shot(
        name,
        phone,
        clock,
        fraction,
        offset,
        width,
        height,
        orientation,
        place,
        thumbnail,
        smear,
        shake,
        rain,
        newGrain,
        stage);
  }
}
