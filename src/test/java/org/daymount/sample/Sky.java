package org.daymount.sample;

import java.util.ArrayList;
import java.util.List;

/** Gradient, clouds of noise lit by the sun, stars and moon, and islands on the horizon. */
final class Sky implements Backdrop {
  /** An island far off: azimuth and half width in degrees, height as a share of distance. */
  private record Island(
      double at, double half, double height, double[] dye, double far, int seed) {}

  private final Mood mood;
  private final double seed;
  private final double[] top;
  private final double[] low;
  private final double[] lit;
  private final double[] dark;
  private final double[] sun;
  private final double[] to;
  private final List<Island> islands = new ArrayList<>();
  private boolean rainbow;

  Sky(Mood mood, double seed) {
    this.mood = mood;
    this.seed = seed;
    top = Dye.rgb(mood.skyTop());
    low = Dye.rgb(mood.skyLow());
    lit = Dye.rgb(mood.cloudLit());
    dark = Dye.rgb(mood.cloudDark());
    sun = Dye.rgb(mood.sun());
    to = mood.sunDirection();
  }

  /** {@code far} 0 is near and full of colour, 1 has the colour of the haze. */
  Sky island(double at, double half, double height, int dye, double far, int seed) {
    islands.add(new Island(at, half, height, Dye.rgb(dye), far, seed));
    return this;
  }

  Sky withRainbow() {
    rainbow = true;
    return this;
  }

  @Override
  public void glow(double dx, double dy, double dz, double[] out) {
    double h = StrictMath.pow(Math.max(0, dy), .5);
    double toSun = Math.max(0, dx * to[0] + dy * to[1] + dz * to[2]);
    double wide = toSun * toSun;
    wide *= wide;
    for (int i = 0; i < 3; i++) {
      out[i] = low[i] + (top[i] - low[i]) * h;
      out[i] += sun[i] * mood.sunPower() * .13 * wide * wide * (1 - mood.clouds() * .5);
    }
  }

  @Override
  public void light(double dx, double dy, double dz, double[] out) {
    glow(dx, dy, dz, out);
    double toSun = dx * to[0] + dy * to[1] + dz * to[2];
    if (mood.night()) {
      stars(dx, dy, dz, out);
    }
    double sharp = Math.max(0, toSun);
    double disc = mood.night() ? .99985 : .9998;
    if (sharp > .9) {
      double halo = StrictMath.pow(sharp, 900) * .8 + StrictMath.pow(sharp, 60) * .18;
      for (int i = 0; i < 3; i++) {
        out[i] += sun[i] * mood.sunPower() * halo * (mood.night() ? .9 : 1);
      }
      if (sharp > disc) {
        double moonMark = mood.night() ? .6 + .5 * Noise.cloud(dx * 160, dy * 160, 3) : 1;
        for (int i = 0; i < 3; i++) {
          out[i] += sun[i] * (mood.night() ? 3.5 : 6) * moonMark;
        }
      }
    }
    if (dy > .004 && mood.clouds() > 0) {
      clouds(dx, dy, dz, sharp, out);
    }
    if (rainbow) {
      bow(toSun, dy, out);
    }
    if (!islands.isEmpty() && dy < .4) {
      land(dx, dy, dz, out);
    }
  }

  private void stars(double dx, double dy, double dz, double[] out) {
    double u = dx / (1 + dy) * 190;
    double v = dz / (1 + dy) * 190;
    int ui = (int) Math.floor(u);
    int vi = (int) Math.floor(v);
    double chance = Noise.hash(ui, vi, 91);
    if (chance > .86) {
      double sx = u - ui - .2 - .6 * Noise.hash(ui, vi, 92);
      double sy = v - vi - .2 - .6 * Noise.hash(ui, vi, 93);
      double bright = Math.max(0, 1 - (sx * sx + sy * sy) * 90) * (chance - .86) * 7;
      out[0] += bright * .5;
      out[1] += bright * .52;
      out[2] += bright * .6;
    }
    double band = Noise.cloud(u * .03, v * .03, 5);
    double way = Math.max(0, 1 - Math.abs(dx * .8 + dy * .5 - .25) * 3) * band;
    out[0] += way * .022;
    out[1] += way * .024;
    out[2] += way * .036;
  }

  private void clouds(double dx, double dy, double dz, double sharp, double[] out) {
    double scale = 1.15 / (dy + .09);
    double u = dx * scale + seed * 7.3;
    double v = dz * scale + seed * 3.1;
    double warp = Noise.cloud(u * .8 + 5, v * .8, 3);
    double body = Noise.cloud(u * 1.25 + warp, v * 1.25 + warp * .6, 6);
    double edge = 1.0 - mood.clouds();
    double cover = smooth((body - edge * .62 - .08) / .22) * smooth(dy / .07);
    if (cover <= 0) {
      return;
    }
    double shade =
        Noise.cloud(u * 1.25 + warp + to[0] * .25, v * 1.25 + warp * .6 + to[2] * .25, 4);
    double light = Math.max(0, Math.min(1, .62 + (body - shade) * 3.2));
    double silver = StrictMath.pow(sharp, 14) * (1 - cover * .7);
    for (int i = 0; i < 3; i++) {
      double c = dark[i] + (lit[i] - dark[i]) * light + sun[i] * silver * mood.sunPower() * .35;
      out[i] += (c - out[i]) * cover * .94;
    }
  }

  private static void bow(double toSun, double dy, double[] out) {
    double angle = StrictMath.toDegrees(StrictMath.acos(Math.max(-1, Math.min(1, -toSun))));
    double t = (angle - 38.5) / 4; // the bow stands 40 to 42 degrees from the shadow of the head
    if (t > 0 && t < 1 && dy > 0) {
      double strength = .2 * Math.min(1, 4 * t * (1 - t) * 1.5);
      out[0] += strength * Math.max(0, 1 - Math.abs(t - .8) * 3);
      out[1] += strength * Math.max(0, 1 - Math.abs(t - .5) * 3);
      out[2] += strength * 1.1 * Math.max(0, 1 - Math.abs(t - .22) * 3);
    }
  }

  private void land(double dx, double dy, double dz, double[] out) {
    double azimuth = StrictMath.toDegrees(StrictMath.atan2(dx, dz));
    double rise = dy / Math.sqrt(dx * dx + dz * dz);
    for (Island i : islands) {
      double off = (azimuth - i.at) / i.half;
      if (Math.abs(off) >= 1 || rise < -.02) {
        continue;
      }
      double dome = Math.sqrt(1 - off * off);
      double ridge = Noise.cloud(azimuth * .16 + i.seed * 31, i.seed, 5);
      double crag = Noise.cloud(azimuth * 1.7 + i.seed * 17, i.seed + 9, 4);
      double height = i.height * dome * (.35 + ridge * 1.1 + crag * .22);
      double inside = (height - rise) * 700;
      if (inside > 0) {
        double cover = Math.min(1, inside);
        double rock = Noise.cloud(azimuth * 3.1, rise * 220, 4);
        double slope = Noise.cloud(azimuth * .5 + 3, rise * 40 + i.seed, 3);
        for (int c = 0; c < 3; c++) {
          double tone = i.dye[c] * (.35 + rock * .75 + slope * .6);
          tone *= .5 + .5 * Math.min(1, mood.sunPower() / 2 + mood.ambient() * .4);
          double mist = i.far + (1 - i.far) * .35 * Math.max(0, 1 - rise / (height + 1e-6));
          tone += (low[c] - tone) * mist;
          out[c] += (tone - out[c]) * cover;
        }
      }
    }
  }

  static double smooth(double t) {
    double s = Math.max(0, Math.min(1, t));
    return s * s * (3 - 2 * s);
  }
}
