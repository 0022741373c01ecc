package org.daymount.sample;

import java.util.ArrayList;
import java.util.List;

/** Everything before the lens, and the light on it. */
final class Scene {
  /** A lantern, a candle: a light at a place. */
  record Lamp(double[] at, double[] colour, double power) {}

  final Mood mood;
  final Backdrop backdrop;
  final Ground ground;
  final List<Body> bodies = new ArrayList<>();
  final List<Lamp> lamps = new ArrayList<>();

  Scene(Mood mood, Backdrop backdrop, Ground ground) {
    this.mood = mood;
    this.backdrop = backdrop;
    this.ground = ground;
  }

  Scene add(Body... more) {
    bodies.addAll(List.of(more));
    return this;
  }

  Scene add(List<? extends Body> more) {
    bodies.addAll(more);
    return this;
  }

  /** As {@link #add}, marked as what the picture is of. */
  Scene subject(List<? extends Body> more) {
    more.forEach(b -> b.subject = true);
    return add(more);
  }

  Scene subject(Body... more) {
    return subject(List.of(more));
  }

  Scene lamp(double x, double y, double z, int colour, double power) {
    lamps.add(new Lamp(new double[] {x, y, z}, Dye.rgb(colour), power));
    return this;
  }

  /** The same place without what the picture is of. */
  Scene emptied() {
    Scene rest = new Scene(mood, backdrop, ground);
    bodies.stream().filter(b -> !b.subject).forEach(rest.bodies::add);
    rest.lamps.addAll(lamps);
    return rest;
  }
}
