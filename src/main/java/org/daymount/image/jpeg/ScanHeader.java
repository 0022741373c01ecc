package org.daymount.image.jpeg;

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

  /** A component in this scan; a table that a scan does not need may be missing. */
  record Part(Component component, HuffmanTable dc, HuffmanTable ac) {}

  static ScanHeader read(
      MarkerReader in, Frame frame, HuffmanTable[] dcTables, HuffmanTable[] acTables)
      throws JpegRefused {
    int count = in.u8();
    List<Part> parts = new ArrayList<>();
    int blocks = 0;
    for (int i = 0; i < count; i++) {
      int id = in.u8();
      int tables = in.u8();
      Component component =
          frame.components().stream()
              .filter(c -> c.id == id)
              .findFirst()
              .orElseThrow(() -> new JpegRefused("a scan is of a component there is not"));
      if (parts.stream().anyMatch(part -> part.component() == component)) {
        throw new JpegRefused("a scan names a component twice");
      }
      parts.add(new Part(component, dcTables[tables >> 4 & 3], acTables[tables & 3]));
      blocks += component.across * component.down;
    }
    if (count == 0 || count > 1 && blocks > 10) { // B.2.3: at most 10 blocks a unit
      throw new JpegRefused("has a broken scan header");
    }
    int first = in.u8();
    int last = in.u8();
    int approximation = in.u8();
    boolean dc = first == 0;
    if (frame.progressive()
        && ((approximation & 15) > 13 // table B.3, G.1.1.1.1
            || last >= Block.COEFFICIENTS
            || last < first
            || dc != (last == 0))) {
      throw new JpegRefused("has a broken scan header");
    }
    return new ScanHeader(List.copyOf(parts), first, last, approximation >> 4, approximation & 15);
  }
}
