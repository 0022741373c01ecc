package org.daymount.image.jpeg;

import java.io.IOException;
import java.util.Arrays;

/**
 * A scan of a sequential picture (F.2): each block complete, its DC coefficient and then the others
 * in zigzag order, each as "so many zeros, then this value", until "the rest is zero".
 */
final class BaselineScan extends ScanReader {
  private static final int ZEROS_ONLY = 15; // ZRL: sixteen zeros and no value

  private final ScaledIdct cells;
  private final HuffmanTable[] dcTables;
  private final int[][] acLookups;
  private final int[][] acSkips;
  private final HuffmanTable[] acTables;
  private final int[] block = new int[Block.COEFFICIENTS];

  /**
   * @param cells null for an eighth, where a block's only cell is its DC coefficient
   */
  BaselineScan(Frame frame, ScanHeader header, BitReader bits, ScaledIdct cells)
      throws IOException {
    super(frame, header, bits);
    this.cells = cells;
    int parts = header.parts().size();
    dcTables = new HuffmanTable[parts];
    acTables = new HuffmanTable[parts];
    acLookups = new int[parts][];
    acSkips = new int[parts][];
    for (int n = 0; n < parts; n++) {
      dcTables[n] = presentDc(header.parts().get(n).dc());
      acTables[n] = present(header.parts().get(n).ac());
      acLookups[n] = acTables[n].lookup();
      acSkips[n] = acTables[n].skipping();
    }
  }

  @Override
  void block(int n, Component component, int blockX, int blockY) throws IOException {
    dcBefore[n] += dcStep(dcTables[n]);
    if (!component.canBe(dcBefore[n])) {
      throw noSuchCode();
    }
    boolean wanted = component.isWanted(blockX, blockY);
    if (cells == null || !wanted) {
      skipOthers(acSkips[n], acTables[n]);
    }
    if (!wanted) {
      return;
    }
    int[] steps = component.quantization();
    int dc = dcBefore[n] * steps[0];
    int offset = component.offset(blockX, blockY);
    if (cells == null) {
      component.samples()[offset] = ScaledIdct.ofFlatBlock(dc);
      return;
    }
    Arrays.fill(block, 0);
    block[0] = dc;
    readOthers(acLookups[n], acTables[n], steps);
    component.putMean(blockX, blockY, dc);
    cells.put(block, component.samples(), offset, component.stride());
  }

  private void readOthers(int[] lookup, HuffmanTable table, int[] steps) throws IOException {
    byte[] bytes = bits.bytes();
    long position = bits.position;
    int k = 1;
    while (k < Block.COEFFICIENTS) {
      long next = BitReader.peek(bytes, position);
      int entry = HuffmanTable.entry(lookup, next);
      if (entry == 0) {
        entry = known(table.longEntry(next));
      }
      int size = HuffmanTable.size(entry);
      int run = HuffmanTable.run(entry);
      int used = HuffmanTable.used(entry);
      if (size == 0) {
        position += used;
        if (run != ZEROS_ONLY) {
          break;
        }
        k += run + 1;
        continue;
      }
      k += run;
      if (k >= Block.COEFFICIENTS) {
        throw noSuchCode();
      }
      int value = HuffmanTable.value(entry);
      if (!HuffmanTable.isComplete(entry)) {
        value = HuffmanTable.extended((int) (next << used >>> Long.SIZE - size), size);
        used += size;
      }
      position += used;
      block[Block.ZIGZAG[k]] = value * steps[k];
      k++;
    }
    bits.position = position;
  }

  /**
   * Steps over the other coefficients of a block. Bits are fetched for several steps at once; the
   * table passes several short codes in one step.
   */
  private void skipOthers(int[] skipping, HuffmanTable table) throws IOException {
    byte[] bytes = bits.bytes();
    long position = bits.position;
    int k = 1;
    while (true) {
      long next = BitReader.peek(bytes, position);
      long until = position + BitReader.PEEKED - HuffmanTable.LOOK_BITS;
      int skip;
      int passed;
      do { // as long as what was fetched is enough for a look
        skip = HuffmanTable.entry(skipping, next);
        passed = k + HuffmanTable.skippedCoefficients(skip);
        if (passed >= Block.COEFFICIENTS || skip <= 0) {
          break;
        }
        int used = HuffmanTable.skippedBits(skip);
        next <<= used;
        position += used;
        k = passed;
      } while (position <= until);
      if (skip < 0 && passed < Block.COEFFICIENTS) {
        bits.position = position + HuffmanTable.skippedBits(skip);
        return;
      }
      if (skip <= 0 || passed >= Block.COEFFICIENTS) { // one at a time, with a fresh look
        next = BitReader.peek(bytes, position);
        int entry = HuffmanTable.entry(table.lookup(), next);
        if (entry == 0) {
          entry = known(table.longEntry(next));
        }
        int size = HuffmanTable.size(entry);
        position += HuffmanTable.used(entry) + (HuffmanTable.isComplete(entry) ? 0 : size);
        if (size == 0 && HuffmanTable.run(entry) != ZEROS_ONLY) {
          break;
        }
        k += HuffmanTable.run(entry) + 1;
        if (k > Block.COEFFICIENTS) {
          throw noSuchCode();
        }
        if (k == Block.COEFFICIENTS) {
          break;
        }
      }
    }
    bits.position = position;
  }
}
