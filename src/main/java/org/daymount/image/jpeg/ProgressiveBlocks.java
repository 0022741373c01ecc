package org.daymount.image.jpeg;

import java.util.Arrays;

/**
 * What the scans of a progressive picture have told so far of one component's blocks. Numbers are
 * kept only where they are wanted: of the blocks of a strip of the window, the frequencies that a
 * reduction needs. Of all other coefficients one thing has to be known, because it decides how many
 * bits a later scan spends on a block (G.1.2.3): whether they are zero. So the memory is 8 bytes a
 * block of the picture and 2 bytes a number of the strip, however large the picture.
 */
final class ProgressiveBlocks {
  /** A block that is not in the strip. */
  static final int NOT_KEPT = -1;

  private final int[] slots = new int[Block.COEFFICIENTS];
  private final int slotsPerBlock;
  private final int blocksPerRow;
  private final long[] nonzero;
  private final int left;
  private final int right;
  private final short[] values;
  private int top;
  private int bottom;

  /**
   * @param cells null for an eighth, which needs the DC coefficients alone
   * @param blocksPerRow of the whole component; {@code blockRows} likewise
   * @param left the first block of a row that is kept; {@code right}: the first that is not
   * @param rowsKept block rows of a strip
   */
  ProgressiveBlocks(
      ScaledIdct cells, int blocksPerRow, int blockRows, int left, int right, int rowsKept) {
    this.blocksPerRow = blocksPerRow;
    this.left = left;
    this.right = right;
    int count = 0;
    for (int k = 0; k < slots.length; k++) {
      slots[k] = isNeeded(cells, k) ? count++ : NOT_KEPT;
    }
    slotsPerBlock = count;
    nonzero = new long[cells == null ? 0 : blocksPerRow * blockRows];
    values = new short[(right - left) * rowsKept * slotsPerBlock];
  }

  static int needed(ScaledIdct cells) {
    int count = 0;
    for (int k = 0; k < Block.COEFFICIENTS; k++) {
      count += isNeeded(cells, k) ? 1 : 0;
    }
    return count;
  }

  private static boolean isNeeded(ScaledIdct cells, int k) {
    int place = Block.ZIGZAG[k];
    return k == 0
        || cells != null && cells.hasSay(place / Block.SIDE) && cells.hasSay(place % Block.SIDE);
  }

  /** Forgets everything and goes to another strip. */
  void begin(int topRow, int bottomRow) {
    top = topRow;
    bottom = bottomRow;
    Arrays.fill(nonzero, 0);
    Arrays.fill(values, (short) 0);
  }

  /** For {@link #nonzero} and {@link #setNonzero}: which of the component's blocks it is. */
  int block(int blockX, int blockY) {
    return blockY * blocksPerRow + blockX;
  }

  /** Where its numbers begin, or {@link #NOT_KEPT}. */
  int kept(int blockX, int blockY) {
    return blockX < left || blockX >= right || blockY < top || blockY >= bottom
        ? NOT_KEPT
        : ((blockY - top) * (right - left) + blockX - left) * slotsPerBlock;
  }

  /** Bit k: the k-th coefficient in zigzag order is not zero. */
  long nonzero(int block) {
    return nonzero[block];
  }

  void setNonzero(int block, long bits) {
    nonzero[block] = bits;
  }

  /** Not yet multiplied by its step; for a block that is kept, else nothing happens. */
  void put(int kept, int k, int value) {
    if (kept != NOT_KEPT && slots[k] != NOT_KEPT) {
      values[kept + slots[k]] = (short) value;
    }
  }

  /** One more bit of the DC coefficient. */
  void addToDc(int kept, int bits) {
    if (kept != NOT_KEPT) {
      values[kept] |= (short) bits;
    }
  }

  /** One more bit of a coefficient that is not zero, away from zero. */
  void grow(int kept, int k, int bit) {
    if (kept == NOT_KEPT || slots[k] == NOT_KEPT) {
      return;
    }
    int at = kept + slots[k];
    int before = values[at];
    if ((before & bit) == 0) {
      values[at] = (short) (before > 0 ? before + bit : before - bit);
    }
  }

  int dc(int kept) {
    return values[kept];
  }

  /**
   * @param steps of the 64 coefficients, in zigzag order
   * @param block takes the coefficients, row by row
   */
  void read(int kept, int[] steps, int[] block) {
    for (int k = 0; k < slots.length; k++) {
      if (slots[k] != NOT_KEPT) {
        block[Block.ZIGZAG[k]] = values[kept + slots[k]] * steps[k];
      }
    }
  }
}
