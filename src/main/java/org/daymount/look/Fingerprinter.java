package org.daymount.look;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes fingerprints: the signs of brightness differences between neighbour cells (Krawetz 2013, in
 * both directions) and the colour moments of a 3 by 3 grid (Stricker and Orengo 1995: mean,
 * standard deviation, cube root of the third central moment; here of sRGB values).
 */
final class Fingerprinter {
  private static final int CELLS = 8;
  private static final int GRID = 3;

  private Fingerprinter() {}

  /**
   * @param small a copy of the picture, long edge about 160
   */
  static Fingerprint of(Rgb small) {
    Plane luma = small.luma();
    Plane wide = Span.average(luma, CELLS + 1, CELLS);
    Plane tall = Span.average(luma, CELLS, CELLS + 1);
    long horizontal = 0;
    long vertical = 0;
    for (int y = 0; y < CELLS; y++) {
      for (int x = 0; x < CELLS; x++) {
        long bit = 1L << (y * CELLS + x);
        horizontal |= wide.at(x, y) < wide.at(x + 1, y) ? bit : 0;
        vertical |= tall.at(x, y) < tall.at(x, y + 1) ? bit : 0;
      }
    }
    return new Fingerprint(horizontal, vertical, moments(small), Miniature.of(luma));
  }

  private static List<Float> moments(Rgb small) {
    List<Float> moments = new ArrayList<>();
    for (int row = 0; row < GRID; row++) {
      for (int column = 0; column < GRID; column++) {
        for (Plane channel : List.of(small.red(), small.green(), small.blue())) {
          addMoments(channel, column, row, moments);
        }
      }
    }
    return moments;
  }

  private static void addMoments(Plane channel, int column, int row, List<Float> out) {
    int left = column * channel.width() / GRID;
    int top = row * channel.height() / GRID;
    int right = Math.max(left + 1, (column + 1) * channel.width() / GRID);
    int bottom = Math.max(top + 1, (row + 1) * channel.height() / GRID);
    double count = (right - left) * (double) (bottom - top);
    double mean = 0;
    for (int y = top; y < bottom; y++) {
      for (int x = left; x < right; x++) {
        mean += channel.at(x, y) / count;
      }
    }
    double second = 0;
    double third = 0;
    for (int y = top; y < bottom; y++) {
      for (int x = left; x < right; x++) {
        double off = channel.at(x, y) - mean;
        second += off * off / count;
        third += off * off * off / count;
      }
    }
    out.add((float) (mean / 255));
    out.add((float) (Math.sqrt(second) / 255));
    out.add((float) ((Math.cbrt(third) / 255 + 1) / 2));
  }
}
