package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;

/**
 * Walks the markers of a JPEG file (ITU-T T.81, B.1.1), stepping over the coded data of each scan.
 * Stray bytes between segments are stepped over too, as decoders do.
 */
final class JpegMarkers {
  private static final int TEM = 0x01;
  private static final int RST0 = 0xd0;
  private static final int SOI = 0xd8;
  static final int EOI = 0xd9;
  private static final int SOS = 0xda;

  private final FileBytes bytes;
  private long position = 2; // after SOI
  private int marker = SOI;
  private long segment;

  JpegMarkers(FileBytes bytes) {
    this.bytes = bytes;
  }

  /**
   * Steps to the next marker.
   *
   * @return false once the end marker has been passed
   * @throws EOFException when the file ends before its end marker
   */
  boolean next() throws IOException {
    if (marker == EOI) {
      return false;
    }
    do {
      position = bytes.find(0xff, position);
      while (bytes.u8(position) == 0xff) {
        position++;
      }
      marker = bytes.u8(position++);
    } while (marker == 0 || isAlone(marker));
    segment = position;
    if (marker != EOI) {
      int length = bytes.u16(segment);
      position = segment + Math.max(2, length);
    }
    return true;
  }

  /** A stuffed zero is no marker; these carry no length and may stand inside a scan. */
  private static boolean isAlone(int code) {
    return code == TEM || (code >= RST0 && code <= SOI);
  }

  int marker() {
    return marker;
  }

  /** Where the segment's content begins, after its length. */
  long body() {
    return segment + 2;
  }

  /** Bytes of content; may claim more than the file has. */
  int bodyLength() throws IOException {
    return Math.max(0, bytes.u16(segment) - 2);
  }

  boolean isFrame() {
    return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
  }

  boolean isScan() {
    return marker == SOS;
  }

  boolean isEnd() {
    return marker == EOI;
  }
}
