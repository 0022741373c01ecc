package org.daymount.image.jpeg;

import java.io.EOFException;
import java.io.IOException;
import org.daymount.file.FileBytes;

/**
 * Walks through a JPEG file marker by marker (ITU-T T.81, B.1.1), stepping over the coded data of
 * each scan. A marker is the byte 0xFF and a code; most are followed by a segment that begins with
 * its own length (2 bytes, counting themselves).
 */
public final class MarkerReader {
  static final int START_OF_IMAGE = 0xd8;
  public static final int END_OF_IMAGE = 0xd9;
  static final int START_OF_SCAN = 0xda;
  static final int QUANTIZATION_TABLES = 0xdb;
  static final int RESTART_INTERVAL = 0xdd;
  static final int HUFFMAN_TABLES = 0xc4;
  static final int BASELINE = 0xc0;
  static final int EXTENDED = 0xc1;
  public static final int PROGRESSIVE = 0xc2;
  static final int ARITHMETIC = 0xc9;
  static final int ARITHMETIC_PROGRESSIVE = 0xca;
  static final int ARITHMETIC_CONDITIONING = 0xcc;
  static final int RESTART_FIRST = 0xd0;
  static final int RESTART_LAST = 0xd7;
  public static final int APP1 = 0xe1;
  static final int APP2 = 0xe2;
  static final int APP0 = 0xe0;
  static final int APP14 = 0xee;
  static final int COMMENT = 0xfe;
  private static final int TEMPORARY = 0x01;

  private final FileBytes file;
  private long position;
  private long segmentEnd;
  private int marker;
  private boolean hasStrayBytes;

  /**
   * @throws JpegRefused when it does not begin like one
   */
  public MarkerReader(FileBytes file) throws IOException {
    if (file.peek(0) != 0xff || file.peek(1) != START_OF_IMAGE) {
      throw new JpegDamaged("it does not begin like a JPEG file");
    }
    this.file = file;
    this.segmentEnd = 2;
  }

  /**
   * Goes on to the next marker that has a segment, or to the end of the image. Stray bytes between
   * segments are stepped over.
   *
   * @return false when the file ends first
   */
  boolean next() throws IOException {
    return step() && segmentEnd <= file.size();
  }

  /**
   * As {@link #next}, for those to whom a file without its end is no picture. The segment may claim
   * more than the file has.
   *
   * @return false once the end of the image has been passed
   * @throws EOFException when the file ends first
   */
  public boolean advance() throws IOException {
    if (isEnd()) {
      return false;
    }
    if (!step()) {
      throw new EOFException();
    }
    return true;
  }

  private boolean step() throws IOException {
    position = segmentEnd;
    do {
      long expected = position;
      position = file.find(0xff, position);
      hasStrayBytes |= position > expected;
      while (file.peek(position) == 0xff) {
        position++; // any number of 0xFF may come before the code (B.1.1.2)
      }
      if (position >= file.size()) {
        return false;
      }
      marker = file.peek(position++);
      hasStrayBytes |= marker == 0 || marker == START_OF_IMAGE;
    } while (standsAlone(marker));
    if (marker == END_OF_IMAGE) {
      return true;
    }
    if (position + 2 > file.size()) {
      return false;
    }
    int length = file.peek(position) << 8 | file.peek(position + 1);
    hasStrayBytes |= length < 2;
    segmentEnd = position + Math.max(2, length);
    position += 2;
    return true;
  }

  /** Whether the end of the image is told at that place. */
  static boolean isEnd(FileBytes file, long place) throws IOException {
    return file.peek(place) == 0xff && file.peek(place + 1) == END_OF_IMAGE;
  }

  private static boolean standsAlone(int code) {
    return code == 0
        || code == TEMPORARY
        || code >= RESTART_FIRST && code <= RESTART_LAST
        || code == START_OF_IMAGE;
  }

  public int marker() {
    return marker;
  }

  /** Whether bytes that belong to nothing were stepped over so far. */
  boolean hasStrayBytes() {
    return hasStrayBytes;
  }

  /**
   * Whether the code means anything in a file of a picture: frames, tables, scans, application
   * segments and comments (table B.1, without what is reserved or of the hierarchical mode).
   */
  boolean isKnown() {
    return isFrame()
        || marker == HUFFMAN_TABLES
        || marker == ARITHMETIC_CONDITIONING
        || marker >= END_OF_IMAGE && marker <= RESTART_INTERVAL
        || marker >= APP0 && marker <= APP0 + 15
        || marker == COMMENT;
  }

  /** A frame of any kind: SOF0 to SOF15, without the three other codes among them. */
  public boolean isFrame() {
    return marker >= BASELINE
        && marker <= 0xcf
        && marker != HUFFMAN_TABLES
        && marker != 0xc8
        && marker != ARITHMETIC_CONDITIONING;
  }

  public boolean isScan() {
    return marker == START_OF_SCAN;
  }

  public boolean isEnd() {
    return marker == END_OF_IMAGE;
  }

  /** Where the segment goes on; its content begins there before any of it was read. */
  public long position() {
    return position;
  }

  boolean hasMore() {
    return position < segmentEnd;
  }

  public int u8() throws IOException {
    if (position >= segmentEnd) {
      throw new JpegDamaged("a segment is shorter than what it should hold");
    }
    return file.peek(position++);
  }

  public int u16() throws IOException {
    return u8() << 8 | u8();
  }

  byte[] bytes(int count) throws IOException {
    if (count > segmentEnd - position) {
      throw new JpegDamaged("a segment is shorter than what it should hold");
    }
    byte[] copy = new byte[count];
    file.read(position, copy, 0, count);
    position += count;
    return copy;
  }

  /** Bytes of the segment that were not read. */
  public int left() {
    return (int) (segmentEnd - position);
  }

  /** Where the coded data behind the current segment begin. */
  long behindSegment() {
    return segmentEnd;
  }

  /** The next marker is looked for from here. */
  void continueAt(long place) {
    segmentEnd = place;
  }
}
