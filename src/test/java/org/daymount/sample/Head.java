package org.daymount.sample;

/**
 * A human head modelled as a solid, so that it takes light as a face does: brow, sockets, lids over
 * eyeballs, nose, lips, ears. Its own unit is about half a head's width (0.105 m for an adult); y
 * up, z out of the face.
 */
final class Head extends Body {
  /** What the hair does. */
  enum Hair {
    SHORT,
    LONG,
    BOB
  }

  /** What is worn on it. */
  enum Hat {
    NONE,
    STRAW,
    WOOL,
    PARTY
  }

  /**
   * One person's looks.
   *
   * @param jaw width of the lower face, 1 for the average
   * @param eyes size of the eyes, 1 for an adult
   * @param beard 0 none to 1 full
   */
  record Looks(int skin, int hair, Hair style, double jaw, double eyes, double beard, int iris) {}

  private final Looks looks;
  private final Hat hat;
  private final double smile;
  private final double open;
  private final double scale;
  private final double[] turn;
  private final double[] skin;
  private final double[] flush;
  private final double[] lips;
  private final double[] hair;
  private final double[] brow;
  private final double[] iris;
  private static final double[] WHITE = Dye.rgb(0xf0e8e0);
  private static final double[] DARK = Dye.rgb(0x1c1210);
  private static final double[] STRAW = Dye.rgb(0xe2c48a);
  private static final double[] WOOL = Dye.rgb(0xb0473a);
  private static final double[] PARTY = Dye.rgb(0x3f8fd0);
  private static final double[] GOLD = Dye.rgb(0xf2c230);

  /** Turned by yaw (to its left), pitch (down) and roll, in degrees. */
  Head(
      Looks looks,
      Hat hat,
      double smile,
      double[] at,
      double scale,
      double yaw,
      double pitch,
      double roll) {
    super(at[0], at[1], at[2], scale * 2.45);
    this.looks = looks;
    this.hat = hat;
    this.smile = smile;
    this.open = smile > .6 ? (smile - .6) * 2.5 : 0;
    this.scale = scale;
    this.turn = turning(yaw, pitch, roll);
    skin = Dye.rgb(looks.skin());
    flush = new double[] {skin[0] * 1.02, skin[1] * .66, skin[2] * .58};
    lips = new double[] {skin[0] * .82, skin[1] * .42, skin[2] * .42};
    hair = Dye.rgb(looks.hair());
    brow = new double[] {hair[0] * .5, hair[1] * .5, hair[2] * .5};
    iris = Dye.rgb(looks.iris());
  }

  private static double[] turning(double yaw, double pitch, double roll) {
    double cy = StrictMath.cos(StrictMath.toRadians(yaw));
    double sy = StrictMath.sin(StrictMath.toRadians(yaw));
    double cp = StrictMath.cos(StrictMath.toRadians(pitch));
    double sp = StrictMath.sin(StrictMath.toRadians(pitch));
    double cr = StrictMath.cos(StrictMath.toRadians(roll));
    double sr = StrictMath.sin(StrictMath.toRadians(roll));
    // columns: where the head's right, up and forward point in the scene
    double[] fwd = {sy * cp, -sp, cy * cp};
    double[] right = {cy, 0, -sy};
    double[] up = {
      fwd[1] * right[2] - fwd[2] * right[1],
      fwd[2] * right[0] - fwd[0] * right[2],
      fwd[0] * right[1] - fwd[1] * right[0]
    };
    return new double[] {
      right[0] * cr + up[0] * sr,
      right[1] * cr + up[1] * sr,
      right[2] * cr + up[2] * sr,
      up[0] * cr - right[0] * sr,
      up[1] * cr - right[1] * sr,
      up[2] * cr - right[2] * sr,
      fwd[0],
      fwd[1],
      fwd[2]
    };
  }

  @Override
  double caution() {
    return .75;
  }

  @Override
  double distance(double px, double py, double pz) {
    double dx = (px - x) / scale;
    double dy = (py - y) / scale;
    double dz = (pz - z) / scale;
    double lx = dx * turn[0] + dy * turn[1] + dz * turn[2];
    double ly = dx * turn[3] + dy * turn[4] + dz * turn[5];
    double lz = dx * turn[6] + dy * turn[7] + dz * turn[8];
    double d = Math.min(flesh(lx, ly, lz), eyeball(lx, ly, lz));
    d = Math.min(d, hair(lx, ly, lz, d));
    if (hat != Hat.NONE) {
      d = Math.min(d, hat(lx, ly, lz));
    }
    return d * scale;
  }

  private double lift(double ax) {
    return smile * (.55 * ax * ax + .25 * ax - .035);
  }

  private double eyeball(double x, double y, double z) {
    double ax = Math.abs(x) - .33;
    return Field.length(ax, y - .05, z - .60) - .195;
  }

  /** Below 1 inside the opening between the lids. */
  private double opening(double ax, double y) {
    double u = (ax - .335) / .168;
    double v = (y - .045 - .03 * u) / ((.088 - .018 * smile) * looks.eyes());
    return u * u + v * v;
  }

  private double flesh(double x, double y, double z) {
    double ax = Math.abs(x);
    double d = Field.ellipsoid(x, y - .28, z + .08, .80, .92, .95);
    d = Field.join(d, Field.ellipsoid(x, y + .30, z - .10, .645 * looks.jaw(), .78, .70), .25);
    double neck =
        Field.rod(x, y, z, new double[] {0, -.5, -.16}, new double[] {0, -1.75, -.26}, .36, .40);
    if (Math.min(d, neck) > .45) {
      return Math.min(d, neck) - .3; // too far off for features to matter
    }
    d = Field.join(d, Field.length(x * .85, y + .88, z - .48) - .20, .24);
    d = z < .15 ? ears(d, ax, y, z) : face(d, x, ax, y, z);
    return Field.join(d, neck, .18);
  }

  private double ears(double skull, double ax, double y, double z) {
    double ear = Field.ellipsoid(ax - .80 - .06 * y, y, z + .02, .08, .25, .16);
    ear = Field.cut(ear, .13 - Field.length(ax - .93, y - .02, z - .06), .05);
    return Field.join(skull, ear, .06);
  }

  private double face(double skull, double x, double ax, double y, double z) {
    double d = skull;
    d =
        Field.join(
            d, Field.length(ax - .40, y + .20 - .05 * smile, z - .47) - (.23 + .02 * smile), .2);
    d = Field.join(d, Field.ellipsoid(ax - .31, y - .27, z - .66, .26, .07, .12), .14);
    d = Field.cut(d, .205 - Field.length(ax - .33, y - .06, z - .95), .1);
    // lids
    double lid = Field.length(ax - .33, y - .05, z - .60) - .222;
    double gap = (1 - Math.sqrt(opening(ax, y))) * .09;
    if (z > .5) {
      lid = Field.cut(lid, gap, .03);
      d = Field.join(Field.cut(d, gap * .7 - .01, .04), lid, .05);
    }
    // nose
    double nose =
        Field.rod(x, y, z, new double[] {0, .17, .83}, new double[] {0, -.20, 1.02}, .075, .095);
    nose = Field.join(nose, Field.length(x, y + .235, z - 1.0) - .115, .06);
    nose = Field.join(nose, Field.length(ax - .125, y + .265, z - .90) - .085, .06);
    d = Field.join(d, nose, .09);
    d = Field.cut(d, .035 - Field.length(ax - .06, y + .335, z - .985), .03);
    // mouth
    double yy = y + .57 - lift(ax);
    double front = .83 - .5 * x * x;
    d = Field.join(d, Field.ellipsoid(x, y + .56, z - .60, .36, .26, .24), .15);
    double upper = Field.ellipsoid(ax - .09, yy - .04 - open * .035, z - front, .19, .05, .06);
    double lower = Field.ellipsoid(x, yy + .065 + open * .045, z - front, .22, .062, .075);
    d = Field.join(d, Math.min(upper, lower), .05);
    double slit =
        Field.ellipsoid(x, yy + .005, z - front - .03, .27 + .05 * smile, .012 + .055 * open, .12);
    d = Field.cut(d, -slit, .02);
    d = ears(d, ax, y, z);
    if (looks.beard() > .5) {
      double beard = Field.ellipsoid(x, y + .72, z - .30, .56 * looks.jaw(), .40, .50);
      d = Field.join(d, beard + .01 * Noise.at(x * 30, y * 12, z * 30), .12);
    }
    return d;
  }

  private double hair(double x, double y, double z, double nearer) {
    double ax = Math.abs(x);
    double d = Field.ellipsoid(x, y - .34, z + .13, .87, 1.0, 1.02);
    double face = Field.ellipsoid(x, y + .32, z - .95, .74, 1.06, .82);
    d = Field.cut(d, -face, .12);
    if (looks.style() == Hair.SHORT) {
      d = Field.cut(d, -(y + .35 + .3 * z), .1);
      d = Field.cut(d, -Field.ellipsoid(ax - .85, y + .12, z - .05, .25, .42, .30), .1);
    } else {
      double fall = looks.style() == Hair.LONG ? -1.55 : -.62;
      double side =
          Field.rod(
              ax, y, z, new double[] {.66, .45, -.22}, new double[] {.70, fall, -.28}, .24, .20);
      d = Field.join(d, side, .25);
      double back =
          Field.rod(x, y, z, new double[] {0, .3, -.5}, new double[] {0, fall, -.5}, .5, .42);
      d = Field.join(d, back, .2);
      if (looks.style() == Hair.BOB) {
        d = Field.join(d, Field.ellipsoid(x, y - .86, z - .42, .62, .28, .40), .14);
      } else {
        d = Field.join(d, Field.ellipsoid(ax - .34, y - .92, z - .34, .42, .26, .42), .12);
      }
    }
    if (d > .12 || d > nearer + .05) {
      return d - .045;
    }
    double around = Noise.bearing(x, z + .2);
    double strand = Noise.at(around * 34, y * 2.2) + .5 * Noise.at(around * 90, y * 4);
    return d + .045 - .06 * strand;
  }

  private double hat(double x, double y, double z) {
    switch (hat) {
      case STRAW:
        {
          double dome = Field.ellipsoid(x, y - .75, z + .12, .95, .82, 1.05);
          dome = Field.cut(dome, .72 - y, .05);
          double r = Math.sqrt(x * x + (z + .1) * (z + .1));
          double brim = Field.drum(x, y - .74 + .10 * r * r * .3, z + .1, 1.75, .03, .02);
          return Field.join(dome, brim, .08) + .008 * Noise.at(x * 30, y * 30, z * 30);
        }
      case WOOL:
        {
          double cap = Field.ellipsoid(x, y - .50, z + .15, .95, 1.05, 1.08);
          cap = Field.cut(cap, .62 - y - .15 * z, .05);
          double rim = Field.ring(x, y - .66 + .12 * z, z + .13, .86, .13);
          double ball = Field.length(x, y - 1.62, z + .2) - .26;
          return Math.min(Field.join(cap, rim, .05), ball) + .03 * Noise.at(x * 14, y * 10, z * 14);
        }
      default:
        {
          double r = Math.sqrt(x * x + (z + .1) * (z + .1));
          double cone = (r - (2.05 - y) * .42) * .9;
          return Math.max(cone, Math.max(1.15 - y, y - 2.05));
        }
    }
  }

  @Override
  void surface(double px, double py, double pz, Surface out) {
    double dx = (px - x) / scale;
    double dy = (py - y) / scale;
    double dz = (pz - z) / scale;
    double lx = dx * turn[0] + dy * turn[1] + dz * turn[2];
    double ly = dx * turn[3] + dy * turn[4] + dz * turn[5];
    double lz = dx * turn[6] + dy * turn[7] + dz * turn[8];
    double flesh = flesh(lx, ly, lz);
    double hairs = hair(lx, ly, lz, 9);
    double eye = eyeball(lx, ly, lz);
    double worn = hat == Hat.NONE ? 9 : hat(lx, ly, lz);
    if (worn < flesh && worn < hairs) {
      dyeHat(lx, ly, lz, out);
    } else if (eye < flesh && eye < hairs) {
      dyeEye(lx, ly, out);
    } else if (hairs < flesh) {
      dyeHair(lx, ly, lz, out);
    } else {
      dyeSkin(lx, ly, lz, out);
    }
  }

  private void dyeHat(double x, double y, double z, Surface out) {
    switch (hat) {
      case STRAW -> {
        out.dye(STRAW);
        double r = Math.sqrt(x * x + z * z);
        out.times(.75 + .3 * Noise.at(r * 28, y * 28) + .15 * Noise.at(x * 60, z * 60));
        if (y > .80 && y < 1.0) {
          out.dye(WOOL);
        }
      }
      case WOOL -> {
        out.dye(WOOL);
        double turnAround = Noise.bearing(x, z);
        out.times(.7 + .35 * Noise.at(turnAround * 26, y * 14));
        if (y > .95 && y < 1.1) {
          out.mix(WHITE, .8);
        }
      }
      default -> {
        out.dye(PARTY);
        double band = Noise.bearing(x, z) * 1.4 + y * 4;
        if (band - Math.floor(band) < .3) {
          out.dye(GOLD);
        }
      }
    }
  }

  private void dyeHair(double x, double y, double z, Surface out) {
    out.dye(hair);
    double around = Noise.bearing(x, z + .2);
    out.times(.55 + .55 * Noise.at(around * 60, y * 3) + .3 * Noise.at(around * 160, y * 5));
    out.gloss = .12;
  }

  private void dyeEye(double x, double y, Surface out) {
    double ax = x - Math.copySign(.33, x);
    double r = Math.sqrt(ax * ax + (y - .05) * (y - .05));
    out.dye(WHITE);
    out.times(.82);
    double irisSize = .098 * Math.sqrt(looks.eyes());
    if (r < irisSize) {
      out.dye(iris);
      out.times(.55 + .6 * Noise.at(Noise.bearing(ax, y - .05) * 9, r * 20));
      out.mix(DARK, (r / irisSize - .78) * 4);
    }
    if (r < .042) {
      out.dye(DARK);
    }
    // the lid's shadow
    out.mix(DARK, (y - .085) * 9);
    double cx = ax + .032;
    double cy = y - .088;
    if (cx * cx + cy * cy < .0005) {
      out.dye(WHITE);
      out.glow = .9;
    }
    out.gloss = .5;
  }

  private void dyeSkin(double x, double y, double z, Surface out) {
    double ax = Math.abs(x);
    out.dye(skin);
    out.soft = .55;
    out.gloss = .07;
    out.times(.94 + .12 * Noise.cloud(x * 9, y * 9, z * 9, 3));
    double cheek = 1 - Field.length(ax - .42, y + .24, (z - .7) * .6) / .34;
    out.mix(flush, Math.max(0, cheek) * .75);
    out.mix(flush, Math.max(0, 1 - Field.length(x, y + .24, z - 1.05) / .2) * .6);
    out.mix(flush, Math.max(0, ax - .74) * 3);
    if (z > .4) {
      double freckle = Noise.at(x * 38, y * 38, 3);
      if (freckle > .8 && Math.abs(y + .15) < .2 && looks.eyes() > 1.05) {
        out.mix(flush, (freckle - .8) * 3);
      }
      double arch = .285 + .10 * (1 - 12 * (ax - .32) * (ax - .32)) - .02;
      double wide = Math.abs(ax - .34);
      double hairs = Noise.at(x * 70 + y * 25, y * 40);
      double browness =
          (1 - Math.abs(y - arch) / (.048 - .06 * Math.max(0, ax - .34))) * (wide < .22 ? 1 : 0);
      out.mix(brow, Math.max(0, browness) * (.65 + .8 * hairs));
      double opening = opening(ax, y);
      if (opening < 2.4) {
        double lash = y > .05 ? 1.1 : .45;
        out.mix(DARK, lash * Math.max(0, 1 - Math.abs(opening - 1.05) / .34));
      }
      // crease above the lid
      double crease = Math.abs(Math.sqrt(opening) - 1.75);
      if (y > .06) {
        out.mix(flush, Math.max(0, .35 - crease) * 1.2);
      }
      dyeMouth(x, y, z, out);
      if (Field.length(ax - .062, y + .335, z - .98) < .055) {
        out.mix(DARK, .75);
      }
    }
    if (looks.beard() > 0 && y < -.15 && z > -.1) {
      double edge = Math.min(1, Math.max(0, (-y - .38 + .35 * (ax - .35)) * 5));
      double moustache = y > -.52 && y < -.38 && ax < .34 ? 1 : 0;
      double clearing = Field.ellipsoid(x, y + .57, 0, .27, .10, 1) < 0 ? 0 : 1;
      double bristle = .45 + .75 * Noise.at(x * 60, y * 24, z * 60);
      if (y > -1.12) {
        out.mix(hair, Math.max(edge, moustache) * clearing * bristle * looks.beard());
      }
    }
  }

  private void dyeMouth(double x, double y, double z, Surface out) {
    double ax = Math.abs(x);
    double yy = y + .57 - lift(ax);
    double width = .265 + .05 * smile;
    double taper = 1 - (ax / width) * (ax / width);
    if (taper <= 0) {
      return;
    }
    double gap = (.014 + .055 * open) * Math.sqrt(taper);
    double top = gap + .062 * Math.sqrt(taper) * (.8 + .6 * ax);
    double bottom = gap + .085 * Math.sqrt(taper);
    if (yy < top && yy > -bottom) {
      out.mix(lips, .9);
      out.times(.9 + .2 * Noise.at(x * 60, y * 8));
      out.gloss = .22;
    }
    if (Math.abs(yy) < gap) {
      if (open > .2 && yy > -gap * .5) {
        out.dye(WHITE);
        out.times(.72 + .12 * Noise.at(x * 14, 2));
        out.gloss = .3;
      } else {
        out.dye(DARK);
        out.mix(lips, .25);
      }
    }
  }
}
