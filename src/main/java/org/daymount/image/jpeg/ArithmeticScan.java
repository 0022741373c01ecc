package org.daymount.image.jpeg;

import java.io.IOException;
import java.util.Arrays;

/**
 * A scan of an arithmetic-coded picture, sequential (F.2.4) or progressive (G.2), walked through to
 * see whether it is in order; its numbers are not kept. Which decision comes next depends on the
 * numbers before, so damage shows sooner or later: a run goes beyond its block, a number beyond
 * what there can be, or data are left over.
 */
final class ArithmeticScan extends ScanReader {
  private static final int PLACES = 16; // for tables, F.1.4.4
  private static final int DC_BINS = 64;
  private static final int AC_BINS = 256;
  private static final int DC_MAGNITUDES = 20; // table F.4: X1
  private static final int AC_LOW_MAGNITUDES = 189; // table F.5: X2 of the first coefficients
  private static final int AC_HIGH_MAGNITUDES = 217; // and of the others
  private static final int MAGNITUDE_BITS = 14; // from the bin of a magnitude to that of its bits
  private static final int LARGEST_MAGNITUDE = 0x8000;

  private final ArithmeticDecoder decoder;
  private final ScanHeader header;
  private final ArithmeticConditioning conditioning;
  private final boolean progressive;
  private final byte[][] dcBins = new byte[PLACES][];
  private final byte[][] acBins = new byte[PLACES][];
  private final byte[] even = {ArithmeticDecoder.EVEN};
  private final int[] dcContext;

  ArithmeticScan(
      Frame frame,
      ScanHeader header,
      ArithmeticDecoder decoder,
      ArithmeticConditioning conditioning) {
    super(frame, header, decoder);
    this.decoder = decoder;
    this.header = header;
    this.conditioning = conditioning;
    this.progressive = frame.progressive();
    this.dcContext = new int[header.parts().size()];
  }

  @Override
  void restart() {
    for (ScanHeader.Part part : header.parts()) {
      dcBins[part.dcPlace()] = new byte[DC_BINS];
      acBins[part.acPlace()] = new byte[AC_BINS];
    }
    Arrays.fill(dcContext, 0);
  }

  @Override
  void block(int n, Component component, int blockX, int blockY) throws IOException {
    ScanHeader.Part part = header.parts().get(n);
    boolean first = header.bitsBefore() == 0;
    if (!progressive) {
      dcStep(n, part.dcPlace());
      others(acBins[part.acPlace()], conditioning.ac(part.acPlace()), 1, Block.COEFFICIENTS - 1);
    } else if (header.firstCoefficient() > 0) {
      ProgressiveBlocks blocks = component.blocks();
      int block = blocks.block(blockX, blockY);
      long before = blocks.nonzero(block);
      byte[] bins = acBins[part.acPlace()];
      long more =
          first
              ? others(
                  bins,
                  conditioning.ac(part.acPlace()),
                  header.firstCoefficient(),
                  header.lastCoefficient())
              : refine(bins, before);
      blocks.setNonzero(block, before | more);
    } else if (first) {
      dcStep(n, part.dcPlace());
    } else {
      decoder.decide(even, 0);
    }
  }

  /**
   * F.1.4.1, F.1.4.4.1: the context of the next step is whether this one is small, and its sign.
   */
  private void dcStep(int n, int place) throws IOException {
    byte[] bins = dcBins[place];
    int bin = dcContext[n];
    if (!decoder.decide(bins, bin)) {
      dcContext[n] = 0;
      return;
    }
    int sign = decoder.decide(bins, bin + 1) ? 1 : 0;
    bin += 2 + sign;
    int magnitude = decoder.decide(bins, bin) ? 1 : 0;
    if (magnitude > 0) {
      bin = DC_MAGNITUDES;
      while (decoder.decide(bins, bin)) {
        magnitude = doubled(magnitude);
        bin++;
      }
    }
    if (magnitude < 1 << conditioning.dcLower(place) >> 1) {
      dcContext[n] = 0;
    } else {
      dcContext[n] = (magnitude > 1 << conditioning.dcUpper(place) >> 1 ? 12 : 4) + 4 * sign;
    }
    lowerBits(bins, bin, magnitude);
  }

  /**
   * F.1.4.2, F.1.4.4.2.
   *
   * @return a bit for each coefficient that is not zero
   */
  private long others(byte[] bins, int lowBand, int from, int to) throws IOException {
    long nonzero = 0;
    for (int k = from; k <= to; k++) {
      int bin = 3 * (k - 1);
      if (decoder.decide(bins, bin)) {
        break; // the rest is zero
      }
      while (!decoder.decide(bins, bin + 1)) {
        bin += 3;
        if (++k > to) {
          throw noSuchCode();
        }
      }
      nonzero |= 1L << k;
      decoder.decide(even, 0); // the sign
      bin += 2;
      int magnitude = decoder.decide(bins, bin) ? 1 : 0;
      if (magnitude > 0 && decoder.decide(bins, bin)) {
        magnitude = doubled(magnitude);
        bin = k <= lowBand ? AC_LOW_MAGNITUDES : AC_HIGH_MAGNITUDES;
        while (decoder.decide(bins, bin)) {
          magnitude = doubled(magnitude);
          bin++;
        }
      }
      lowerBits(bins, bin, magnitude);
    }
    return nonzero;
  }

  /** G.1.3.3: one more bit of those that are not zero, and which ones become 1 or -1 in it. */
  private long refine(byte[] bins, long before) throws IOException {
    int to = header.lastCoefficient();
    long upTo = -1L >>> Block.COEFFICIENTS - 1 - to;
    int lastKnown = Block.COEFFICIENTS - 1 - Long.numberOfLeadingZeros(before & upTo);
    long added = 0;
    for (int k = header.firstCoefficient(); k <= to; k++) {
      int bin = 3 * (k - 1);
      if (k > lastKnown && decoder.decide(bins, bin)) {
        break;
      }
      while (true) {
        if ((before >>> k & 1) == 1) {
          decoder.decide(bins, bin + 2);
          break;
        }
        if (decoder.decide(bins, bin + 1)) {
          decoder.decide(even, 0);
          added |= 1L << k;
          break;
        }
        bin += 3;
        if (++k > to) {
          throw noSuchCode();
        }
      }
    }
    return added;
  }

  private void lowerBits(byte[] bins, int bin, int magnitude) throws IOException {
    for (int bit = magnitude >> 1; bit > 0; bit >>= 1) {
      decoder.decide(bins, bin + MAGNITUDE_BITS);
    }
  }

  private static int doubled(int magnitude) throws JpegDamaged {
    if (magnitude << 1 == LARGEST_MAGNITUDE) {
      throw noSuchCode();
    }
    return magnitude << 1;
  }
}
