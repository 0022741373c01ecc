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
  private int[] dc;
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
   * @param dcLater whether DC coefficients come in several scans and are made samples at the end
   */
  void allocate(int blocksPerRow, int blockRows, int blockSide, boolean dcLater) {
    this.blockSide = blockSide;
    this.blocksPerRow = blocksPerRow;
    this.stride = blocksPerRow * blockSide;
    samples = new byte[stride * blockRows * blockSide];
    Arrays.fill(samples, GREY);
    dc = dcLater ? new int[blocksPerRow * blockRows] : null;
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

  /** The DC coefficients as far as they are known, not yet multiplied by their step. */
  int[] dc() {
    return dc;
  }

  int blocksPerRow() {
    return blocksPerRow;
  }

  /** Makes samples of the DC coefficients, one each. */
  void finishDc() {
    int[] step = quantization();
    for (int i = 0; i < dc.length; i++) {
      samples[i] = CellMeans.ofFlatBlock(dc[i] * step[0]);
    }
    dc = null;
  }
}
