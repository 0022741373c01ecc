package org.daymount.sample;

/** The walls of a kitchen, far enough behind to be out of focus: paint, shelf, jars, window. */
final class Room implements Backdrop {
  private final double[] wall;
  private final double[] wood = Dye.rgb(0x8a5f3c);
  private final double[] day;
  private final double[][] jars = {
    Dye.rgb(0xb8483a), Dye.rgb(0x3f7488), Dye.rgb(0xd9a441), Dye.rgb(0xe6ddcf), Dye.rgb(0x5f8450)
  };
  private final double brightness;

  Room(int wall, int window, double brightness) {
    this.wall = Dye.rgb(wall);
    this.day = Dye.rgb(window);
    this.brightness = brightness;
  }

  @Override
  public void glow(double dx, double dy, double dz, double[] out) {
    double side = Math.max(0, -dx * .8 + .2);
    for (int i = 0; i < 3; i++) {
      out[i] = (wall[i] * (.5 + .35 * dy) + day[i] * side * side * .9) * brightness;
    }
  }

  @Override
  public void light(double dx, double dy, double dz, double[] out) {
    double u = dx / Math.max(.05, Math.abs(dz));
    double v = dy / Math.max(.05, Math.abs(dz));
    double fall = 1 - .35 * Math.max(-1, Math.min(1, u));
    double paint = .92 + .12 * Noise.cloud(u * 9, v * 9, 3);
    for (int i = 0; i < 3; i++) {
      out[i] = wall[i] * fall * paint * .75 * brightness;
    }
    double shelf = .2;
    if (Math.abs(v - shelf) < .016) {
      put(wood, .9 + .2 * Noise.at(u * 12, v * 200), out);
    } else if (v > shelf && v < shelf + .24 && u > -.25) {
      int n = (int) Math.floor(u / .115);
      double in = u / .115 - n - .5;
      double tall = .10 + .1 * Noise.hash(n, 3, 5);
      if (Math.abs(in) < .36 && v - shelf < tall) {
        double round = .45 + .75 * Math.sqrt(Math.max(0, 1 - in * in * 6)) - in * .35;
        put(jars[(int) (Noise.hash(n, 8, 1) * jars.length)], round, out);
      }
    }
    if (u < -.34 && u > -.95 && v > -.14 && v < .62) {
      double bar = Math.min(Math.abs(u + .645), Math.min(Math.abs(v - .24), 1));
      boolean frame = bar < .014 || u > -.365 || u < -.925 || v < -.115 || v > .595;
      if (frame) {
        put(jars[3], .8, out);
      } else {
        double leaf = Noise.cloud(u * 6, v * 6, 4);
        for (int i = 0; i < 3; i++) {
          double outside = day[i] * (1.5 + leaf * .5);
          if (v < .2 - leaf * .2) {
            outside = day[i] * (i == 1 ? .62 : .34) * (.5 + leaf);
          }
          out[i] = outside * brightness;
        }
      }
    }
  }

  private void put(double[] dye, double factor, double[] out) {
    for (int i = 0; i < 3; i++) {
      out[i] = dye[i] * factor * .85 * brightness;
    }
  }
}
