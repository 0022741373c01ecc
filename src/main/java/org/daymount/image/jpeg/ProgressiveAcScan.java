package org.daymount.image.jpeg;

import java.io.IOException;

/**
 * A scan of some of the other coefficients of one component in a progressive picture (G.1.2.2,
 * G.1.2.3). A first scan tells all but their lowest bits; each later one tells one more bit of
 * those that are not zero, and which ones become 1 or -1 in that bit. "The rest is zero" may be
 * said for many blocks at once.
 */
final class ProgressiveAcScan extends ScanReader {
  private static final int ZEROS_ONLY = 15;

  private final HuffmanTable table;
  private final boolean first;
  private final int from;
  private final int to;
  private final int lowestBit;
  private final long band; // a bit for each coefficient of this scan
  private int blocksWithoutNew; // that follow, this one included

  ProgressiveAcScan(Frame frame, ScanHeader header, BitReader bits) throws IOException {
    super(frame, header, bits);
    table = present(header.parts().get(0).ac());
    first = header.bitsBefore() == 0;
    from = header.firstCoefficient();
    to = header.lastCoefficient();
    lowestBit = header.lowestBit();
    band = -1L >>> Block.COEFFICIENTS - 1 - to & -1L << from;
  }

  @Override
  void restart() {
    blocksWithoutNew = 0;
  }

  @Override
  void block(int n, Component component, int blockX, int blockY) throws IOException {
    ProgressiveBlocks blocks = component.blocks();
    int block = blocks.block(blockX, blockY);
    if (first) {
      if (blocksWithoutNew > 0) {
        blocksWithoutNew--;
      } else {
        readFirst(blocks, block, blocks.kept(blockX, blockY));
      }
    } else {
      refine(blocks, block, blocks.kept(blockX, blockY));
    }
  }

  private void readFirst(ProgressiveBlocks blocks, int block, int kept) throws IOException {
    long nonzero = blocks.nonzero(block);
    int k = from;
    while (k <= to) {
      int entry = symbol();
      int run = HuffmanTable.run(entry);
      int size = HuffmanTable.size(entry);
      if (size == 0) {
        if (run != ZEROS_ONLY) {
          blocksWithoutNew = endOfBand(run) - 1;
          break;
        }
        k += run + 1;
        continue;
      }
      k += run;
      if (k > to) {
        throw noSuchCode();
      }
      int value = HuffmanTable.extended(take(size), size);
      blocks.put(kept, k, value << lowestBit);
      nonzero |= 1L << k;
      k++;
    }
    blocks.setNonzero(block, nonzero);
  }

  private void refine(ProgressiveBlocks blocks, int block, int kept) throws IOException {
    long before = blocks.nonzero(block);
    long nonzero = before;
    int k = from;
    while (blocksWithoutNew == 0 && k <= to) {
      int entry = symbol();
      int zeros = HuffmanTable.run(entry);
      int value = 0;
      if (HuffmanTable.size(entry) == 0) {
        if (zeros != ZEROS_ONLY) {
          blocksWithoutNew = endOfBand(zeros);
          break;
        }
      } else {
        if (HuffmanTable.size(entry) > 1) { // G.1.2.3: 1 or -1
          throw noSuchCode();
        }
        value = take(1) == 1 ? 1 << lowestBit : -1 << lowestBit;
      }
      int next = zero(before, k, zeros);
      grow(blocks, kept, before & between(k, next));
      k = next;
      if (value != 0 && k <= to) {
        blocks.put(kept, k, value);
        nonzero |= 1L << k;
      }
      k++;
    }
    if (blocksWithoutNew > 0) {
      grow(blocks, kept, before & between(k, to + 1));
      blocksWithoutNew--;
    }
    blocks.setNonzero(block, nonzero);
  }

  /** Where the zero behind so many others is, from {@code start} on, or behind the band. */
  private int zero(long nonzero, int start, int zeros) {
    long open = ~nonzero & between(start, to + 1);
    for (int i = 0; i < zeros && open != 0; i++) {
      open &= open - 1; // without its lowest bit
    }
    return open == 0 ? to + 1 : Long.numberOfTrailingZeros(open);
  }

  /** Bits of the band, from {@code start} on, without {@code end}. */
  private long between(int start, int end) {
    return start >= end ? 0 : band & -1L << start & -1L >>> Block.COEFFICIENTS - end;
  }

  /** Reads a bit for each of these coefficients, in order. */
  private void grow(ProgressiveBlocks blocks, int kept, long coefficients) {
    if (kept == ProgressiveBlocks.NOT_KEPT) {
      bits.position += Long.bitCount(coefficients);
      return;
    }
    for (long left = coefficients; left != 0; left &= left - 1) {
      if (take(1) == 1) {
        blocks.grow(kept, Long.numberOfTrailingZeros(left), 1 << lowestBit);
      }
    }
  }

  /** How many blocks, this one first, have nothing new from here on. */
  private int endOfBand(int bitsOfCount) {
    return (1 << bitsOfCount) + take(bitsOfCount);
  }

  private int symbol() throws IOException {
    long next = bits.peek();
    int entry = HuffmanTable.entry(table.lookup(), next);
    if (entry == 0) {
      entry = known(table.longEntry(next));
    }
    int used = HuffmanTable.used(entry);
    bits.position += HuffmanTable.isComplete(entry) ? used - HuffmanTable.size(entry) : used;
    return entry;
  }

  private int take(int count) {
    if (count == 0) {
      return 0;
    }
    int taken = (int) (bits.peek() >>> Long.SIZE - count);
    bits.position += count;
    return taken;
  }
}
