package org.daymount.image.jpeg;

import java.io.IOException;

/**
 * A scan of DC coefficients in a progressive picture (G.1.2.1): the first scan tells all but their
 * lowest bits, later scans one more bit each.
 */
final class ProgressiveDcScan extends ScanReader {
  private final HuffmanTable[] tables;
  private final boolean first;
  private final int lowestBit;

  ProgressiveDcScan(Frame frame, ScanHeader header, BitReader bits) throws IOException {
    super(frame, header, bits);
    this.first = header.bitsBefore() == 0;
    this.lowestBit = header.lowestBit();
    tables = new HuffmanTable[header.parts().size()];
    for (int n = 0; first && n < tables.length; n++) {
      tables[n] = presentDc(header.parts().get(n).dc());
    }
  }

  @Override
  void block(int n, Component component, int blockX, int blockY) throws IOException {
    ProgressiveBlocks blocks = component.blocks();
    int kept = blocks.kept(blockX, blockY);
    if (first) {
      dcBefore[n] += dcStep(tables[n]);
      if (!component.canBe(dcBefore[n] << lowestBit)) {
        throw noSuchCode();
      }
      blocks.put(kept, 0, dcBefore[n] << lowestBit);
    } else {
      int bit = (int) (bits.peek() >>> Long.SIZE - 1);
      bits.position++;
      blocks.addToDc(kept, bit << lowestBit);
    }
  }
}
