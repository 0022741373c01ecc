package org.daymount.sample;

/** A solid thing in a scene, with the ball that holds it (so that most rays can skip it). */
abstract class Body {
  final double x;
  final double y;
  final double z;
  final double radius;

  /** What the picture is of: the part that a shaken frame smears. */
  boolean subject;

  Body(double x, double y, double z, double radius) {
    this.x = x;
    this.y = y;
    this.z = z;
    this.radius = radius;
  }

  abstract double distance(double px, double py, double pz);

  abstract void surface(double px, double py, double pz, Surface out);

  /** Steps are shortened by this where the distance is only an estimate. */
  double caution() {
    return .85;
  }
}
