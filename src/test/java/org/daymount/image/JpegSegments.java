package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The marker segments before the first scan of a JPEG file (ITU-T T.81, B.1.1). */
record JpegSegments(List<Segment> segments) {
  private static final int START_OF_SCAN = 0xda;

  record Segment(int marker, byte[] content) {}

  static JpegSegments of(byte[] file) {
    List<Segment> found = new ArrayList<>();
    int at = 2; // after SOI
    while (true) {
      int marker = file[at + 1] & 0xff;
      int length = (file[at + 2] & 0xff) << 8 | file[at + 3] & 0xff;
      found.add(new Segment(marker, Arrays.copyOfRange(file, at + 4, at + 2 + length)));
      if (marker == START_OF_SCAN) {
        return new JpegSegments(found);
      }
      at += 2 + length;
    }
  }

  List<byte[]> of(int marker) {
    return segments.stream().filter(s -> s.marker() == marker).map(Segment::content).toList();
  }

  byte[] only(int marker) {
    List<byte[]> found = of(marker);
    assertEquals(1, found.size(), "segments FF" + Integer.toHexString(marker));
    return found.get(0);
  }
}
