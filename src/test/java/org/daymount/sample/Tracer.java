package org.daymount.sample;

import java.util.stream.IntStream;

/** Follows one ray for each pixel into a scene; a few more where the picture has an edge. */
final class Tracer {
  private static final int STEPS = 80;

  /** Rays are first followed in bundles this many pixels wide, as far as all of them run free. */
  private static final int BUNDLE = 8;

  private final Scene scene;
  private final View view;
  private final int width;
  private final int height;
  private final double[] right;
  private final double[] up;
  private final double[] ahead;
  private final double reach;
  private final double[] sun;
  private final double[] sunDye;
  private final double[] air = new double[3];
  private final double[] above = new double[3];
  private final double[] free;
  private final int across;

  Tracer(Scene scene, View view, int width, int height) {
    this.scene = scene;
    this.view = view;
    this.width = width;
    this.height = height;
    ahead = unit(minus(view.to(), view.from()));
    double[] side = unit(new double[] {ahead[2], 0, -ahead[0]});
    double[] over = {
      ahead[1] * side[2] - ahead[2] * side[1],
      ahead[2] * side[0] - ahead[0] * side[2],
      ahead[0] * side[1] - ahead[1] * side[0]
    };
    double c = StrictMath.cos(StrictMath.toRadians(view.roll()));
    double s = StrictMath.sin(StrictMath.toRadians(view.roll()));
    right = new double[3];
    up = new double[3];
    for (int i = 0; i < 3; i++) {
      right[i] = side[i] * c + over[i] * s;
      up[i] = over[i] * c - side[i] * s;
    }
    reach =
        StrictMath.tan(StrictMath.toRadians(view.angle() / 2)) / (Math.max(width, height) / 2.0);
    sun = scene.mood.sunDirection();
    sunDye = Dye.rgb(scene.mood.sun());
    across = width / BUNDLE + 1;
    free = new double[across * (height / BUNDLE + 1)];
    scene.backdrop.glow(0, .06, .998, air);
    double[] probe = new double[3];
    for (int i = 0; i < 5; i++) {
      double[] way = {i == 1 ? .7 : i == 2 ? -.7 : 0, .7, i == 3 ? .7 : i == 4 ? -.7 : 0};
      scene.backdrop.glow(way[0], way[1], way[2], probe);
      for (int k = 0; k < 3; k++) {
        above[k] += probe[k] / 5;
      }
    }
  }

  private static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static double[] unit(double[] v) {
    double l = Field.length(v[0], v[1], v[2]);
    return new double[] {v[0] / l, v[1] / l, v[2] / l};
  }

  /** Scratch for one thread's rays. */
  private final class Ray {
    final Surface skin = new Surface();
    final double[] normal = new double[3];
    final double[] mirror = new double[3];
    final double[] rgb = new double[3];
    double depth;
    boolean subject;
    boolean solid;
    private Body last;
    private double lastDepth;
    private double lastLit;
    private double lastOpen;
    private boolean fresh = true;

    /** How far the bundle of rays about this pixel meets nothing; endless if it never does. */
    double freeRun(double px, double py) {
      double spread = reach * (BUNDLE / 2.0 + .6) * 1.42;
      aim(px, py);
      double[] o = view.from();
      Body met = march(o[0], o[1], o[2], wx, wy, wz, 4000, spread, 0);
      return met == null ? 1e9 : depth * (1 - spread);
    }

    private double wx;
    private double wy;
    private double wz;

    private void aim(double px, double py) {
      double u = (px - width / 2.0) * reach;
      double v = (height / 2.0 - py) * reach;
      double dx = ahead[0] + right[0] * u + up[0] * v;
      double dy = ahead[1] + right[1] * u + up[1] * v;
      double dz = ahead[2] + right[2] * u + up[2] * v;
      double l = Field.length(dx, dy, dz);
      wx = dx / l;
      wy = dy / l;
      wz = dz / l;
    }

    void look(double px, double py) {
      aim(px, py);
      double dx = wx;
      double dy = wy;
      double dz = wz;
      double[] o = view.from();
      double floor = scene.ground != null && dy < -1e-5 ? -o[1] / dy : 1e9;
      double run = free[(int) py / BUNDLE * across + (int) px / BUNDLE];
      Body hit =
          run > 1e8 ? null : march(o[0], o[1], o[2], dx, dy, dz, Math.min(floor, 4000), 0, run);
      subject = false;
      solid = hit != null;
      if (hit != null) {
        subject = hit.subject;
        double x = o[0] + dx * depth;
        double y = o[1] + dy * depth;
        double z = o[2] + dz * depth;
        skin.glow = 0;
        hit.surface(x, y, z, skin);
        slope(hit, x, y, z, depth * .0004 + .0003);
        shade(hit, x, y, z, dx, dy, dz, 0);
        haze(depth);
      } else if (floor < 4000) {
        depth = floor;
        double x = o[0] + dx * depth;
        double z = o[2] + dz * depth;
        double gleam = scene.ground.at(x, z, depth, skin, normal);
        shade(null, x, 0, z, dx, dy, dz, gleam);
        haze(depth);
      } else {
        depth = 5000;
        scene.backdrop.light(dx, dy, dz, rgb);
      }
    }

    private Body march(
        double ox,
        double oy,
        double oz,
        double dx,
        double dy,
        double dz,
        double limit,
        double spread,
        double run) {
      Body hit = null;
      double best = limit;
      for (Body b : scene.bodies) {
        double bx = b.x - ox;
        double by = b.y - oy;
        double bz = b.z - oz;
        double along = bx * dx + by * dy + bz * dz;
        double off = bx * bx + by * by + bz * bz - along * along;
        double wide = b.radius + Math.max(0, along) * spread;
        double half = wide * wide - off;
        if (half <= 0) {
          continue;
        }
        double h = Math.sqrt(half);
        double t = Math.max(Math.max(.02, along - h), run);
        double end = Math.min(best, along + h);
        for (int i = 0; i < STEPS && t < end; i++) {
          double d = b.distance(ox + dx * t, oy + dy * t, oz + dz * t) * b.caution();
          if (d < t * (.00045 + spread) + .0002) {
            best = t;
            hit = b;
            break;
          }
          t += d + t * .0002;
        }
        if (spread > 0 && hit != b && t < end) {
          best = t;
          hit = b;
        }
      }
      depth = best;
      return hit;
    }

    private void slope(Body b, double x, double y, double z, double e) {
      double a = b.distance(x + e, y - e, z - e);
      double c = b.distance(x - e, y - e, z + e);
      double d = b.distance(x - e, y + e, z - e);
      double f = b.distance(x + e, y + e, z + e);
      double nx = a - c - d + f;
      double ny = -a - c + d + f;
      double nz = -a + c - d + f;
      double l = Field.length(nx, ny, nz) + 1e-12;
      normal[0] = nx / l;
      normal[1] = ny / l;
      normal[2] = nz / l;
    }

    /** Nearest distance to any body whose ball is close; at most {@code far}. */
    private double clearance(double x, double y, double z, double far) {
      double d = far;
      for (Body b : scene.bodies) {
        double ball = Field.length(x - b.x, y - b.y, z - b.z) - b.radius;
        if (ball < d) {
          d = Math.min(d, Math.max(ball, b.distance(x, y, z)));
        }
      }
      return d;
    }

    private double open(double x, double y, double z) {
      double shut = 0;
      double weight = 1;
      for (int i = 1; i <= 2; i++) {
        double h = .03 * i * i * (1 + depth * .05);
        double d = clearance(x + normal[0] * h, y + normal[1] * h, z + normal[2] * h, h);
        shut += weight * (h - Math.max(d, -h)) / h;
        weight *= .75;
      }
      double y3 = y;
      double floor = scene.ground == null ? 1 : .55 + .45 * Math.min(1, y3 / .25);
      return Math.max(0, 1 - .5 * shut) * (normal[1] < .6 ? floor : 1);
    }

    private double lit(double x, double y, double z) {
      double light = 1;
      x += normal[0] * .012;
      y += normal[1] * .012;
      z += normal[2] * .012;
      for (Body b : scene.bodies) {
        double bx = b.x - x;
        double by = b.y - y;
        double bz = b.z - z;
        double along = bx * sun[0] + by * sun[1] + bz * sun[2];
        double off = bx * bx + by * by + bz * bz - along * along;
        double wide = b.radius + Math.max(0, along) * .11;
        double half = wide * wide - off;
        if (half <= 0) {
          continue;
        }
        double h = Math.sqrt(half);
        double t = Math.max(.03 + depth * .002, along - h);
        double end = Math.min(14, along + h);
        for (int i = 0; i < 18 && t < end; i++) {
          double d = b.distance(x + sun[0] * t, y + sun[1] * t, z + sun[2] * t);
          light = Math.min(light, 9 * d / t);
          if (light < .01) {
            return 0;
          }
          t += Math.max(.025, d);
        }
      }
      return Sky.smooth(light);
    }

    private void shade(
        Body body, double x, double y, double z, double dx, double dy, double dz, double gleam) {
      Mood m = scene.mood;
      double facing = normal[0] * sun[0] + normal[1] * sun[1] + normal[2] * sun[2];
      double wrapped = (facing + skin.soft * .45) / (1 + skin.soft * .45);
      boolean again =
          !fresh && last == body && Math.abs(lastDepth - depth) < .003 * depth && lastLit >= 0;
      double shadow = again ? lastLit : m.sunPower() > .1 && wrapped > 0 ? lit(x, y, z) : 0;
      double unshut = again ? lastOpen : open(x, y, z);
      fresh = again;
      last = body;
      lastDepth = depth;
      lastLit = wrapped > 0 ? shadow : -1;
      lastOpen = unshut;
      double key = Math.max(0, wrapped) * shadow * m.sunPower();
      double ambient = unshut * m.ambient();
      double sky = .5 + .5 * normal[1];
      double vx = dx - 2 * (dx * normal[0] + dy * normal[1] + dz * normal[2]) * normal[0];
      double vy = dy - 2 * (dx * normal[0] + dy * normal[1] + dz * normal[2]) * normal[1];
      double vz = dz - 2 * (dx * normal[0] + dy * normal[1] + dz * normal[2]) * normal[2];
      double bright = Math.max(0, vx * sun[0] + vy * sun[1] + vz * sun[2]);
      double tight = gleam > .5 ? 240 : 34;
      double spark = bright < .8 ? 0 : StrictMath.pow(bright, tight) * shadow * m.sunPower();
      double blush = skin.soft * Math.max(0, .5 - Math.abs(facing)) * .35 * shadow * m.sunPower();
      double face = Math.max(0, -(dx * normal[0] + dy * normal[1] + dz * normal[2]));
      double rim = (1 - face) * (1 - face);
      rim *= rim;
      double[] base = {skin.red, skin.green, skin.blue};
      for (int i = 0; i < 3; i++) {
        double round = above[i] * sky + (.45 * above[i] + .12 * sunDye[i]) * (1 - sky) * .7;
        double light = key * sunDye[i] + ambient * round * 1.25;
        if (i == 0) {
          light += blush;
        }
        rgb[i] = base[i] * (light + skin.glow);
        rgb[i] += sunDye[i] * spark * (skin.gloss * 1.2 + gleam * 1.6);
        rgb[i] += above[i] * rim * (.06 + skin.gloss * .4) * m.ambient() * ambient;
      }
      for (Scene.Lamp lamp : scene.lamps) {
        lamp(lamp, x, y, z, base);
      }
      if (gleam > 0) {
        scene.backdrop.glow(vx, Math.abs(vy), vz, mirror);
        double share = gleam * (.06 + .94 * (1 - face) * (1 - face) * (1 - face));
        for (int i = 0; i < 3; i++) {
          rgb[i] += (mirror[i] * .95 - rgb[i]) * Math.min(1, share);
        }
      }
    }

    private void lamp(Scene.Lamp lamp, double x, double y, double z, double[] base) {
      double lx = lamp.at()[0] - x;
      double ly = lamp.at()[1] - y;
      double lz = lamp.at()[2] - z;
      double far = Field.length(lx, ly, lz);
      double turn = (lx * normal[0] + ly * normal[1] + lz * normal[2]) / far;
      double wrap = .15 + .3 * skin.soft;
      double power = lamp.power() * Math.max(0, (turn + wrap) / (1 + wrap)) / (.04 + far * far);
      for (int i = 0; i < 3; i++) {
        rgb[i] += base[i] * lamp.colour()[i] * power;
      }
    }

    private void haze(double far) {
      double thick = scene.mood.haze() * far;
      if (thick > .001) {
        double clear = StrictMath.exp(-thick);
        for (int i = 0; i < 3; i++) {
          rgb[i] = rgb[i] * clear + air[i] * (1 - clear);
        }
      }
    }
  }

  /** Traces the whole picture. */
  Exposure trace() {
    Exposure out = new Exposure(width, height);
    IntStream.range(0, free.length / across)
        .parallel()
        .forEach(
            row -> {
              Ray ray = new Ray();
              for (int column = 0; column < across; column++) {
                free[row * across + column] =
                    ray.freeRun((column + .5) * BUNDLE, (row + .5) * BUNDLE);
              }
            });
    IntStream.range(0, height)
        .parallel()
        .forEach(
            row -> {
              Ray ray = new Ray();
              for (int column = 0; column < width; column++) {
                ray.look(column + .5, row + .5);
                out.put(row * width + column, ray.rgb, ray.depth, ray.subject, ray.solid);
              }
            });
    boolean[] edges = out.edges();
    IntStream.range(0, height)
        .parallel()
        .forEach(
            row -> {
              Ray ray = new Ray();
              double[] sum = new double[3];
              for (int column = 0; column < width; column++) {
                int at = row * width + column;
                if (edges[at]) {
                  out.get(at, sum);
                  for (int k = 0; k < 3; k++) {
                    double sx = k == 0 ? .17 : k == 1 ? .83 : .5;
                    double sy = k == 0 ? .25 : k == 1 ? .35 : .85;
                    ray.look(column + sx, row + sy);
                    for (int i = 0; i < 3; i++) {
                      // a highlight counts no more than white, or edges would sparkle
                      sum[i] += Math.min(ray.rgb[i], 3);
                    }
                  }
                  for (int i = 0; i < 3; i++) {
                    sum[i] /= 4;
                  }
                  out.set(at, sum);
                }
              }
            });
    return out;
  }
}
