package org.daymount.look;

import org.daymount.image.SrgbCurve;

/** A picture as CIE 1976 L*a*b* planes, white point D65; L* 0 to 100. */
record Lab(Plane light, Plane greenRed, Plane blueYellow) {
  private static final double[] LINEAR = linear();

  static Lab of(Rgb rgb) {
    int width = rgb.width();
    int height = rgb.height();
    Plane light = Plane.empty(width, height);
    Plane greenRed = Plane.empty(width, height);
    Plane blueYellow = Plane.empty(width, height);
    for (int i = 0; i < width * height; i++) {
      double r = linear(rgb.red().values()[i]);
      double g = linear(rgb.green().values()[i]);
      double b = linear(rgb.blue().values()[i]);
      // sRGB to XYZ over its D65 white: IEC 61966-2-1
      double x = curve((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
      double y = curve(0.2126 * r + 0.7152 * g + 0.0722 * b);
      double z = curve((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.0890);
      light.values()[i] = (float) (116 * y - 16);
      greenRed.values()[i] = (float) (500 * (x - y));
      blueYellow.values()[i] = (float) (200 * (y - z));
    }
    return new Lab(light, greenRed, blueYellow);
  }

  Plane[] planes() {
    return new Plane[] {light, greenRed, blueYellow};
  }

  /** Between two whole values in a straight line; off by less than 0.00001. */
  private static double linear(float value) {
    int below = Math.min(254, (int) value);
    return LINEAR[below] + (value - below) * (LINEAR[below + 1] - LINEAR[below]);
  }

  private static double[] linear() {
    double[] table = new double[256];
    for (int i = 0; i < table.length; i++) {
      table[i] = SrgbCurve.light(i / 255.0);
    }
    return table;
  }

  private static double curve(double t) {
    return t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116.0;
  }
}
