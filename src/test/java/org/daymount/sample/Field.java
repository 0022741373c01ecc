package org.daymount.sample;

/** A signed distance in metres: below zero inside. Exact or a little short, never too long. */
@FunctionalInterface
interface Field {
  double at(double x, double y, double z);

  static double length(double x, double y, double z) {
    return Math.sqrt(x * x + y * y + z * z);
  }

  static double ellipsoid(double x, double y, double z, double a, double b, double c) {
    double ux = x / a;
    double uy = y / b;
    double uz = z / c;
    double k = length(ux, uy, uz);
    double slope = length(ux / a, uy / b, uz / c);
    return slope < 1e-9 ? -Math.min(a, Math.min(b, c)) : k * (k - 1) / slope;
  }

  /** A rod from one end to the other whose thickness runs from r to s. */
  static double rod(double x, double y, double z, double[] from, double[] to, double r, double s) {
    double dx = to[0] - from[0];
    double dy = to[1] - from[1];
    double dz = to[2] - from[2];
    double px = x - from[0];
    double py = y - from[1];
    double pz = z - from[2];
    double h = (px * dx + py * dy + pz * dz) / (dx * dx + dy * dy + dz * dz + 1e-12);
    h = Math.max(0, Math.min(1, h));
    return length(px - dx * h, py - dy * h, pz - dz * h) - (r + (s - r) * h);
  }

  static double box(double x, double y, double z, double a, double b, double c, double round) {
    double qx = Math.abs(x) - a + round;
    double qy = Math.abs(y) - b + round;
    double qz = Math.abs(z) - c + round;
    double outside = length(Math.max(qx, 0), Math.max(qy, 0), Math.max(qz, 0));
    return outside + Math.min(Math.max(qx, Math.max(qy, qz)), 0) - round;
  }

  /** Upright cylinder of radius r and half height h, edges rounded. */
  static double drum(double x, double y, double z, double r, double h, double round) {
    double qx = Math.sqrt(x * x + z * z) - r + round;
    double qy = Math.abs(y) - h + round;
    double ox = Math.max(qx, 0);
    double oy = Math.max(qy, 0);
    return Math.min(Math.max(qx, qy), 0) + Math.sqrt(ox * ox + oy * oy) - round;
  }

  static double ring(double x, double y, double z, double r, double thick) {
    double q = Math.sqrt(x * x + z * z) - r;
    return Math.sqrt(q * q + y * y) - thick;
  }

  /** Union with a rounded seam about k wide. */
  static double join(double a, double b, double k) {
    double h = Math.max(k - Math.abs(a - b), 0) / k;
    return Math.min(a, b) - h * h * k * .25;
  }

  /** What is in both, with a rounded edge. */
  static double cut(double a, double b, double k) {
    return -join(-a, -b, k);
  }
}
