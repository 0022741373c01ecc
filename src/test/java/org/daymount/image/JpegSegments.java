package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
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

  /** The JFIF file with a profile in one APP2 segment (ICC.1:2010, B.4) after its APP0. */
  static byte[] withProfile(byte[] jpeg, byte[] profile) {
    int after = 4 + ((jpeg[4] & 0xff) << 8 | jpeg[5] & 0xff);
    ByteBuffer file = ByteBuffer.allocate(jpeg.length + 4 + 14 + profile.length);
    file.put(jpeg, 0, after);
    file.putShort((short) 0xffe2).putShort((short) (2 + 14 + profile.length));
    file.put("ICC_PROFILE\0\1\1".getBytes(StandardCharsets.US_ASCII)).put(profile);
    file.put(jpeg, after, jpeg.length - after);
    return file.array();
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
