package org.daymount.sample;

/**
 * Where the phone is held: position, the point in the middle of the picture, and the angle seen
 * along the picture's longer side.
 *
 * @param roll turn of the phone in degrees
 * @param focus distance in metres that is sharp
 * @param aperture how quickly the rest goes soft; 0 keeps all of it sharp
 */
record View(double[] from, double[] to, double angle, double roll, double focus, double aperture) {
  static View from(double x, double y, double z) {
    return new View(new double[] {x, y, z}, new double[] {x, y, z + 1}, 62, 0, 4, 0);
  }

  View at(double x, double y, double z) {
    return new View(from, new double[] {x, y, z}, angle, roll, focus, aperture);
  }

  View angle(double degrees) {
    return new View(from, to, degrees, roll, focus, aperture);
  }

  View roll(double degrees) {
    return new View(from, to, angle, degrees, focus, aperture);
  }

  View focus(double metres, double aperture) {
    return new View(from, to, angle, roll, metres, aperture);
  }

  /** A hand that moved a little between two frames, in metres. */
  View nudged(double dx, double dy) {
    return new View(
        new double[] {from[0] + dx, from[1] + dy, from[2]},
        new double[] {to[0] + dx * .6, to[1] + dy * .5, to[2]},
        angle,
        roll + dx * 20,
        focus,
        aperture);
  }
}
