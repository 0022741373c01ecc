package org.daymount.sample;

/** The plane y = 0: sand, grass, sea, boards. */
@FunctionalInterface
interface Ground {
  /**
   * Dyes the point and tilts the normal.
   *
   * @param away distance from the camera in metres: detail beyond what it can show is left out
   * @return how much of the sky is mirrored, 0 for none, 1 for calm water
   */
  double at(double x, double z, double away, Surface out, double[] normal);

  private static void tilt(double[] normal, double slopeX, double slopeZ) {
    double l = Math.sqrt(slopeX * slopeX + slopeZ * slopeZ + 1);
    normal[0] = -slopeX / l;
    normal[1] = 1 / l;
    normal[2] = -slopeZ / l;
  }

  static Ground sea(int shallow, int deep, double swell) {
    double[] a = Dye.rgb(shallow);
    double[] b = Dye.rgb(deep);
    return (x, z, away, out, normal) -> {
      out.dye(a);
      out.mix(b, Noise.cloud(x * .02, z * .02, 3) * 1.4 - .25 + away * .004);
      double calm = swell / (1 + away * .02);
      double e = .03 + away * .0012;
      double h = wave(x, z, away);
      tilt(normal, (wave(x + e, z, away) - h) / e * calm, (wave(x, z + e, away) - h) / e * calm);
      if (h > .66 + away * .001 && swell > .3) {
        out.mix(new double[] {.8, .85, .86}, (h - .66) * 5);
      }
      return 1;
    };
  }

  private static double wave(double x, double z, double away) {
    double wx = x * .55 + .4 * Noise.at(z * .3, x * .2);
    double sum = .55 * Noise.at(wx, z * 1.1);
    sum += .28 * Noise.at(x * 1.7 + 9, z * 2.9);
    if (away < 60) {
      sum += .11 * Noise.at(x * 5.1, z * 7.3);
    }
    if (away < 18) {
      sum += .05 * Noise.at(x * 13, z * 19);
    }
    return sum;
  }

  static Ground sand(int light, int dark, double wet) {
    double[] a = Dye.rgb(light);
    double[] b = Dye.rgb(dark);
    return (x, z, away, out, normal) -> {
      out.dye(a);
      double broad = Noise.cloud(x * .35, z * .8, 4);
      out.mix(b, broad * 1.5 - .35);
      double ripple = .5 + .5 * StrictMath.sin(z * 19 + 5 * Noise.cloud(x * .8, z * .5, 3));
      out.times(.92 + .1 * ripple);
      if (away < 12) {
        out.times(.82 + .36 * Noise.at(x * 170, z * 170));
        out.times(.9 + .2 * Noise.at(x * 60, z * 60));
      }
      double e = .02;
      double h = Noise.cloud(x * 3, z * 5, 3);
      tilt(normal, (Noise.cloud((x + e) * 3, z * 5, 3) - h) / e * .05, (.5 - ripple) * .25);
      double pool = Sky.smooth((Noise.cloud(x * .22, z * .5, 3) - .52) * 9);
      out.times(1 - .3 * wet * pool);
      return wet * pool * .8;
    };
  }

  /**
   * Sand as far as the water's edge about {@code edge} metres off, then sea with a line of foam.
   */
  static Ground shore(Ground sand, Ground sea, double edge, double slant) {
    return (x, z, away, out, normal) -> {
      double line = z - edge - slant * x + 1.4 * (Noise.cloud(x * .35, 4, 3) - .5);
      if (line > 0) {
        double mirror = sea.at(x, z, away, out, normal);
        double foam = Noise.cloud(x * 3, z * 3, 4);
        double lap = Math.max(0, 1 - line / .7);
        double second = Math.max(0, 1 - Math.abs(line - 2.6 - foam) / .5);
        out.mix(new double[] {.86, .88, .88}, (lap + second * .7) * foam * 2.2 - .2);
        return mirror * (1 - .7 * lap);
      }
      double mirror = sand.at(x, z, away, out, normal);
      double wet = Math.max(0, 1 + line / 1.6);
      out.times(1 - .45 * wet);
      return Math.max(mirror, wet * .45);
    };
  }

  static Ground grass(int light, int dark) {
    double[] a = Dye.rgb(light);
    double[] b = Dye.rgb(dark);
    double[] straw = Dye.rgb(0xb5a75a);
    double[] daisy = Dye.rgb(0xf4f2ea);
    return (x, z, away, out, normal) -> {
      out.dye(a);
      out.mix(b, Noise.cloud(x * .6, z * .6, 3) * 1.7 - .4);
      out.mix(straw, Noise.cloud(x * 1.3 + 40, z * 1.3, 3) * 1.4 - .75);
      if (away < 25) {
        double blade = Noise.cloud(x * 26 + 2 * Noise.at(x * 4, z * 4), z * 11, 3);
        out.times(.35 + 1.35 * blade);
      }
      if (away < 9) {
        out.times(.7 + .6 * Noise.at(x * 120, z * 38));
        int cx = (int) Math.floor(x * 3);
        int cz = (int) Math.floor(z * 3);
        if (Noise.hash(cx, cz, 4) > .8) {
          double ux = x * 3 - cx - .3 - .4 * Noise.hash(cx, cz, 5);
          double uz = z * 3 - cz - .3 - .4 * Noise.hash(cx, cz, 6);
          double r = ux * ux + uz * uz;
          if (r < .0045) {
            out.dye(r < .0007 ? Dye.rgb(0xe8b820) : daisy);
          }
        }
      }
      double e = .03;
      double h = Noise.at(x * 9, z * 9);
      tilt(
          normal,
          (Noise.at((x + e) * 9, z * 9) - h) / e * .06,
          (Noise.at(x * 9, (z + e) * 9) - h) / e * .06);
      return 0;
    };
  }

  static Ground boards(int light, int dark, double width, double shine) {
    double[] a = Dye.rgb(light);
    double[] b = Dye.rgb(dark);
    return (x, z, away, out, normal) -> {
      int board = (int) Math.floor(x / width);
      double in = x / width - board;
      out.dye(a);
      out.mix(b, Noise.hash(board, 2, 2) * .7);
      double grain = Noise.cloud(x * 38 + board * 7, z * 2.2, 5);
      out.mix(b, grain * 2.2 - .75);
      double gap = Math.min(in, 1 - in) * width;
      out.times(Math.min(1, .25 + gap / .006));
      out.gloss = shine;
      normal[0] = 0;
      normal[1] = 1;
      normal[2] = 0;
      return shine * .12;
    };
  }

  static Ground cobbles(int light, int dark) {
    double[] a = Dye.rgb(light);
    double[] b = Dye.rgb(dark);
    return (x, z, away, out, normal) -> {
      double row = Math.floor(z * 6);
      double ux = x * 5 + (row % 2) * .5;
      double cx = ux - Math.floor(ux) - .5;
      double cz = z * 6 - row - .5;
      double r = Math.sqrt(cx * cx + cz * cz);
      out.dye(a);
      out.mix(b, Noise.hash((int) Math.floor(ux), (int) row, 3) * .9);
      out.times(.7 + .5 * Noise.cloud(x * 40, z * 40, 3));
      out.times(1 - .75 * Sky.smooth((r - .36) * 7));
      tilt(normal, cx * .8, cz * .8);
      return 0;
    };
  }
}
