package org.daymount.look;

import java.util.Arrays;
import org.daymount.unit.PixelSize;

/**
 * How much each part of a picture matters, on a coarse grid laid over the upright picture; row by
 * row from the top left. The weights are at least 0 and add up to 1.
 */
public final class SaliencyMap {
  private final int columns;
  private final int rows;
  private final float[] weights;

  public SaliencyMap(int columns, int rows, float[] weights) {
    if (columns < 1 || rows < 1 || weights.length != columns * rows) {
      throw new IllegalArgumentException(
          weights.length + " weights do not fill a grid of " + columns + " by " + rows);
    }
    double sum = 0;
    for (float weight : weights) {
      if (!(weight >= 0)) {
        throw new IllegalArgumentException("a weight is below zero: " + weight);
      }
      sum += weight;
    }
    this.columns = columns;
    this.rows = rows;
    this.weights = new float[weights.length];
    for (int i = 0; i < weights.length; i++) {
      this.weights[i] = sum > 0 ? (float) (weights[i] / sum) : 1f / weights.length;
    }
  }

  private SaliencyMap(float[] shares, int columns, int rows) {
    this.columns = columns;
    this.rows = rows;
    this.weights = shares;
  }

  /**
   * A map as it was, bit for bit.
   *
   * @param shares from {@link #shares}
   */
  public static SaliencyMap ofShares(int columns, int rows, float[] shares) {
    new SaliencyMap(columns, rows, shares); // is checked as any other
    return new SaliencyMap(shares.clone(), columns, rows);
  }

  /** The weights, row by row; they add up to 1. */
  public float[] shares() {
    return weights.clone();
  }

  public static SaliencyMap even(int columns, int rows) {
    return new SaliencyMap(columns, rows, new float[columns * rows]);
  }

  public int columns() {
    return columns;
  }

  public int rows() {
    return rows;
  }

  public double weight(int column, int row) {
    return weights[row * columns + column];
  }

  /** As it lies after the picture was turned a quarter clockwise. */
  private SaliencyMap turnedOnce() {
    float[] turned = new float[weights.length];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        turned[column * rows + rows - 1 - row] = weights[row * columns + column];
      }
    }
    return new SaliencyMap(rows, columns, turned);
  }

  SaliencyMap turned(int quarterTurns) {
    SaliencyMap turned = this;
    for (int i = 0; i < (quarterTurns & 3); i++) {
      turned = turned.turnedOnce();
    }
    return turned;
  }

  /** The weight of the cell that holds a pixel of the whole picture at the given size. */
  double weightAt(int x, int y, PixelSize picture) {
    return weight(
        (int) ((long) x * columns / picture.width()), (int) ((long) y * rows / picture.height()));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SaliencyMap map
        && map.columns == columns
        && Arrays.equals(map.weights, weights);
  }

  @Override
  public int hashCode() {
    return 31 * columns + Arrays.hashCode(weights);
  }
}
