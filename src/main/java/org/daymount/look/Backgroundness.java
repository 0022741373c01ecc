package org.daymount.look;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import org.daymount.image.Matrix3;

/**
 * How little a pixel's colour is like the picture's border: the Mahalanobis distance to each of the
 * four border strips, the strip it is least like left out because the subject may touch it (the
 * backgroundness cue of Zhang et al. 2015).
 */
final class Backgroundness {
  private static final double STRIP = 0.1; // of the shorter side
  private static final int NARROWEST_STRIP = 2;
  private static final double SPREAD_FLOOR =
      5; // L*a*b* squared, so that flat strips can be inverted

  private Backgroundness() {}

  /** 0 like the border, 1 least like it. */
  static Plane of(Lab lab) {
    int width = lab.light().width();
    int height = lab.light().height();
    int strip =
        Math.min(
            Math.min(width, height),
            Math.max(NARROWEST_STRIP, (int) (STRIP * Math.min(width, height))));
    List<Plane> far = new ArrayList<>();
    for (Rectangle where :
        List.of(
            new Rectangle(0, 0, strip, height),
            new Rectangle(width - strip, 0, strip, height),
            new Rectangle(0, 0, width, strip),
            new Rectangle(0, height - strip, width, strip))) {
      far.add(distance(lab, where).stretched());
    }
    Plane sum = Plane.empty(width, height);
    for (int i = 0; i < sum.values().length; i++) {
      float all = 0;
      float largest = 0;
      for (Plane plane : far) {
        all += plane.values()[i];
        largest = Math.max(largest, plane.values()[i]);
      }
      sum.values()[i] = all - largest;
    }
    return sum.stretched();
  }

  private static Plane distance(Lab lab, Rectangle strip) {
    Plane[] planes = lab.planes();
    int width = lab.light().width();
    double[] mean = new double[3];
    double[][] spread = new double[3][3];
    int count = strip.width * strip.height;
    for (int c = 0; c < 3; c++) {
      for (int y = strip.y; y < strip.y + strip.height; y++) {
        for (int x = strip.x; x < strip.x + strip.width; x++) {
          mean[c] += planes[c].at(x, y) / count;
        }
      }
    }
    for (int y = strip.y; y < strip.y + strip.height; y++) {
      for (int x = strip.x; x < strip.x + strip.width; x++) {
        for (int a = 0; a < 3; a++) {
          for (int b = 0; b < 3; b++) {
            spread[a][b] += (planes[a].at(x, y) - mean[a]) * (planes[b].at(x, y) - mean[b]) / count;
          }
        }
      }
    }
    for (int c = 0; c < 3; c++) {
      spread[c][c] += SPREAD_FLOOR;
    }
    double[][] inverse = Matrix3.inverse(spread);
    Plane out = Plane.empty(width, lab.light().height());
    double[] off = new double[3];
    for (int i = 0; i < out.values().length; i++) {
      double squared = 0;
      for (int c = 0; c < 3; c++) {
        off[c] = planes[c].values()[i] - mean[c];
      }
      for (int a = 0; a < 3; a++) {
        for (int b = 0; b < 3; b++) {
          squared += off[a] * inverse[a][b] * off[b];
        }
      }
      out.values()[i] = (float) Math.sqrt(Math.max(0, squared));
    }
    return out;
  }
}
