package org.daymount.image.jpeg;

/**
 * How a frame is coded (table B.1).
 *
 * @param isKnown whether it is of 8 bits, not lossless, not hierarchical
 */
record CodingProcess(boolean isKnown, boolean progressive, boolean arithmetic) {
  static CodingProcess of(int marker) {
    return switch (marker) {
      case MarkerReader.BASELINE, MarkerReader.EXTENDED -> new CodingProcess(true, false, false);
      case MarkerReader.PROGRESSIVE -> new CodingProcess(true, true, false);
      case MarkerReader.ARITHMETIC -> new CodingProcess(true, false, true);
      case MarkerReader.ARITHMETIC_PROGRESSIVE -> new CodingProcess(true, true, true);
      default -> new CodingProcess(false, false, false);
    };
  }
}
