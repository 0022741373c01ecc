package org.daymount.sample;

import java.util.ArrayList;
import java.util.List;

/** A body built of parts, in its own coordinates: placed, turned about the upright, and scaled. */
final class Model extends Body {
  private record Part(Field field, Dye dye) {}

  private final List<Part> parts = new ArrayList<>();
  private final double ox;
  private final double oy;
  private final double oz;
  private final double cos;
  private final double sin;
  private final double scale;
  private double caution = .8;

  /** Stands at (x, y, z), turned by {@code yaw} degrees, held by a ball about its middle. */
  Model(double x, double y, double z, double yaw, double scale, double middle, double radius) {
    super(x, y + middle * scale, z, radius * scale);
    ox = x;
    oy = y;
    oz = z;
    cos = StrictMath.cos(StrictMath.toRadians(yaw));
    sin = StrictMath.sin(StrictMath.toRadians(yaw));
    this.scale = scale;
  }

  Model with(Field field, Dye dye) {
    parts.add(new Part(field, dye));
    return this;
  }

  Model careful(double factor) {
    caution = factor;
    return this;
  }

  @Override
  double caution() {
    return caution;
  }

  @Override
  double distance(double px, double py, double pz) {
    double dx = (px - ox) / scale;
    double dz = (pz - oz) / scale;
    double lx = dx * cos - dz * sin;
    double lz = dx * sin + dz * cos;
    double ly = (py - oy) / scale;
    double nearest = 1e9;
    for (int i = 0; i < parts.size(); i++) {
      nearest = Math.min(nearest, parts.get(i).field.at(lx, ly, lz));
    }
    return nearest * scale;
  }

  @Override
  void surface(double px, double py, double pz, Surface out) {
    double dx = (px - ox) / scale;
    double dz = (pz - oz) / scale;
    double lx = dx * cos - dz * sin;
    double lz = dx * sin + dz * cos;
    double ly = (py - oy) / scale;
    double nearest = 1e9;
    Part hit = parts.get(0);
    for (Part part : parts) {
      double d = part.field.at(lx, ly, lz);
      if (d < nearest) {
        nearest = d;
        hit = part;
      }
    }
    hit.dye.at(lx, ly, lz, out);
  }
}
