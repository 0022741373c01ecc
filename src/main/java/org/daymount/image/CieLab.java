package org.daymount.image;

/**
 * CIE 1976 L*a*b* (CIE 15) of linear sRGB (IEC 61966-2-1), white point D65, and back. Linear light
 * is 0 to 1 for colours that sRGB has.
 */
final class CieLab {
  /** Linear sRGB to XYZ, IEC 61966-2-1. */
  private static final double[][] XYZ = {
    {0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}
  };

  private static final double[] WHITE = {0.9505, 1, 1.0890};
  private static final double[][] RGB = Matrix3.inverse(XYZ);

  /** Below it, CIE 15 takes a straight line for the cube root: (6/29) cubed. */
  private static final double STRAIGHT = 216.0 / 24389;

  private CieLab() {}

  /** Whether the cube root alone holds for this colour, and so for all lighter ones like it. */
  static boolean isAboveStraight(double r, double g, double b) {
    return part(0, r, g, b) > STRAIGHT
        && part(1, r, g, b) > STRAIGHT
        && part(2, r, g, b) > STRAIGHT;
  }

  static double[] of(double r, double g, double b) {
    double x = curve(part(0, r, g, b));
    double y = curve(part(1, r, g, b));
    double z = curve(part(2, r, g, b));
    return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
  }

  /** Linear red, green and blue; below 0 or above 1 for a colour that sRGB does not have. */
  static double[] toLinear(double light, double a, double b) {
    double y = (light + 16) / 116;
    double[] xyz = {back(y + a / 500) * WHITE[0], back(y) * WHITE[1], back(y - b / 200) * WHITE[2]};
    double[] rgb = new double[3];
    for (int i = 0; i < 3; i++) {
      rgb[i] = RGB[i][0] * xyz[0] + RGB[i][1] * xyz[1] + RGB[i][2] * xyz[2];
    }
    return rgb;
  }

  private static double part(int i, double r, double g, double b) {
    return (XYZ[i][0] * r + XYZ[i][1] * g + XYZ[i][2] * b) / WHITE[i];
  }

  private static double curve(double t) {
    return t > STRAIGHT ? Math.cbrt(t) : t * 841 / 108 + 4.0 / 29;
  }

  private static double back(double f) {
    return f > 6.0 / 29 ? f * f * f : (f - 4.0 / 29) * 108 / 841;
  }
}
