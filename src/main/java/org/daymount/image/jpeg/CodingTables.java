package org.daymount.image.jpeg;

import java.io.IOException;

/** What a file's segments say of how its scans are coded (B.2.4), as it stands at the moment. */
final class CodingTables {
  private static final int PLACES = 4;

  private final int[][] quantization = new int[PLACES][];
  private final HuffmanTable[] dc = new HuffmanTable[PLACES];
  private final HuffmanTable[] ac = new HuffmanTable[PLACES];
  private final ArithmeticConditioning conditioning = new ArithmeticConditioning();
  private int restartInterval;

  CodingTables() throws IOException {
    HuffmanTables.putUsual(dc, ac);
  }

  /**
   * @return whether the segment is one of these
   */
  boolean read(MarkerReader in) throws IOException {
    switch (in.marker()) {
      case MarkerReader.QUANTIZATION_TABLES -> readQuantization(in);
      case MarkerReader.HUFFMAN_TABLES -> HuffmanTables.read(in, dc, ac);
      case MarkerReader.ARITHMETIC_CONDITIONING -> conditioning.read(in);
      case MarkerReader.RESTART_INTERVAL -> restartInterval = in.u16();
      default -> {
        return false;
      }
    }
    return true;
  }

  /** B.2.4.1. */
  private void readQuantization(MarkerReader in) throws IOException {
    while (in.hasMore()) {
      int precisionAndPlace = in.u8();
      int[] steps = new int[Block.COEFFICIENTS];
      if ((precisionAndPlace & 15) >= PLACES) {
        throw new JpegDamaged("a table inside of it cannot be");
      }
      for (int k = 0; k < steps.length; k++) {
        steps[k] = precisionAndPlace >> 4 == 0 ? in.u8() : in.u16();
      }
      quantization[precisionAndPlace & 3] = steps;
    }
  }

  /** Before the file is gone through again. */
  void forgetRestarts() {
    restartInterval = 0;
  }

  int[][] quantization() {
    return quantization;
  }

  HuffmanTable[] dc() {
    return dc;
  }

  HuffmanTable[] ac() {
    return ac;
  }

  ArithmeticConditioning conditioning() {
    return conditioning;
  }

  /** In minimum coded units; 0: none. */
  int restartInterval() {
    return restartInterval;
  }
}
