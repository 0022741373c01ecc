package org.daymount.sample;

/** Biscuit: sand-coloured, white chest, one ear that never stands. Half a metre at the shoulder. */
final class Dog {
  private Dog() {}

  private static double fur(double x, double y, double z) {
    return .016 * Noise.at(x * 46 + y * 9, y * 22, z * 40)
        + .008 * Noise.at(x * 110, y * 60, z * 95);
  }

  private static Dye coat() {
    double[] sand = Dye.rgb(0xc08a50);
    double[] pale = Dye.rgb(0xf2e6d2);
    double[] brown = Dye.rgb(0x7c5028);
    return (x, y, z, out) -> {
      out.dye(sand);
      out.mix(brown, Noise.cloud(x * 5, y * 5, z * 5, 3) * 1.6 - .55);
      double chest = 1.2 - Field.length(x * 1.6, (y - .34) * .9, z - .36) / .17;
      out.mix(pale, Math.max(0, chest) * 1.4);
      double blaze = 1 - Math.abs(x) / (.028 + Math.max(0, .62 - y) * .25);
      if (z > .44 && y > .42) {
        out.mix(pale, Math.max(0, blaze) * 2);
      }
      if (y < .12) {
        out.mix(pale, (.12 - y) * 12);
      }
      out.times(.62 + .6 * Noise.at(x * 60 + y * 12, y * 26, z * 52));
      out.soft = .3;
    };
  }

  private static Model head(Model dog, double hx, double hy, double hz, double tongue) {
    Dye coat = coat();
    Field skull =
        (x, y, z) -> {
          double ux = x - hx;
          double uy = y - hy;
          double uz = z - hz;
          double ax = Math.abs(ux);
          double d = Field.ellipsoid(ux, uy, uz, .105, .098, .115);
          double snout =
              Field.rod(
                  ux,
                  uy,
                  uz,
                  new double[] {0, -.03, .06},
                  new double[] {0, -.052, .19},
                  .062,
                  .044);
          d = Field.join(d, snout, .05);
          d = Field.join(d, Field.ellipsoid(ax - .045, uy - .045, uz - .085, .035, .02, .03), .03);
          d = Field.cut(d, .022 - Field.length(ax - .052, uy - .018, uz - .108), .015);
          return d > .07 ? d - .015 : d - fur(x, y, z) * .55;
        };
    Field ears =
        (x, y, z) -> {
          double ax = Math.abs(x - hx);
          double drop = x > hx ? -.09 : -.02;
          double d =
              Field.rod(
                  ax,
                  y - hy,
                  z - hz,
                  new double[] {.082, .065, .0},
                  new double[] {.135, drop, .015},
                  .034,
                  .040);
          return d > .07 ? d - .015 : d - fur(x, y, z) * .5;
        };
    Field eyes =
        (x, y, z) -> Field.length(Math.abs(x - hx) - .05, y - hy - .018, z - hz - .095) - .0205;
    double[] amber = Dye.rgb(0x3a2010);
    Dye eye =
        (x, y, z, out) -> {
          out.dye(amber);
          out.gloss = .3;
          double gx = x - hx - Math.copySign(.05, x - hx) + .005;
          double gy = y - hy - .027;
          if (gx * gx + gy * gy < .000012) {
            out.dye(Dye.rgb(0xffffff));
            out.glow = .8;
          }
        };
    Field nose =
        (x, y, z) -> Field.ellipsoid(x - hx, y - hy + .035, z - hz - .228, .029, .021, .02);
    dog.with(skull, coat)
        .with(
            ears,
            (x, y, z, out) -> {
              coat.at(x, y, z, out);
              out.times(.6);
            });
    dog.with(eyes, eye).with(nose, Dye.plain(0x1a1614, .5));
    Field lips =
        (x, y, z) -> Field.ellipsoid(x - hx, y - hy + .083, z - hz - .165, .036, .007, .05);
    dog.with(lips, Dye.plain(0x2a1a16, .2));
    if (tongue > 0) {
      Field lick =
          (x, y, z) ->
              Field.ellipsoid(
                  x - hx,
                  y - hy + .085 + tongue * .03,
                  z - hz - .19,
                  .024,
                  .012 + tongue * .035,
                  .014);
      dog.with(lick, Dye.plain(0xd8737c, .35));
    }
    return dog;
  }

  /** Sitting, looking where it faces. */
  static Body sitting(double x, double z, double yaw, double tongue) {
    Dye coat = coat();
    Field body =
        (px, py, pz) -> {
          double ax = Math.abs(px);
          double d =
              Field.rod(
                  px, py, pz, new double[] {0, .17, -.10}, new double[] {0, .47, .24}, .155, .105);
          d = Field.join(d, Field.ellipsoid(ax - .10, py - .14, pz + .02, .09, .14, .15), .06);
          double leg =
              Field.rod(
                  ax,
                  py,
                  pz,
                  new double[] {.075, .38, .24},
                  new double[] {.085, .05, .30},
                  .055,
                  .036);
          leg =
              Field.join(
                  leg, Field.ellipsoid(ax - .085, py - .035, pz - .325, .04, .035, .06), .03);
          d = Field.join(d, leg, .05);
          d = Field.join(d, Field.ellipsoid(ax - .15, py - .035, pz - .12, .045, .035, .09), .03);
          double neck =
              Field.rod(
                  px, py, pz, new double[] {0, .46, .23}, new double[] {0, .60, .30}, .10, .085);
          d = Field.join(d, neck, .08);
          double tail =
              Field.rod(
                  px,
                  py,
                  pz,
                  new double[] {0, .06, -.24},
                  new double[] {.22, .07, -.42},
                  .035,
                  .028);
          d = Field.join(d, tail, .05);
          return d > .07 ? d - .02 : d - fur(px, py, pz);
        };
    Model dog = new Model(x, 0, z, yaw, 1, .38, .80).with(body, coat).careful(.7);
    Field collar =
        (px, py, pz) -> Field.ring(px, py - .525, pz - .262 - (py - .525) * .4, .098, .014);
    dog.with(collar, Dye.plain(0xb02c2c, .2));
    return head(dog, 0, .665, .34, tongue);
  }

  /** Standing or, with a stride, running; along its own z. */
  static Body running(double x, double y, double z, double yaw, double stride) {
    Dye coat = coat();
    Field body =
        (px, py, pz) -> {
          double ax = Math.abs(px);
          double d =
              Field.rod(
                  px, py, pz, new double[] {0, .42, -.28}, new double[] {0, .43, .20}, .115, .135);
          double[] paws = {stride, -stride * .6, -stride, stride * .7};
          for (int i = 0; i < 4; i++) {
            double side = i % 2 == 0 ? .075 : -.075;
            double hz = i < 2 ? .20 : -.30;
            double[] hip = {side, .38, hz};
            double[] paw = {side, .035 + Math.abs(paws[i]) * .35, hz + paws[i]};
            double[] joint = {
              side, (hip[1] + paw[1]) / 2, (hip[2] + paw[2]) / 2 + (i < 2 ? .03 : -.06)
            };
            double leg = Field.rod(px, py, pz, hip, joint, .06, .042);
            leg = Field.join(leg, Field.rod(px, py, pz, joint, paw, .042, .03), .03);
            d = Field.join(d, leg, .05);
          }
          double neck =
              Field.rod(
                  px, py, pz, new double[] {0, .46, .22}, new double[] {0, .60, .34}, .10, .085);
          d = Field.join(d, neck, .09);
          double tail =
              Field.rod(
                  px,
                  py,
                  pz,
                  new double[] {0, .46, -.38},
                  new double[] {.06, .66, -.60},
                  .035,
                  .03);
          d = Field.join(d, tail, .05);
          return d > .07 ? d - .02 : d - fur(px, py, pz);
        };
    Model dog = new Model(x, y, z, yaw, 1, .42, .95).with(body, coat).careful(.7);
    Field collar = (px, py, pz) -> Field.ring(px, py - .54, pz - .29 - (py - .54) * .7, .10, .014);
    dog.with(collar, Dye.plain(0xb02c2c, .2));
    return head(dog, 0, .655, .40, 1);
  }
}
