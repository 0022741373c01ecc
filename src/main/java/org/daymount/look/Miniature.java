package org.daymount.look;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A picture as 32 by 32 brightnesses, stretched to a square, for finding one picture in another: a
 * closer crop, or the same in other light. Compared by normalised cross-correlation (Lewis, "Fast
 * normalized cross-correlation", 1995) over all places and sizes, which does not hear brightness
 * and contrast.
 *
 * @param lumas 1,024 bytes, row by row from the top left, 0 to 255; or none
 */
public record Miniature(byte[] lumas) {
  /** Of a picture that nobody made one of: nothing is found in it. */
  public static final Miniature NONE = new Miniature(new byte[0]);

  private static final int SIDE = 32;
  private static final int PART = 12; // cells a side at which two are compared
  private static final double SMALLEST = 0.4; // of the whole's sides
  private static final double EVEN = 24; // of all contrast in the cells; less is an even wall

  public Miniature {
    if (lumas.length != 0 && lumas.length != SIDE * SIDE) {
      throw new IllegalArgumentException("no miniature has " + lumas.length + " cells");
    }
    lumas = lumas.clone();
  }

  /** A copy. */
  @Override
  public byte[] lumas() {
    return lumas.clone();
  }

  static Miniature of(Plane luma) {
    float[] values = Span.average(luma, SIDE, SIDE).values();
    byte[] lumas = new byte[values.length];
    for (int i = 0; i < lumas.length; i++) {
      lumas[i] = (byte) Math.max(0, Math.min(255, Math.round(values[i])));
    }
    return new Miniature(lumas);
  }

  /**
   * How much another picture looks like a part of this one, or like all of it: 1 for the same, some
   * .5 for any two.
   *
   * @param aspect the other's width over its height, in parts of this one's
   */
  public double shows(Miniature other, double aspect) {
    if (lumas.length == 0 || other.lumas.length == 0) {
      return 0;
    }
    double[] part = lessItsMean(other.cells(PART, PART));
    double contrast = contrast(part);
    double best = 0;
    for (int cells = PART; SMALLEST * cells <= PART; cells++) {
      int across = (int) Math.round(aspect < 1 ? cells / aspect : cells);
      int down = (int) Math.round(aspect > 1 ? cells * aspect : cells);
      best = Math.max(best, best(cells(across, down), across, down, part, contrast));
    }
    return best;
  }

  private static double best(float[] whole, int across, int down, double[] part, double contrast) {
    double best = 0;
    for (int y = 0; y + PART <= down; y++) {
      for (int x = 0; x + PART <= across; x++) {
        best = Math.max(best, alike(whole, y * across + x, across, part, contrast));
      }
    }
    return best;
  }

  private static double alike(
      float[] whole, int from, int across, double[] part, double contrastOfPart) {
    double sum = 0;
    double squares = 0;
    double products = 0;
    for (int y = 0; y < PART; y++) {
      for (int x = 0; x < PART; x++) {
        double there = whole[from + y * across + x];
        sum += there;
        squares += there * there;
        products += there * part[y * PART + x];
      }
    }
    double contrast = Math.sqrt(Math.max(0, squares - sum * sum / (PART * PART)));
    return products / ((contrast + EVEN) * (contrastOfPart + EVEN));
  }

  private float[] cells(int across, int down) {
    Plane plane = Plane.empty(SIDE, SIDE);
    for (int i = 0; i < lumas.length; i++) {
      plane.values()[i] = lumas[i] & 0xff;
    }
    return Span.average(plane, across, down).values();
  }

  private static double[] lessItsMean(float[] values) {
    double sum = 0;
    for (float value : values) {
      sum += value;
    }
    double mean = sum / values.length;
    return IntStream.range(0, values.length).mapToDouble(i -> values[i] - mean).toArray();
  }

  private static double contrast(double[] lessItsMean) {
    double squares = 0;
    for (double value : lessItsMean) {
      squares += value * value;
    }
    return Math.sqrt(squares);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Miniature miniature && Arrays.equals(miniature.lumas, lumas);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(lumas);
  }
}
