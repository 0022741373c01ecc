package org.daymount.image.jpeg;

import java.util.Arrays;

/**
 * One of a picture's planes (A.1.1): brightness or one of two colour differences, which may have
 * fewer samples than brightness has.
 */
final class Component {
  private static final byte GREY = (byte) 128;

  final int id;

  /** Sampling factors: blocks across and down in each minimum coded unit (A.2.3). */
  final int across;

  final int down;
  private final int table;

  private int blockSide;
  private int stride;
  private int blocksPerRow;
  private byte[] samples;
  private short[] coefficients;
  private int coefficientsPerBlock;
  private int[] quantization;

  Component(int id, int across, int down, int table) {
    this.id = id;
    this.across = across;
    this.down = down;
    this.table = table;
  }

  /**
   * Takes the memory for its samples.
   *
   * @param blocksPerRow blocks stored, the last ones perhaps beyond the picture's edge
   * @param kept coefficients of each block that are kept because they come in several scans and are
   *     made samples at the end: 0, 1 (DC alone) or 64
   */
  void allocate(int blocksPerRow, int blockRows, int blockSide, int kept) {
    this.blockSide = blockSide;
    this.blocksPerRow = blocksPerRow;
    this.stride = blocksPerRow * blockSide;
    samples = new byte[stride * blockRows * blockSide];
    Arrays.fill(samples, GREY);
    coefficientsPerBlock = kept;
    coefficients = new short[blocksPerRow * blockRows * kept];
  }

  /** The first scan of a component settles its table (B.2.4.1: it may be redefined later). */
  void latch(int[][] quantizationTables) throws JpegRefused {
    if (quantization == null) {
      quantization = quantizationTables[table];
    }
    if (quantization == null) {
      throw new JpegRefused("a quantization table is missing");
    }
  }

  boolean isScanned() {
    return quantization != null;
  }

  /** Steps of the 64 coefficients, in zigzag order. */
  int[] quantization() {
    return quantization;
  }

  byte[] samples() {
    return samples;
  }

  int stride() {
    return stride;
  }

  /** Where the first sample of a block is. */
  int offset(int blockX, int blockY) {
    return blockY * blockSide * stride + blockX * blockSide;
  }

  /** The coefficients as far as they are known, row by row, not yet multiplied by their steps. */
  short[] coefficients() {
    return coefficients;
  }

  /** Where the first coefficient of a block is. */
  int coefficientsOf(int blockX, int blockY) {
    return (blockY * blocksPerRow + blockX) * coefficientsPerBlock;
  }

  /**
   * Makes samples of the coefficients.
   *
   * @param cells null when DC coefficients alone were kept
   */
  void finish(CellMeans cells) {
    int[] steps = new int[Block.COEFFICIENTS];
    for (int k = 0; k < steps.length; k++) {
      steps[Block.ZIGZAG[k]] = quantization[k];
    }
    int[] block = new int[Block.COEFFICIENTS];
    int blocks = coefficients.length / coefficientsPerBlock;
    for (int n = 0; n < blocks; n++) {
      int at = n * coefficientsPerBlock;
      if (cells == null) {
        samples[n] = CellMeans.ofFlatBlock(coefficients[at] * steps[0]);
        continue;
      }
      for (int i = 0; i < block.length; i++) {
        block[i] = coefficients[at + i] * steps[i];
      }
      cells.put(block, samples, offset(n % blocksPerRow, n / blocksPerRow), stride);
    }
    coefficients = null;
  }
}
