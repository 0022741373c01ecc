package org.daymount.image.jpeg;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Whether the scans of a progressive picture tell each coefficient's bits in an order that makes
 * sense (G.1.1.1): DC before the others, high bits before low ones, none twice.
 */
final class Progression {
  private static final int NOTHING = -1;

  /** For each coefficient of a component the lowest bit that is known. */
  private final Map<Component, int[]> lowestBits = new HashMap<>();

  void forget() {
    lowestBits.clear();
  }

  /** Takes note of a scan. */
  boolean goesOn(Frame frame, ScanHeader header) {
    boolean inOrder = true;
    for (ScanHeader.Part part : header.parts()) {
      int[] known = lowestBits.computeIfAbsent(part.component(), c -> unknown());
      inOrder &= header.firstCoefficient() == 0 || known[0] != NOTHING;
      for (int k = header.firstCoefficient(); k <= header.lastCoefficient(); k++) {
        inOrder &= header.bitsBefore() == Math.max(0, known[k]);
        known[k] = header.lowestBit();
      }
    }
    return inOrder;
  }

  private static int[] unknown() {
    int[] bits = new int[Block.COEFFICIENTS];
    Arrays.fill(bits, NOTHING);
    return bits;
  }
}
