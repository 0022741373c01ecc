package org.daymount.image;

/** Matrices of 3 by 3, as rows of columns. */
public final class Matrix3 {
  private Matrix3() {}

  /** By cofactors; only of one that has an inverse. */
  public static double[][] inverse(double[][] m) {
    double[][] inverse = new double[3][3];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        inverse[column][row] = cofactor(m, row, column);
      }
    }
    double determinant =
        m[0][0] * inverse[0][0] + m[0][1] * inverse[1][0] + m[0][2] * inverse[2][0];
    for (double[] row : inverse) {
      for (int column = 0; column < 3; column++) {
        row[column] /= determinant;
      }
    }
    return inverse;
  }

  private static double cofactor(double[][] m, int row, int column) {
    int r1 = (row + 1) % 3;
    int r2 = (row + 2) % 3;
    int c1 = (column + 1) % 3;
    int c2 = (column + 2) % 3;
    return m[r1][c1] * m[r2][c2] - m[r1][c2] * m[r2][c1];
  }
}
