package org.daymount.image.jpeg;

import java.io.IOException;
import java.util.Arrays;
import javax.imageio.plugins.jpeg.JPEGHuffmanTable;

/** Where a file's Huffman tables are kept. */
final class HuffmanTables {
  private HuffmanTables() {}

  /** B.2.4.2. */
  static void read(MarkerReader in, HuffmanTable[] dc, HuffmanTable[] ac) throws IOException {
    while (in.hasMore()) {
      int kindAndPlace = in.u8();
      int[] counts = new int[HuffmanTable.LONGEST_CODE + 1];
      int all = 0;
      for (int length = 1; length <= HuffmanTable.LONGEST_CODE; length++) {
        counts[length] = in.u8();
        all += counts[length];
      }
      HuffmanTable[] tables = kindAndPlace >> 4 == 0 ? dc : ac;
      if (kindAndPlace >> 4 > 1 || (kindAndPlace & 15) >= tables.length || all > 256) {
        throw new JpegDamaged("a table of its codes cannot be");
      }
      tables[kindAndPlace & 15] = new HuffmanTable(counts, in.bytes(all));
    }
  }

  /** Those of annex K.3, for frames of films, which do not bring their own. */
  static void putUsual(HuffmanTable[] dc, HuffmanTable[] ac) throws IOException {
    dc[0] = usual(JPEGHuffmanTable.StdDCLuminance);
    dc[1] = usual(JPEGHuffmanTable.StdDCChrominance);
    ac[0] = usual(JPEGHuffmanTable.StdACLuminance);
    ac[1] = usual(JPEGHuffmanTable.StdACChrominance);
  }

  private static HuffmanTable usual(JPEGHuffmanTable table) throws IOException {
    int[] counts = new int[HuffmanTable.LONGEST_CODE + 1];
    short[] lengths = table.getLengths();
    for (int i = 0; i < lengths.length; i++) {
      counts[i + 1] = lengths[i];
    }
    short[] values = table.getValues();
    byte[] symbols = new byte[Arrays.stream(counts).sum()];
    for (int i = 0; i < symbols.length; i++) {
      symbols[i] = (byte) values[i];
    }
    return new HuffmanTable(counts, symbols);
  }
}
