package org.daymount.sample;

import java.util.stream.IntStream;

/** What glass and hand do to a picture, in linear light: soft depth, smear, glow, rain. */
final class Lens {
  private Lens() {}

  /** Softens what is out of focus; nearer sharp things do not bleed into the soft ground. */
  static void soften(Exposure e, View view) {
    if (view.aperture() <= 0) {
      return;
    }
    double size = Math.max(e.width, e.height) / 2000.0;
    int n = e.width * e.height;
    float[] circle = new float[n];
    for (int i = 0; i < n; i++) {
      double c = view.aperture() * Math.abs(1 / Math.max(.05, e.depth[i]) - 1 / view.focus());
      circle[i] = (float) (c * size);
    }
    double[] steps = {2.2 * size, 6 * size, 14 * size, 30 * size};
    float[][] sharp = {e.red.clone(), e.green.clone(), e.blue.clone()};
    float[][] out = {e.red, e.green, e.blue};
    double previous = .8 * size;
    for (double step : steps) {
      double lower = previous;
      float[] weight = new float[n];
      boolean any = false;
      for (int i = 0; i < n; i++) {
        float w = (float) Sky.smooth((circle[i] - lower * .6) / (step * .5));
        weight[i] = w;
        any |= w > 0;
      }
      if (!any) {
        break;
      }
      float[] total = blurred(weight, e.width, e.height, step);
      for (int c = 0; c < 3; c++) {
        float[] plane = new float[n];
        for (int i = 0; i < n; i++) {
          plane[i] = sharp[c][i] * weight[i];
        }
        plane = blurred(plane, e.width, e.height, step);
        for (int i = 0; i < n; i++) {
          double share = Sky.smooth((circle[i] - lower) / (step - lower));
          if (share > 0 && total[i] > 1e-4f) {
            out[c][i] += (float) ((plane[i] / total[i] - out[c][i]) * share);
          }
        }
      }
      previous = step;
    }
  }

  /** Three box passes: close to a Gaussian of this standard deviation in pixels. */
  static float[] blurred(float[] plane, int width, int height, double sigma) {
    int radius = Math.max(1, (int) Math.round(Math.sqrt(sigma * sigma * 4 + 1) / 2));
    float[] a = plane.clone();
    float[] b = new float[plane.length];
    for (int pass = 0; pass < 3; pass++) {
      boxRows(a, b, width, height, radius);
      boxColumns(b, a, width, height, radius);
    }
    return a;
  }

  private static void boxRows(float[] from, float[] to, int width, int height, int radius) {
    IntStream.range(0, height)
        .parallel()
        .forEach(
            row -> {
              int o = row * width;
              double sum = 0;
              for (int k = -radius; k <= radius; k++) {
                sum += from[o + Math.max(0, Math.min(width - 1, k))];
              }
              for (int x = 0; x < width; x++) {
                to[o + x] = (float) (sum / (2 * radius + 1));
                sum += from[o + Math.min(width - 1, x + radius + 1)];
                sum -= from[o + Math.max(0, x - radius)];
              }
            });
  }

  private static void boxColumns(float[] from, float[] to, int width, int height, int radius) {
    int bands = 16;
    IntStream.range(0, bands)
        .parallel()
        .forEach(
            band -> {
              int left = width * band / bands;
              int right = width * (band + 1) / bands;
              double[] sum = new double[right - left];
              for (int k = -radius; k <= radius; k++) {
                int o = Math.max(0, Math.min(height - 1, k)) * width;
                for (int x = left; x < right; x++) {
                  sum[x - left] += from[o + x];
                }
              }
              for (int y = 0; y < height; y++) {
                int add = Math.min(height - 1, y + radius + 1) * width;
                int drop = Math.max(0, y - radius) * width;
                for (int x = left; x < right; x++) {
                  to[y * width + x] = (float) (sum[x - left] / (2 * radius + 1));
                  sum[x - left] += from[add + x];
                  sum[x - left] -= from[drop + x];
                }
              }
            });
  }

  /**
   * Smears only the subject, before the ground that stays sharp.
   *
   * @param empty the same view without the subject
   * @param dx smear to the right in pixels; with dy 0 and dx 0, out of focus by {@code soft} pixels
   */
  static void smear(Exposure e, Exposure empty, double dx, double dy, double soft) {
    int n = e.width * e.height;
    float[] mask = new float[n];
    for (int i = 0; i < n; i++) {
      mask[i] = e.subject[i] ? 1 : 0;
    }
    float[][] planes = {e.red, e.green, e.blue};
    float[][] ground = {empty.red, empty.green, empty.blue};
    float[] alpha = spread(mask, e, dx, dy, soft);
    for (int c = 0; c < 3; c++) {
      float[] premultiplied = new float[n];
      for (int i = 0; i < n; i++) {
        premultiplied[i] = planes[c][i] * mask[i];
      }
      float[] moved = spread(premultiplied, e, dx, dy, soft);
      for (int i = 0; i < n; i++) {
        planes[c][i] = moved[i] + ground[c][i] * (1 - alpha[i]);
      }
    }
  }

  private static float[] spread(float[] plane, Exposure e, double dx, double dy, double soft) {
    float[] out = soft > 0 ? blurred(plane, e.width, e.height, soft) : plane;
    int taps = (int) Math.ceil(Math.max(Math.abs(dx), Math.abs(dy)));
    if (taps == 0) {
      return out;
    }
    float[] from = out;
    float[] to = new float[plane.length];
    IntStream.range(0, e.height)
        .parallel()
        .forEach(
            y -> {
              for (int x = 0; x < e.width; x++) {
                float sum = 0;
                for (int k = 0; k <= taps; k++) {
                  double s = (double) k / taps - .5;
                  int sx = Math.max(0, Math.min(e.width - 1, (int) Math.round(x + dx * s)));
                  int sy = Math.max(0, Math.min(e.height - 1, (int) Math.round(y + dy * s)));
                  sum += from[sy * e.width + sx];
                }
                to[y * e.width + x] = sum / (taps + 1);
              }
            });
    return to;
  }

  /** Smears everything: the hand moved. */
  static void shake(Exposure e, double dx, double dy, double soft) {
    float[][] planes = {e.red, e.green, e.blue};
    for (float[] plane : planes) {
      float[] moved = spread(plane, e, dx, dy, soft);
      System.arraycopy(moved, 0, plane, 0, plane.length);
    }
  }

  /** Light spilling round what is bright. */
  static void bloom(Exposure e, double threshold, double strength) {
    float[][] planes = {e.red, e.green, e.blue};
    double size = Math.max(e.width, e.height) / 2000.0;
    for (float[] plane : planes) {
      float[] bright = new float[plane.length];
      for (int i = 0; i < plane.length; i++) {
        bright[i] = (float) Math.max(0, Math.min(plane[i], 5) - threshold);
      }
      float[] near = blurred(bright, e.width, e.height, 7 * size);
      float[] far = blurred(bright, e.width, e.height, 40 * size);
      for (int i = 0; i < plane.length; i++) {
        plane[i] += (float) (strength * (near[i] * .4 + far[i] * .6));
      }
    }
  }

  /** Drops on a pane in front of a soft garden: each shows the picture upside down. */
  static void rain(Exposure e, int seed) {
    double size = Math.max(e.width, e.height) / 2000.0;
    float[][] planes = {e.red, e.green, e.blue};
    float[][] behind = new float[3][];
    float[][] soft = new float[3][];
    for (int c = 0; c < 3; c++) {
      soft[c] = blurred(planes[c], e.width, e.height, 11 * size);
      behind[c] = blurred(planes[c], e.width, e.height, 2.5 * size);
      System.arraycopy(soft[c], 0, planes[c], 0, soft[c].length);
    }
    double[] grids = {120, 64, 30, 17};
    for (int g = 0; g < grids.length; g++) {
      drops(e, planes, behind, grids[g] * size, seed + g, g == 0 ? .55 : g == 1 ? .62 : .5);
    }
  }

  private static void drops(
      Exposure e, float[][] planes, float[][] behind, double cell, int seed, double chance) {
    IntStream.range(0, e.height)
        .parallel()
        .forEach(
            y -> {
              for (int x = 0; x < e.width; x++) {
                int cx = (int) Math.floor(x / cell);
                int cy = (int) Math.floor(y / cell);
                if (Noise.hash(cx, cy, seed) > chance) {
                  continue;
                }
                double r = cell * (.16 + .22 * Noise.hash(cx, cy, seed + 50));
                double mx = (cx + .4 + .2 * Noise.hash(cx, cy, seed + 60)) * cell;
                double my = (cy + .4 + .2 * Noise.hash(cx, cy, seed + 70)) * cell;
                double ux = (x - mx) / r;
                double uy = (y - my) / (r * 1.18);
                ux *= 1 + .25 * uy;
                double d = ux * ux + uy * uy + .25 * (Noise.at(ux * 1.6 + cx, uy * 1.6 + cy) - .5);
                if (d >= 1) {
                  continue;
                }
                int sx = (int) Math.max(0, Math.min(e.width - 1, mx - ux * cell * 2.2));
                int sy = (int) Math.max(0, Math.min(e.height - 1, my - uy * cell * 2.6));
                double rim = 1 - .75 * Sky.smooth((d - .45) / .55);
                double shine = Math.max(0, 1 - Field.length(ux + .35, uy + .42, 0) / .26);
                double cover = Sky.smooth((1 - d) * 7);
                for (int c = 0; c < 3; c++) {
                  int at = y * e.width + x;
                  double v = behind[c][sy * e.width + sx] * (.55 + .75 * rim) + shine * .9;
                  planes[c][at] += (float) ((v - planes[c][at]) * cover);
                }
              }
            });
  }
}
