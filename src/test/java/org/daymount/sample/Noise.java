package org.daymount.sample;

/** Smooth value noise from an integer hash: the same on every machine, no random generator. */
final class Noise {
  private Noise() {}

  /** A number in [0, 1) that depends on nothing but the three integers. */
  static double hash(int x, int y, int z) {
    int h = x * 0x27d4eb2d ^ y * 0x165667b1 ^ z * 0x9e3779b1;
    h = (h ^ (h >>> 15)) * 0x85ebca6b;
    h = (h ^ (h >>> 13)) * 0xc2b2ae35;
    h ^= h >>> 16;
    return (h >>> 8) * 0x1p-24;
  }

  private static double fade(double t) {
    return t * t * t * (t * (t * 6 - 15) + 10);
  }

  static double at(double x, double y) {
    int xi = (int) Math.floor(x);
    int yi = (int) Math.floor(y);
    double u = fade(x - xi);
    double v = fade(y - yi);
    double top = hash(xi, yi, 7) * (1 - u) + hash(xi + 1, yi, 7) * u;
    double bottom = hash(xi, yi + 1, 7) * (1 - u) + hash(xi + 1, yi + 1, 7) * u;
    return top * (1 - v) + bottom * v;
  }

  static double at(double x, double y, double z) {
    int xi = (int) Math.floor(x);
    int yi = (int) Math.floor(y);
    int zi = (int) Math.floor(z);
    double u = fade(x - xi);
    double v = fade(y - yi);
    double w = fade(z - zi);
    double near = slice(xi, yi, zi, u, v);
    double far = slice(xi, yi, zi + 1, u, v);
    return near * (1 - w) + far * w;
  }

  private static double slice(int x, int y, int z, double u, double v) {
    double top = hash(x, y, z) * (1 - u) + hash(x + 1, y, z) * u;
    double bottom = hash(x, y + 1, z) * (1 - u) + hash(x + 1, y + 1, z) * u;
    return top * (1 - v) + bottom * v;
  }

  /** Several octaves of noise, each half as strong and twice as fine; in [0, 1). */
  static double cloud(double x, double y, int octaves) {
    double sum = 0;
    double weight = .5;
    for (int i = 0; i < octaves; i++) {
      sum += weight * at(x, y);
      double turned = x * 1.6 + y * 1.2 + 3.1;
      y = y * 1.6 - x * 1.2 + 1.7;
      x = turned;
      weight *= .5;
    }
    return sum;
  }

  static double cloud(double x, double y, double z, int octaves) {
    double sum = 0;
    double weight = .5;
    for (int i = 0; i < octaves; i++) {
      sum += weight * at(x, y, z);
      x = x * 2.03 + 1.3;
      y = y * 2.03 + 4.1;
      z = z * 2.03 + 2.7;
      weight *= .5;
    }
    return sum;
  }

  /**
   * The angle of (x, y) from the y axis in radians, to about 0.005: quick, and the same anywhere.
   */
  static double bearing(double x, double y) {
    double a = Math.abs(x);
    double b = Math.abs(y);
    double q = Math.min(a, b) / (Math.max(a, b) + 1e-12);
    double angle = q * (.9953 + q * q * (-.2886 + q * q * .0790));
    if (a > b) {
      angle = StrictMath.PI / 2 - angle;
    }
    if (y < 0) {
      angle = StrictMath.PI - angle;
    }
    return x < 0 ? -angle : angle;
  }
}
