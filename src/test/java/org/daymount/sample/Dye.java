package org.daymount.sample;

/** Colours a point of a solid. */
@FunctionalInterface
interface Dye {
  void at(double x, double y, double z, Surface out);

  /** 0xRRGGBB as seen on a screen to linear light (gamma 2.2 is near enough for paint). */
  static double[] rgb(int hex) {
    return new double[] {
      StrictMath.pow((hex >> 16 & 255) / 255.0, 2.2),
      StrictMath.pow((hex >> 8 & 255) / 255.0, 2.2),
      StrictMath.pow((hex & 255) / 255.0, 2.2)
    };
  }

  /** One colour, a little uneven as everything is. */
  static Dye plain(int hex) {
    return plain(hex, 0);
  }

  static Dye plain(int hex, double gloss) {
    double[] c = rgb(hex);
    return (x, y, z, out) -> {
      out.dye(c);
      out.times(.85 + .3 * Noise.cloud(x * 23, y * 23, z * 23, 2));
      out.gloss = gloss;
    };
  }

  /** Two colours in patches of about {@code size} metres. */
  static Dye mottled(int one, int other, double size) {
    double[] a = rgb(one);
    double[] b = rgb(other);
    return (x, y, z, out) -> {
      out.dye(a);
      out.mix(b, Noise.cloud(x / size, y / size, z / size, 4) * 2.4 - .7);
    };
  }

  /** Bands of two colours along y. */
  static Dye bands(int one, int other, double width) {
    double[] a = rgb(one);
    double[] b = rgb(other);
    return (x, y, z, out) -> {
      double phase = y / width - Math.floor(y / width);
      out.dye(phase < .5 ? a : b);
      out.times(.85 + .3 * Noise.at(x * 60, y * 90, z * 60));
    };
  }

  /** Wood with its grain along x. */
  static Dye wood(int light, int dark) {
    double[] a = rgb(light);
    double[] b = rgb(dark);
    return (x, y, z, out) -> {
      out.dye(a);
      double grain = Noise.cloud(x * 2.5, y * 40 + z * 40, 4);
      out.mix(b, grain * 2 - .55);
      out.gloss = .15;
    };
  }

  /** Lit from within. */
  static Dye glowing(int hex, double strength) {
    double[] c = rgb(hex);
    return (x, y, z, out) -> {
      out.dye(c);
      out.glow = strength;
    };
  }

  /** The same colours on something that light goes a little way into, as skin, petals and wax. */
  default Dye soft(double amount) {
    return (x, y, z, out) -> {
      at(x, y, z, out);
      out.soft = amount;
    };
  }
}
