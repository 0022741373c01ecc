package org.daymount.sample;

/** What a ray sees that meets nothing: the sky with its far islands, or the walls of a room. */
interface Backdrop {
  /** Fills linear light for a direction of length 1. */
  void light(double dx, double dy, double dz, double[] out);

  /** Smooth light from a direction, for reflections and skylight. */
  void glow(double dx, double dy, double dz, double[] out);
}
