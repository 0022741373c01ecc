package org.daymount.image.jpeg;

/**
 * The 8 by 8 frequencies of a block (A.3.3). The first, DC, is the block's mean; the others, AC,
 * tell how it changes across (column) and down (row).
 */
final class Block {
  static final int SIDE = 8;
  static final int COEFFICIENTS = 64;

  /** Where in the block, row by row, the n-th stored coefficient belongs (A.3.6, figure A.6). */
  static final int[] ZIGZAG = zigzag();

  private Block() {}

  /** Diagonal by diagonal, alternately up and down. */
  private static int[] zigzag() {
    int[] order = new int[COEFFICIENTS];
    int n = 0;
    for (int diagonal = 0; diagonal < 2 * SIDE - 1; diagonal++) {
      for (int step = 0; step <= diagonal; step++) {
        int row = diagonal % 2 == 0 ? diagonal - step : step;
        int column = diagonal - row;
        if (row < SIDE && column < SIDE) {
          order[n++] = row * SIDE + column;
        }
      }
    }
    return order;
  }
}
