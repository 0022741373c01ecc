package org.daymount.image.jpeg;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The scan header (B.2.3): which components follow, with which tables, and for a progressive
 * picture (G.1.1.1) which coefficients and which of their bits.
 *
 * @param firstCoefficient 0: the scan holds DC coefficients
 * @param bitsBefore which bit came before (successive approximation); 0: this is a first scan
 * @param lowestBit the lowest bit that this scan tells
 */
record ScanHeader(
    List<Part> parts, int firstCoefficient, int lastCoefficient, int bitsBefore, int lowestBit) {

  /**
   * A component in this scan; a table that a scan does not need may be missing.
   *
   * @param dcPlace number of the table, 0 to 15: arithmetic coding has its statistics there
   */
  record Part(Component component, int dcPlace, int acPlace, HuffmanTable dc, HuffmanTable ac) {}

  private static JpegDamaged broken() {
    return new JpegDamaged("a header inside of it is broken");
  }

  /** Two components may have the same id; they then come in their order. */
  private static Component next(int id, Frame frame, List<Part> parts) throws JpegDamaged {
    for (Component component : frame.components()) {
      if (component.id == id && parts.stream().noneMatch(part -> part.component() == component)) {
        return component;
      }
    }
    throw new JpegDamaged("a part of its picture is of a colour there is not");
  }

  /**
   * Whether a sequential scan says what it must (table B.3). All zeros are let pass: there are
   * encoders that write them, and nothing follows from it (libjpeg, jdhuff.c, says the same).
   */
  boolean isSequential() {
    return firstCoefficient == 0
        && (lastCoefficient == 0 || lastCoefficient == Block.COEFFICIENTS - 1)
        && bitsBefore == 0
        && lowestBit == 0;
  }

  static ScanHeader read(
      MarkerReader in, Frame frame, HuffmanTable[] dcTables, HuffmanTable[] acTables)
      throws IOException {
    int count = in.u8();
    List<Part> parts = new ArrayList<>();
    int blocks = 0;
    for (int i = 0; i < count; i++) {
      int id = in.u8();
      int tables = in.u8();
      Component component = next(id, frame, parts);
      int dc = tables >> 4;
      int ac = tables & 15;
      parts.add(
          new Part(
              component,
              dc,
              ac,
              dc < dcTables.length ? dcTables[dc] : null,
              ac < acTables.length ? acTables[ac] : null));
      blocks += component.across * component.down;
    }
    if (count == 0 || count > 1 && blocks > 10) { // B.2.3: at most 10 blocks a unit
      throw broken();
    }
    if (in.left() != 3) {
      throw broken();
    }
    int first = in.u8();
    int last = in.u8();
    int approximation = in.u8();
    boolean dc = first == 0;
    if (frame.progressive()
        && ((approximation & 15) > 13 // table B.3, G.1.1.1.1
            || last >= Block.COEFFICIENTS
            || last < first
            || dc != (last == 0)
            || !dc && count > 1
            || approximation >> 4 > 0 && approximation >> 4 != (approximation & 15) + 1)) {
      throw broken();
    }
    return new ScanHeader(List.copyOf(parts), first, last, approximation >> 4, approximation & 15);
  }
}
