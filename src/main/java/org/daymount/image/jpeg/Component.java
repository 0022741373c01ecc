package org.daymount.image.jpeg;

import java.util.Arrays;

/**
 * One of a picture's planes (A.1.1): brightness or one of two colour differences, which may have
 * fewer samples than brightness has.
 */
final class Component {
  private static final byte GREY = (byte) 128;
  private static final int LARGEST_DC = 8 * 160; // a quarter more than there can be

  final int id;

  /** Sampling factors: blocks across and down in each minimum coded unit (A.2.3). */
  final int across;

  final int down;
  private final int table;

  private int blockSide;
  private int stride;
  private int left; // of the blocks that are wanted
  private int top;
  private int right;
  private int bottom;
  private int unitBottom;
  private byte[] samples;
  private byte[] blockMeans; // of the same blocks; null when they are not wanted
  private ProgressiveBlocks blocks;
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
   * @param wanted the part of the picture whose samples are made
   * @param alsoEighth whether the mean of each block is wanted beside them
   */
  void allocate(UnitWindow wanted, int blockSide, boolean alsoEighth) {
    this.blockSide = blockSide;
    left = wanted.left() * across;
    top = wanted.top() * down;
    right = wanted.right() * across;
    bottom = wanted.bottom() * down;
    unitBottom = wanted.bottom();
    stride = (right - left) * blockSide;
    samples = new byte[stride * (bottom - top) * blockSide];
    Arrays.fill(samples, GREY);
    if (alsoEighth) {
      blockMeans = new byte[(right - left) * (bottom - top)];
      Arrays.fill(blockMeans, GREY);
    }
  }

  /** The same at an eighth, as far as it was made on the way. */
  Component eighth() {
    Component small = new Component(id, across, down, table);
    small.stride = right - left;
    small.samples = blockMeans;
    return small;
  }

  /**
   * @param dc of a block that is wanted, multiplied by its step
   */
  void putMean(int blockX, int blockY, int dc) {
    if (blockMeans != null) {
      blockMeans[(blockY - top) * (right - left) + blockX - left] = ScaledIdct.ofFlatBlock(dc);
    }
  }

  /**
   * Takes the memory for the numbers that come in several scans.
   *
   * @param unitsPerRow of the whole picture; {@code unitRows} likewise
   * @param unitRowsKept at once
   */
  void allocateBlocks(ScaledIdct cells, int unitsPerRow, int unitRows, int unitRowsKept) {
    blocks =
        new ProgressiveBlocks(
            cells, unitsPerRow * across, unitRows * down, left, right, unitRowsKept * down);
  }

  /** Makes ready for scans of which a strip is kept; unit rows of the picture. */
  void beginStrip(int unitTop, int unitBottom) {
    this.unitBottom = unitBottom;
    blocks.begin(unitTop * down, unitBottom * down);
  }

  /** The first scan of a component settles its table (B.2.4.1: it may be redefined later). */
  void latch(int[][] quantizationTables) throws JpegRefused {
    if (quantization == null) {
      quantization = quantizationTables[table];
    }
    if (quantization == null) {
      throw new JpegDamaged("a table of its steps is missing");
    }
  }

  boolean isScanned() {
    return quantization != null;
  }

  /**
   * Whether a DC coefficient can be: it is 8 times the mean of its block, whose samples are -128 to
   * 127 (A.3.1, A.3.3), but for what rounding adds. Behind damage that breaks no code, steps from
   * one block to the next add up to others.
   */
  boolean canBe(int dc) {
    return Math.abs((long) dc * quantization[0]) <= LARGEST_DC + 2L * quantization[0];
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

  /** Whether the samples of a block are wanted. */
  boolean isWanted(int blockX, int blockY) {
    return blockX >= left && blockX < right && blockY >= top && blockY < bottom;
  }

  /** The first row of units of which nothing is wanted, nor of any below. */
  int unitBottom() {
    return unitBottom;
  }

  /** Where the first sample of a block that is wanted is. */
  int offset(int blockX, int blockY) {
    return (blockY - top) * blockSide * stride + (blockX - left) * blockSide;
  }

  /** Of a progressive picture. */
  ProgressiveBlocks blocks() {
    return blocks;
  }

  /**
   * Makes samples of what the scans told of a strip.
   *
   * @param cells null when DC coefficients alone were kept
   */
  void finishStrip(ScaledIdct cells, int unitTop, int unitBottom) {
    int[] block = new int[Block.COEFFICIENTS];
    for (int y = unitTop * down; y < unitBottom * down; y++) {
      for (int x = left; x < right; x++) {
        int kept = blocks.kept(x, y);
        if (cells == null) {
          samples[offset(x, y)] = ScaledIdct.ofFlatBlock(blocks.dc(kept) * quantization[0]);
        } else {
          blocks.read(kept, quantization, block);
          putMean(x, y, block[0]);
          cells.put(block, samples, offset(x, y), stride);
        }
      }
    }
  }

  /** Gives back the memory of what the scans told. */
  void forgetBlocks() {
    blocks = null;
  }
}
