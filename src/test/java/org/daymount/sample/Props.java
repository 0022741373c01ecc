package org.daymount.sample;

import java.util.ArrayList;
import java.util.List;

/** The island's things: boats, houses, what stands on tables and lies on beaches. */
final class Props {
  /** Where the bells stand round a spire, four to a level. */
  private static final double[] SIN = new double[80];

  private static final double[] COS = new double[80];

  static {
    for (int i = 0; i < 80; i++) {
      SIN[i] = StrictMath.sin(i % 4 * 1.57 + i / 4 * .9);
      COS[i] = StrictMath.cos(i % 4 * 1.57 + i / 4 * .9);
    }
  }

  private Props() {}

  private static double[] p(double x, double y, double z) {
    return new double[] {x, y, z};
  }

  /** A rowing boat four metres long on two trestles; blue as far as {@code painted} (0 to 1). */
  static Body boat(double x, double y, double z, double yaw, double painted, boolean trestles) {
    double[] blue = Dye.rgb(0x1f5fae);
    double[] grey = Dye.rgb(0xb4b0a4);
    double[] wood = Dye.rgb(0xa06c3c);
    double[] cream = Dye.rgb(0xf0e6cc);
    Field hull =
        (px, py, pz) -> {
          double t = px / 2.05;
          double beam = .72 * Math.sqrt(Math.max(.0004, 1 - Math.min(1, t * t)));
          double sheer = .62 + .16 * t * t;
          double keel = .12 + .22 * t * t * t * t;
          double tall = sheer - keel;
          double w = beam * Math.sqrt(Math.max(.02, (py - keel) / tall));
          double out = (Math.abs(pz) - w) * .62;
          double shell = Math.max(Math.abs(out + .02) - .022, Math.max(py - sheer, keel - py));
          double rail =
              Math.max(Math.abs(Math.abs(pz) - beam + .01) - .035, Math.abs(py - sheer) - .035);
          double bench = Field.box(px - .2, py - sheer + .16, pz, .13, .02, beam * .74, .01);
          double bench2 = Field.box(px + .85, py - sheer + .16, pz, .12, .02, beam * .74, .01);
          double end = Math.abs(px) - 2.04;
          double d = Math.min(shell, Math.min(rail, Math.min(bench, bench2)));
          return Math.max(d, end);
        };
    Dye dye =
        (px, py, pz, out) -> {
          double t = px / 2.05;
          double sheer = .62 + .16 * t * t;
          double brush = .10 * (Noise.cloud(py * 14, pz * 3, 3) - .5);
          boolean done = (px + 2.05) / 4.1 + brush < painted;
          out.dye(done ? blue : grey);
          if (!done) {
            out.mix(wood, Noise.cloud(px * 2.5, py * 17, 4) * 2 - .6);
          }
          out.times(.85 + .2 * Noise.at(px * 3, py * 60));
          double plank = py * 9 - t * t * 1.2;
          out.times(.72 + .28 * Sky.smooth((plank - Math.floor(plank)) * 6));
          if (py > sheer - .04) {
            out.dye(cream);
          }
          double keel = .12 + .22 * t * t * t * t;
          double beam = .72 * Math.sqrt(Math.max(0, 1 - t * t));
          double w = beam * Math.sqrt(Math.max(.02, (py - keel) / (sheer - keel)));
          if (Math.abs(pz) < w - .034 && py > keel + .06) {
            out.dye(wood);
            out.times(.6 + .5 * Noise.cloud(px * 3, pz * 30, 3));
          }
          out.gloss = done ? .45 : .06;
        };
    Model m = new Model(x, y, z, yaw, 1, .35, 2.2).careful(.6).with(hull, dye);
    if (trestles) {
      Dye timber = Dye.wood(0xa98258, 0x5f432a);
      for (int side = -1; side <= 1; side += 2) {
        double tx = side * 1.05;
        m.with(
            (px, py, pz) -> {
              double az = Math.abs(pz);
              double ax = Math.abs(px - tx);
              double d = Field.box(px - tx, py - .13, pz, .05, .05, .55, .01);
              return Math.min(
                  d, Field.rod(ax, py, az, p(.02, .12, .42), p(.17, -.48, .5), .035, .035));
            },
            timber);
      }
    }
    return m;
  }

  /** A small white car ferry with an orange band, some thirty metres. */
  static Body ferry(double x, double z, double yaw) {
    double[] white = Dye.rgb(0xf2f0ea);
    double[] navy = Dye.rgb(0x1d2f4f);
    double[] rust = Dye.rgb(0x9a3b2a);
    double[] glass = Dye.rgb(0x2a3b48);
    Field hull =
        (px, py, pz) -> {
          double t = px / 15;
          double beam = 3.4 * (1 - .75 * Math.max(0, t - .45) * Math.max(0, t - .45) * 3.2);
          return Field.box(px, py - 1.2, pz, 15, 1.5 + .5 * Math.max(0, t), Math.max(.3, beam), .3)
              * .8;
        };
    Dye paint =
        (px, py, pz, out) -> {
          out.dye(py > 1.9 ? white : py > .35 ? navy : rust);
          out.times(.86 + .18 * Noise.cloud(px * .8, py * 5, 3));
          out.mix(rust, Noise.cloud(px * 1.1, py * .5 + 7, 4) * 3 - 2.1);
          out.gloss = .12;
        };
    Field house =
        (px, py, pz) -> {
          double a = Field.box(px + 4, py - 4.1, pz, 7, 1.5, 2.7, .15);
          double b = Field.box(px + 1.5, py - 6.2, pz, 2.6, 1.0, 2.5, .15);
          return Math.min(a, b);
        };
    Dye windows =
        (px, py, pz, out) -> {
          out.dye(white);
          out.times(.9 + .1 * Noise.cloud(px, py * 3, 3));
          double u = px * 1.1 - Math.floor(px * 1.1);
          boolean row = py > 3.9 && py < 4.9 && u > .22 && u < .85;
          boolean bridge = py > 6.1 && py < 6.85;
          if (row || bridge) {
            out.dye(glass);
            out.gloss = .6;
          }
        };
    Field funnel = (px, py, pz) -> Field.drum(px + 6.5, py - 7, pz, 1.1, 1.9, .1);
    Field mast = (px, py, pz) -> Field.rod(px, py, pz, p(-1.5, 7, 0), p(-1.5, 11, 0), .12, .06);
    return new Model(x, -.2, z, yaw, 1, 3.5, 16.5)
        .with(hull, paint)
        .with(house, windows)
        .with(funnel, Dye.bands(0xe07a2a, 0xf2efe6, 2.2))
        .with(mast, Dye.plain(0xf0f0ec));
  }

  /** Whitewashed cottage with a slate roof and a blue door. */
  static Body cottage(double x, double z, double yaw) {
    double[] lime = Dye.rgb(0xf0ebe0);
    double[] door = Dye.rgb(0x2f6d93);
    double[] glass = Dye.rgb(0x33424c);
    Field walls = (px, py, pz) -> Field.box(px, py - 1.3, pz, 4.2, 1.35, 2.4, .06);
    Dye wall =
        (px, py, pz, out) -> {
          out.dye(lime);
          out.times(.84 + .24 * Noise.cloud(px * 4, py * 4, pz * 4, 4));
          out.times(1 - .3 * Math.max(0, .5 - py));
          double ax = Math.abs(px);
          if (ax < .5 && py < 2.1) {
            out.dye(door);
            out.times(.75 + .35 * Sky.smooth(Math.abs(px * 5 - Math.floor(px * 5) - .5) * 6));
          } else if (Math.abs(ax - 2.2) < .55 && Math.abs(py - 1.45) < .55) {
            boolean bar = Math.abs(ax - 2.2) < .03 || Math.abs(py - 1.45) < .03;
            boolean edge = Math.abs(ax - 2.2) > .47 || Math.abs(py - 1.45) > .47;
            if (bar || edge) {
              out.dye(door);
            } else {
              out.dye(glass);
              out.gloss = .8;
            }
          }
        };
    Field roof =
        (px, py, pz) ->
            Math.max(
                (Math.abs(pz) * .75 + (py - 4.45)) * .75, Math.max(Math.abs(px) - 4.45, 2.5 - py));
    Dye slate =
        (px, py, pz, out) -> {
          out.dye(Dye.rgb(0x55606a));
          double row = Math.floor(py * 5);
          double u = px * 3 + (row % 2) * .5;
          out.times(.7 + .5 * Noise.hash((int) Math.floor(u), (int) row, 4));
          out.times(.8 + .2 * Sky.smooth((py * 5 - row) * 5));
          out.mix(Dye.rgb(0xb8a23e), Noise.cloud(px * 1.5, py * 3, 3) * 3 - 2.1);
        };
    Field chimney = (px, py, pz) -> Field.box(Math.abs(px) - 3.7, py - 4.5, pz, .42, .8, .42, .04);
    return new Model(x, 0, z, yaw, 1, 2.3, 5.6)
        .careful(.9)
        .with(walls, wall)
        .with(roof, slate)
        .with(chimney, wall);
  }

  static Body lighthouse(double x, double z, double tall) {
    Field tower =
        (px, py, pz) -> {
          double r = 2.1 - .075 * py;
          return Math.max((Math.sqrt(px * px + pz * pz) - r) * .95, Math.max(py - 15, -py));
        };
    Field gallery = (px, py, pz) -> Field.drum(px, py - 15.1, pz, 1.6, .15, .05);
    Field lamp = (px, py, pz) -> Field.drum(px, py - 16.2, pz, .8, 1.0, .1);
    Field cap = (px, py, pz) -> Field.ellipsoid(px, py - 17.3, pz, 1.0, .8, 1.0);
    double[] glass = Dye.rgb(0xfff0c0);
    return new Model(x, 0, z, 0, tall / 18, 9, 10)
        .with(tower, Dye.bands(0xc2382e, 0xf3efe6, 6.2))
        .with(gallery, Dye.plain(0x34383c))
        .with(
            lamp,
            (px, py, pz, out) -> {
              out.dye(glass);
              out.glow = .6;
              out.gloss = .6;
            })
        .with(cap, Dye.plain(0xa52f28, .3));
  }

  /** A spire of bells: foxglove or lupin. */
  static Body spire(double x, double z, double tall, int colour, int seed) {
    double bend = (Noise.hash(seed, 1, 1) - .5) * .3;
    Field stem =
        (px, py, pz) -> Field.rod(px - bend * py * py, py, pz, p(0, 0, 0), p(0, 1, 0), .016, .008);
    Field bells =
        (px, py, pz) -> {
          double qx = px - bend * py * py;
          double far = Field.length(qx, Math.max(0, Math.abs(py - .7) - .3), pz);
          if (far > .2) {
            return far - .14;
          }
          double level = Math.floor(py * 17);
          double best = 9;
          for (int k = -1; k <= 1; k++) {
            double l = level + k;
            double at = (l + .5) / 17;
            if (at < .38 || at > .99) {
              continue;
            }
            double size = .052 * Math.min(1, (1.06 - at) * 2);
            int turn = (int) l * 4;
            for (int i = 0; i < 4; i++) {
              double out = size * 1.15;
              best =
                  Math.min(
                      best,
                      Field.ellipsoid(
                          qx - SIN[turn + i] * out,
                          py - at + .01,
                          pz - COS[turn + i] * out,
                          size * .72,
                          size,
                          size * .72));
            }
          }
          return Math.min(best, far + .1);
        };
    double[] main = Dye.rgb(colour);
    Dye petal =
        (px, py, pz, out) -> {
          out.dye(main);
          out.mix(Dye.rgb(0xf6e6ee), Noise.at(px * 50, py * 50, pz * 50) * .6 - .1);
          out.mix(Dye.rgb(0x7f9a4a), (py - .86) * 5);
          out.soft = .6;
        };
    Field leaves =
        (px, py, pz) -> {
          double ax = Math.abs(px);
          return Math.min(
              Field.ellipsoid(ax - .11, py - .10 - ax * .4, pz, .13, .018, .045),
              Field.ellipsoid(
                  px, py - .18 - Math.abs(pz) * .4, Math.abs(pz) - .10, .04, .018, .12));
        };
    return new Model(x, 0, z, 360 * Noise.hash(seed, 2, 2), tall, .5, .62)
        .careful(.7)
        .with(stem, Dye.plain(0x5f7f3a))
        .with(leaves, Dye.mottled(0x5c8440, 0x35602c, .05))
        .with(bells, petal);
  }

  /** An open flower facing its z axis, tipped up: daisy (many narrow petals) or poppy (few). */
  static Body bloom(
      double x, double y, double z, double size, int petals, int colour, int eye, double yaw) {
    double[] main = Dye.rgb(colour);
    double[] centre = Dye.rgb(eye);
    Field crown =
        (px, py, pz) -> {
          double r = Math.sqrt(px * px + py * py);
          double a = Noise.bearing(px, py) * petals / (2 * StrictMath.PI);
          double in = Math.abs(a - Math.floor(a) - .5);
          double reach = .5 * (1 - .9 * Math.max(0, in - .25)) - (petals < 8 ? .05 : .12) * in;
          double cup =
              (petals < 8 ? .9 : .25) * r * r - .012 * Math.sqrt(Math.max(0, .25 - in * in));
          double wave = .012 * StrictMath.sin(r * 26 + a * 3);
          double d = Math.max(Math.abs(pz - cup - wave) - .014, r - reach);
          double slit = petals < 8 ? 9 : (.5 - in) * r * 1.1 - .006;
          return Math.max(d, -slit + .004 - (r < .1 ? 1 : 0)) * .6;
        };
    Dye petal =
        (px, py, pz, out) -> {
          double r = Math.sqrt(px * px + py * py);
          double a = Noise.bearing(px, py);
          out.dye(main);
          out.times(.72 + .4 * Noise.at(a * 36, r * 3));
          if (petals < 8) {
            out.mix(centre, .9 - r * 5.5);
          }
          out.soft = .8;
        };
    Field heart =
        (px, py, pz) ->
            Field.ellipsoid(px, py, pz - .03, .11, .11, .06)
                + .012 * Noise.at(px * 70, py * 70, pz * 50);
    Field stem = (px, py, pz) -> Field.rod(px, py, pz, p(0, 0, -.02), p(.04, -1.6, -.5), .022, .03);
    return new Model(x, y, z, yaw, size, -.5, 1.5)
        .careful(.75)
        .with(crown, petal)
        .with(heart, Dye.mottled(eye, 0x6a4a10, .03))
        .with(stem, Dye.plain(0x5a7a38));
  }

  static List<Body> bed(double x0, double x1, double z0, double z1, int count, int seed) {
    int[] colours = {0xb565a8, 0x6d62b8, 0xe0a0bc, 0xf0e8ea, 0x8c4a9c, 0xd8607a};
    List<Body> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double x = x0 + (x1 - x0) * Noise.hash(i, seed, 11);
      double z = z0 + (z1 - z0) * Noise.hash(i, seed, 12);
      double tall = .75 + .7 * Noise.hash(i, seed, 13);
      all.add(
          spire(x, z, tall, colours[(int) (Noise.hash(i, seed, 14) * colours.length)], i + seed));
    }
    return all;
  }

  /** A round of leaves about a point, for hedges and bushes. */
  static Body bush(double x, double y, double z, double size, int light, int dark) {
    Field leaves =
        (px, py, pz) -> {
          double d = Field.ellipsoid(px, py - .42, pz, .52, .48, .5);
          if (d > .3) {
            return d - .2;
          }
          return d
              - .24 * Noise.cloud(px * 3.1 + x, py * 3.1, pz * 3.1 + z, 2)
              - .06 * Noise.at(px * 17, py * 17, pz * 17)
              + .08;
        };
    double[] a = Dye.rgb(light);
    double[] b = Dye.rgb(dark);
    Dye leaf =
        (px, py, pz, out) -> {
          out.dye(b);
          out.mix(a, Noise.at(px * 21, py * 21, pz * 21) * 1.5 - .25);
          out.times(.6 + .6 * Noise.at(px * 46, py * 46, pz * 46));
          out.soft = .3;
        };
    return new Model(x, y, z, 0, size, .42, .78).careful(.6).with(leaves, leaf);
  }

  static Body table(double x, double z, double wide, double deep) {
    Field top = (px, py, pz) -> Field.box(px, py - .72, pz, wide / 2, .025, deep / 2, .012);
    return new Model(x, 0, z, 0, 1, .72, Math.sqrt(wide * wide + deep * deep) / 2 + .05)
        .with(top, Dye.wood(0xc49a68, 0x7d5632));
  }

  static Body cake(double x, double y, double z, int candles, boolean alight) {
    Field icing =
        (px, py, pz) -> {
          double d = Field.drum(px, py - .065, pz, .15, .065, .018);
          double drip = .012 * StrictMath.sin(Noise.bearing(px, pz) * 14) * (py > .08 ? 0 : 1);
          return d - .004 * Noise.cloud(px * 40, py * 40, pz * 40, 2) + drip * .2;
        };
    Dye cream =
        (px, py, pz, out) -> {
          out.dye(Dye.rgb(0xf8f0e4));
          double a = Noise.bearing(px, pz);
          double drip = .075 + .028 * StrictMath.sin(a * 9 + 2 * Noise.at(a * 2, 3));
          if (py < drip) {
            out.dye(Dye.rgb(0xd99ab0));
          }
          out.times(.9 + .15 * Noise.at(px * 90, py * 90, pz * 90));
          out.soft = .6;
        };
    Model m = new Model(x, y, z, 20, 1, .1, .30).with(icing, cream);
    Field plate = (px, py, pz) -> Field.drum(px, py + .002, pz, .21, .008, .006);
    m.with(plate, Dye.plain(0xe4ecf0, .4));
    for (int i = 0; i < 8; i++) {
      double a = i * .785 + .4;
      double bx = .125 * StrictMath.sin(a);
      double bz = .125 * StrictMath.cos(a);
      m.with(
          (px, py, pz) -> Field.ellipsoid(px - bx, py - .142, pz - bz, .020, .022, .020),
          Dye.plain(0xc02234, .5).soft(.3));
    }
    for (int i = 0; i < candles; i++) {
      double a = i * 6.283 / candles;
      double cx = .075 * StrictMath.sin(a);
      double cz = .075 * StrictMath.cos(a);
      m.with(
          (px, py, pz) -> Field.rod(px, py, pz, p(cx, .13, cz), p(cx, .205, cz), .0055, .005),
          Dye.bands(i % 2 == 0 ? 0x4fa3c8 : 0xe8b83a, 0xfaf6ee, .02).soft(.5));
      if (alight) {
        m.with(
            (px, py, pz) -> Field.ellipsoid(px - cx, py - .224, pz - cz, .0065, .016, .0065),
            Dye.glowing(0xffc860, 9));
      }
    }
    return m;
  }

  static Body mug(double x, double y, double z, int colour, double yaw) {
    Field cup =
        (px, py, pz) -> {
          double d = Field.drum(px, py - .048, pz, .041, .048, .008);
          d = Field.cut(d, -Field.drum(px, py - .06, pz, .036, .05, .006), .004);
          double hx = px - .045;
          double q = Math.sqrt(hx * hx + (py - .048) * (py - .048)) - .025;
          double handle = Math.sqrt(q * q + pz * pz) - .006;
          return Math.min(d, Math.max(handle, .04 - px));
        };
    Field tea = (px, py, pz) -> Field.drum(px, py - .07, pz, .037, .004, .001);
    return new Model(x, y, z, yaw, 1, .05, .10)
        .with(cup, Dye.plain(colour, .5))
        .with(tea, Dye.plain(0x6a3a1a, .7));
  }

  static Body bowl(double x, double y, double z, int fruit) {
    Field shell =
        (px, py, pz) -> {
          double d = Math.abs(Field.length(px, py - .13, pz) - .13) - .005;
          return Math.max(d, py - .075);
        };
    Model m = new Model(x, y, z, 0, 1, .06, .19).with(shell, Dye.bands(0xe8eef0, 0x4a7fa8, .05));
    for (int i = 0; i < 16; i++) {
      double a = i * 2.4;
      double r = .018 * Math.sqrt(i) * 1.3;
      double fx = r * StrictMath.sin(a);
      double fz = r * StrictMath.cos(a);
      double fy = .088 - r * .35 + .012 * Noise.hash(i, 3, 3);
      m.with(
          (px, py, pz) ->
              Field.ellipsoid(px - fx, py - fy, pz - fz, .023, .026, .023)
                  + .0015 * Noise.at(px * 260, py * 260, pz * 260),
          Dye.mottled(fruit, 0x8e1420, .05).soft(.4));
    }
    return m;
  }

  static Body loaf(double x, double y, double z, double yaw) {
    Field bread =
        (px, py, pz) ->
            Field.ellipsoid(px, py - .05, pz, .16, .07, .09)
                + .006 * Noise.cloud(px * 26, py * 26, pz * 26, 3)
                + (Math.abs(px * 14 - Math.floor(px * 14) - .5) < .1 && py > .07 ? .006 : 0);
    return new Model(x, y, z, yaw, 1, .05, .2).with(bread, Dye.mottled(0xd9a05a, 0x8a4e1e, .05));
  }

  static Body jar(double x, double y, double z, int filling) {
    Field glass = (px, py, pz) -> Field.drum(px, py - .06, pz, .042, .06, .012);
    Field lid = (px, py, pz) -> Field.drum(px, py - .126, pz, .040, .011, .004);
    return new Model(x, y, z, 0, 1, .07, .11)
        .with(glass, Dye.mottled(filling, 0x3a0a10, .06))
        .with(lid, Dye.bands(0xf0ece2, 0xc0443a, .012));
  }

  static Body pebble(double x, double z, double size, int light, int dark, int seed) {
    double flat = .45 + .3 * Noise.hash(seed, 1, 5);
    double broad = .7 + .4 * Noise.hash(seed, 2, 5);
    Field stone =
        (px, py, pz) ->
            Field.ellipsoid(px, py - flat * .6, pz, 1, flat, broad)
                + .06 * Noise.cloud(px * 2 + seed, py * 2, pz * 2, 3);
    double[] a = Dye.rgb(light);
    double[] b = Dye.rgb(dark);
    Dye veined =
        (px, py, pz, out) -> {
          out.dye(a);
          out.mix(b, Noise.cloud(px * 2.2 + seed, py * 4, pz * 2.2, 4) * 2 - .6);
          out.mix(Dye.rgb(0xf2eee6), 1 - Math.abs(px * .7 + py - pz * .2 - .1) * 22);
          out.times(.85 + .3 * Noise.at(px * 60, py * 60, pz * 60));
          out.gloss = .2;
        };
    return new Model(x, 0, z, 360 * Noise.hash(seed, 3, 5), size, .35, 1.25).with(stone, veined);
  }

  static Body starfish(double x, double z, double size, double yaw) {
    Field star =
        (px, py, pz) -> {
          double a = Noise.bearing(px, pz) * 5 / (2 * StrictMath.PI);
          double in = (a - Math.floor(a) - .5) * 2 * StrictMath.PI / 5;
          double r = Math.sqrt(px * px + pz * pz);
          double along = r * StrictMath.cos(in);
          double side = Math.abs(r * StrictMath.sin(in));
          double arm = .30 * (1 - Math.min(1, along)) + .06;
          double d = Math.max(side - arm, along - 1) * .7;
          double tall = .2 * (1.1 - Math.min(1, r)) - py;
          return Math.max(d, -tall * .7) - .03 * Noise.at(px * 18, py * 18, pz * 18);
        };
    return new Model(x, 0, z, yaw, size, .05, 1.15)
        .careful(.6)
        .with(star, Dye.mottled(0xd9743a, 0x9c3a22, .3));
  }

  static Body shell(double x, double z, double size, int light, int dark, double yaw) {
    double[] a = Dye.rgb(light);
    double[] b = Dye.rgb(dark);
    Field fan =
        (px, py, pz) -> {
          double r = Math.sqrt(px * px + (pz + .8) * (pz + .8));
          double angle = Noise.bearing(px, pz + .8);
          double rib = .03 * StrictMath.sin(angle * 26);
          double dome = py - .34 * Math.max(0, 1 - px * px * .9 - pz * pz * .7) - rib * r;
          double rim = Math.max(r - 1.75, Math.abs(angle) - .95);
          return Math.max(Math.max(dome, -py), rim * .8) * .55;
        };
    Dye pearl =
        (px, py, pz, out) -> {
          double r = Math.sqrt(px * px + (pz + .8) * (pz + .8));
          out.dye(a);
          out.mix(b, .5 + .5 * StrictMath.sin(r * 15));
          out.times(.85 + .2 * Noise.at(px * 30, pz * 30));
          out.gloss = .25;
        };
    return new Model(x, 0, z, yaw, size, .1, 1.5).with(fan, pearl);
  }

  static Body lantern(double x, double y, double z, int colour, double size) {
    Field paper =
        (px, py, pz) ->
            Field.ellipsoid(px, py, pz, .15, .17, .15) - .004 * StrictMath.sin(py * 120);
    double[] c = Dye.rgb(colour);
    Dye lit =
        (px, py, pz, out) -> {
          out.dye(c);
          out.glow = 1.1 + 1.5 * Math.max(0, .1 - py) * 4;
          out.times(.85 + .15 * StrictMath.sin(py * 120));
        };
    return new Model(x, y, z, 0, size, 0, .2).with(paper, lit);
  }

  static List<Body> fire(double x, double z, double size) {
    Field flames =
        (px, py, pz) -> {
          double w = .32 * Math.max(.05, 1 - py / 1.25);
          double sway = .16 * (Noise.cloud(py * 3 + px * 2, pz * 2 + 5, 3) - .5) * py * 2;
          double d = Math.sqrt((px + sway) * (px + sway) + pz * pz) - w;
          d += .42 * (1.05 - py * .8) * (Noise.cloud(px * 4.2, py * 2.6 - 4, pz * 4.2, 3) - .42);
          return Math.max(d * .35, Math.max(-py, py - 1.25));
        };
    double[] hot = Dye.rgb(0xfff0a0);
    double[] red = Dye.rgb(0xff5a14);
    Dye burn =
        (px, py, pz, out) -> {
          out.dye(hot);
          out.mix(red, py * 1.1 + Noise.cloud(px * 6, py * 5, pz * 6, 3) * 1.3 - .35);
          out.glow = 2.6 - 1.5 * py;
        };
    Field logs =
        (px, py, pz) -> {
          double d = 9;
          for (int i = 0; i < 5; i++) {
            double a = i * 1.256;
            double sx = StrictMath.sin(a);
            double sz = StrictMath.cos(a);
            d =
                Math.min(
                    d,
                    Field.rod(
                        px,
                        py,
                        pz,
                        p(sx * .5, .04, sz * .5),
                        p(-sx * .05, .42, -sz * .05),
                        .055,
                        .05));
          }
          return d - .015 * Noise.at(px * 30, py * 12, pz * 30);
        };
    return List.of(
        new Model(x, 0, z, 0, size, .6, .95)
            .careful(.7)
            .with(flames, burn)
            .with(logs, Dye.mottled(0x4a3020, 0x14100c, .1)));
  }

  static Body hen(double x, double z, double yaw, int colour, boolean pecking) {
    double hy = pecking ? .07 : .40;
    double hz = pecking ? .27 : .20;
    Field body =
        (px, py, pz) -> {
          double d = Field.ellipsoid(px, py - .22, pz, .12, .125, .17);
          d =
              Field.join(
                  d, Field.rod(px, py, pz, p(0, .27, -.10), p(0, .42, -.22), .075, .045), .08);
          d = Field.join(d, Field.rod(px, py, pz, p(0, .26, .10), p(0, hy, hz), .07, .042), .06);
          d -= .02 * Noise.at(px * 26, py * 40, pz * 26);
          return d;
        };
    Field legs =
        (px, py, pz) ->
            Field.rod(Math.abs(px), py, pz, p(.05, .12, .0), p(.055, 0, .02), .011, .011);
    Field comb = (px, py, pz) -> Field.ellipsoid(px, py - hy - .045, pz - hz, .010, .03, .035);
    Field beak =
        (px, py, pz) ->
            Field.rod(px, py, pz, p(0, hy - .005, hz + .03), p(0, hy - .015, hz + .07), .014, .004);
    return new Model(x, 0, z, yaw, 1, .24, .42)
        .careful(.75)
        .with(body, Dye.mottled(colour, 0x4a2a18, .08))
        .with(legs, Dye.plain(0xd8a23a))
        .with(comb, Dye.plain(0xc8262a))
        .with(beak, Dye.plain(0xe0b050));
  }

  static List<Body> castle(double x, double z, double size) {
    Field sand =
        (px, py, pz) -> {
          double d = Field.box(px, py - .1, pz, .42, .14, .42, .05);
          for (int i = 0; i < 4; i++) {
            double tx = px - (i < 2 ? .4 : -.4);
            double tz = pz - (i % 2 == 0 ? .4 : -.4);
            double r = .17 - .10 * py;
            double tower =
                Math.max((Math.sqrt(tx * tx + tz * tz) - r) * .95, Math.max(-py, py - .42));
            double notch = Math.max(Math.min(Math.abs(tx), Math.abs(tz)) - .03, .36 - py);
            d = Math.min(d, Math.max(tower, -notch));
          }
          double r = .24 - .12 * py;
          double keep = Math.max((Math.sqrt(px * px + pz * pz) - r) * .95, Math.max(-py, py - .66));
          double door = Math.max(Math.abs(px) - .055, Math.max(py - .14, -pz - 9));
          d = Math.min(d, keep);
          d = Math.max(d, -Math.max(door, pz + .30));
          return d + .016 * Noise.cloud(px * 16, py * 16, pz * 16, 3);
        };
    Field pole = (px, py, pz) -> Field.rod(px, py, pz, p(0, .6, 0), p(0, .98, 0), .009, .007);
    Field flag =
        (px, py, pz) ->
            Field.box(
                px - .10, py - .91, pz - .02 * StrictMath.sin(px * 24), .095, .055, .006, .003);
    return List.of(
        new Model(x, 0, z, 25, size, .35, .92)
            .with(sand, Dye.mottled(0xcbb083, 0xa98c5e, .12))
            .with(pole, Dye.plain(0x6a4a2a))
            .with(flag, Dye.plain(0xc23a32)));
  }

  static Body bucket(double x, double y, double z, int colour) {
    Field pail =
        (px, py, pz) -> {
          double r = .10 + .03 * py / .2;
          double q = Math.sqrt(px * px + pz * pz);
          double d = Math.max(Math.abs(q - r) - .006, Math.max(-py, py - .22));
          return Math.min(d, Field.drum(px, py - .01, pz, .1, .01, .003));
        };
    Field handle =
        (px, py, pz) -> {
          double q = Math.sqrt(px * px + (py - .22) * (py - .22)) - .125;
          return Math.max(Math.sqrt(q * q + pz * pz) - .006, .2 - py);
        };
    return new Model(x, y, z, 30, 1, .17, .24)
        .careful(.7)
        .with(pail, Dye.plain(colour, .4))
        .with(handle, Dye.plain(0xd8d8d4, .4));
  }

  /** A market stall: striped awning, counter, crates of fruit and greens. */
  static List<Body> stall(double x, double z, int one, int other) {
    double[] a = Dye.rgb(one);
    double[] b = Dye.rgb(other);
    Field awning =
        (px, py, pz) -> {
          double roof = py - 2.35 + .22 * (pz - .6) + .03 * StrictMath.sin(px * 14);
          double d = Math.abs(roof) - .02;
          double edge = Math.max(Math.abs(pz + 1.05) - .015, Math.abs(py - 2.55 + .0) - .16);
          return Math.max(Math.min(d, edge), Math.max(Math.abs(px) - 1.75, Math.abs(pz) - 1.07))
              * .8;
        };
    Dye stripes =
        (px, py, pz, out) -> {
          double u = px / .42;
          out.dye(u - Math.floor(u) < .5 ? a : b);
          out.times(.9 + .15 * Noise.cloud(px * 12, py * 12, pz * 12, 2));
          out.soft = .5;
        };
    Field posts =
        (px, py, pz) ->
            Field.rod(Math.abs(px), py, Math.abs(pz), p(1.65, 0, .95), p(1.65, 2.5, .95), .04, .04);
    Field counter = (px, py, pz) -> Field.box(px, py - .42, pz - .1, 1.55, .42, .5, .02);
    Model frame =
        new Model(x, 0, z, 0, 1, 1.3, 2.5)
            .with(awning, stripes)
            .with(posts, Dye.wood(0x8a6a48, 0x52381f))
            .with(counter, Dye.wood(0x9a7a52, 0x5f4226));
    int[] fruit = {0xd8342c, 0xf0b428, 0x6f9a34, 0xe87a1e, 0x7a2a5a, 0xc8d26a};
    List<Body> all = new ArrayList<>();
    all.add(frame);
    for (int i = 0; i < 6; i++) {
      double cx = -1.28 + i * .512;
      double r = i % 2 == 0 ? .048 : .036;
      int colour = fruit[i];
      Field heap =
          (px, py, pz) -> {
            double tip = py - .09 - pz * .3;
            if (Math.abs(tip) > .16) {
              return Math.abs(tip) - .1;
            }
            double gx = px / (r * 2);
            double gz = pz / (r * 2);
            double ix = Math.floor(gx);
            double iz = Math.floor(gz);
            double best = 9;
            for (int k = 0; k < 4; k++) {
              double sx = ix + (k & 1) + (gx - ix < .5 ? -.5 : .5) - .5 + .5;
              double sz = iz + (k >> 1) + (gz - iz < .5 ? -.5 : .5) - .5 + .5;
              sx = Math.floor(sx);
              sz = Math.floor(sz);
              double h = .04 * Noise.hash((int) sx, (int) sz, colour);
              best =
                  Math.min(
                      best,
                      Field.length(px - (sx + .5) * r * 2, tip - h + .03, pz - (sz + .5) * r * 2)
                          - r);
            }
            return Math.max(best, Math.max(Math.abs(px) - .20, Math.abs(pz) - .27));
          };
      Field crate =
          (px, py, pz) ->
              Math.max(
                  Field.box(px, py - .07 - pz * .3, pz, .235, .09, .30, .01),
                  -Field.box(px, py - .16 - pz * .3, pz, .215, .12, .28, .01));
      all.add(
          new Model(x + cx, .86, z - .18, 0, 1, .1, .46)
              .careful(.7)
              .with(crate, Dye.wood(0xc8a878, 0x8a6a40))
              .with(heap, Dye.plain(colour, .35).soft(.3)));
    }
    return all;
  }

  static Body bench(double x, double z, double yaw) {
    Field planks =
        (px, py, pz) -> {
          double seat = Field.box(px, py - .44, pz, .75, .025, .2, .01);
          double back = Field.box(px, py - .78, pz + .22, .75, .12, .018, .01);
          double leg = Field.rod(Math.abs(px), py, pz, p(.62, 0, -.16), p(.62, .9, -.22), .03, .03);
          double fore = Field.rod(Math.abs(px), py, pz, p(.62, 0, .16), p(.62, .44, .16), .03, .03);
          return Math.min(Math.min(seat, back), Math.min(leg, fore));
        };
    return new Model(x, 0, z, yaw, 1, .45, 1.05).with(planks, Dye.wood(0xb08c62, 0x6c4d30));
  }

  /** A picket fence along x. */
  static Body fence(double x, double z, double half) {
    Field pickets =
        (px, py, pz) -> {
          double u = px - Math.floor(px / .16 + .5) * .16;
          double board = Field.box(u, py - .42, pz, .04, .42, .012, .004);
          double tip = (Math.abs(u) + (py - .80)) * .7;
          double rail = Math.abs(py - .45) - .19;
          rail = Field.box(0, Math.abs(rail) - 0, pz + .025, 1, .03, .012, .004);
          return Math.max(Math.min(Math.max(board, tip), rail), Math.abs(px) - half);
        };
    return new Model(x, 0, z, 0, 1, .4, half + .5)
        .careful(.7)
        .with(pickets, Dye.mottled(0xeeeae0, 0xc0b8a8, .1));
  }

  static Body kite(double x, double y, double z, double size) {
    Field sail =
        (px, py, pz) -> {
          double wide = py > .2 ? (1 - py) * .85 : (py + 1) * .57;
          return Math.max(Math.abs(pz - .12 * px * px) - .01, (Math.abs(px) - wide) * .6);
        };
    Dye cloth =
        (px, py, pz, out) -> {
          out.dye(Dye.rgb(px > 0 == py > .2 ? 0xe8432e : 0xf4c430));
          out.soft = .8;
        };
    Field tail =
        (px, py, pz) ->
            Math.max(
                Field.length(px - .14 * StrictMath.sin(py * 3.2), 0, pz) - .03,
                Math.max(py + .95, -3.2 - py));
    return new Model(x, y, z, -20, size, -1, 2.3)
        .careful(.7)
        .with(sail, cloth)
        .with(tail, Dye.bands(0x2f6fae, 0xf4c430, .6));
  }

  /** Paint pot with its brush lying across. */
  static Body paintPot(double x, double z) {
    Field tin =
        (px, py, pz) ->
            Math.max(
                Field.drum(px, py - .09, pz, .085, .09, .004),
                -Field.drum(px, py - .14, pz, .08, .06, .002));
    Field paint = (px, py, pz) -> Field.drum(px, py - .13, pz, .081, .01, .001);
    Field handle =
        (px, py, pz) -> Field.rod(px, py, pz, p(-.06, .19, 0), p(.20, .20, .03), .014, .011);
    Field bristle = (px, py, pz) -> Field.box(px + .10, py - .187, pz, .045, .012, .03, .004);
    return new Model(x, 0, z, 30, 1, .1, .26)
        .with(tin, Dye.plain(0xb8bcc0, .5))
        .with(paint, Dye.plain(0x1f5fae, .6))
        .with(handle, Dye.wood(0xc08a50, 0x8a5a2c))
        .with(bristle, Dye.mottled(0x1f5fae, 0x6a4a30, .04));
  }

  static Body moonlitPost(double x, double z, double tall) {
    Field post = (px, py, pz) -> Field.rod(px, py, pz, p(0, 0, 0), p(0, tall, 0), .07, .06);
    return new Model(x, 0, z, 0, 1, tall / 2, tall / 2 + .15)
        .with(post, Dye.wood(0x6a5a48, 0x3a3026));
  }
}
