package org.daymount.image.jpeg;

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
  private int blocksWithoutNew; // that follow, this one included

  ProgressiveAcScan(Frame frame, ScanHeader header, BitReader bits) throws JpegRefused {
    super(frame, header, bits);
    if (header.parts().size() != 1) {
      throw new JpegRefused("has a broken scan header");
    }
    table = present(header.parts().get(0).ac());
    first = header.bitsBefore() == 0;
    from = header.firstCoefficient();
    to = header.lastCoefficient();
    lowestBit = header.lowestBit();
  }

  @Override
  void restart() {
    blocksWithoutNew = 0;
  }

  @Override
  void block(int n, Component component, int blockX, int blockY) throws JpegRefused {
    int at = component.coefficientsOf(blockX, blockY);
    if (first) {
      readFirst(component.coefficients(), at);
    } else {
      refine(component.coefficients(), at);
    }
  }

  private void readFirst(short[] coefficients, int at) throws JpegRefused {
    if (blocksWithoutNew > 0) {
      blocksWithoutNew--;
      return;
    }
    int k = from;
    while (k <= to) {
      int entry = symbol();
      int run = HuffmanTable.run(entry);
      int size = HuffmanTable.size(entry);
      if (size == 0) {
        if (run != ZEROS_ONLY) {
          blocksWithoutNew = endOfBand(run) - 1;
          return;
        }
        k += run + 1;
        continue;
      }
      k += run;
      if (k > to) {
        throw noSuchCode();
      }
      int value = HuffmanTable.extended(take(size), size);
      coefficients[at + Block.ZIGZAG[k]] = (short) (value << lowestBit);
      k++;
    }
  }

  private void refine(short[] coefficients, int at) throws JpegRefused {
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
        value = take(1) == 1 ? 1 << lowestBit : -1 << lowestBit;
      }
      k = refineUntil(zeros, coefficients, at, k);
      if (value != 0 && k <= to) {
        coefficients[at + Block.ZIGZAG[k]] = (short) value;
      }
      k++;
    }
    if (blocksWithoutNew > 0) {
      refineUntil(Block.COEFFICIENTS, coefficients, at, k);
      blocksWithoutNew--;
    }
  }

  /**
   * Reads a bit for each coefficient that is not zero, until so many that are have been passed.
   *
   * @return where the next zero is, or behind the band
   */
  private int refineUntil(int zeros, short[] coefficients, int at, int start) {
    int bit = 1 << lowestBit;
    int left = zeros;
    for (int k = start; k <= to; k++) {
      int place = at + Block.ZIGZAG[k];
      int before = coefficients[place];
      if (before == 0) {
        if (left == 0) {
          return k;
        }
        left--;
      } else if (take(1) == 1 && (before & bit) == 0) {
        coefficients[place] = (short) (before > 0 ? before + bit : before - bit);
      }
    }
    return to + 1;
  }

  /** How many blocks, this one first, have nothing new from here on. */
  private int endOfBand(int bitsOfCount) {
    return (1 << bitsOfCount) + take(bitsOfCount);
  }

  private int symbol() throws JpegRefused {
    long next = bits.peek();
    int entry = HuffmanTable.entry(table.lookup(), next);
    if (entry == 0) {
      entry = table.longEntry(next);
      if (entry == HuffmanTable.NO_CODE) {
        throw noSuchCode();
      }
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
