package org.daymount.image.jpeg;

/**
 * Walks through a file marker by marker (B.1.1). A marker is the byte 0xFF and a code; most are
 * followed by a segment that begins with its own length (2 bytes, counting themselves).
 */
final class MarkerReader {
  static final int START_OF_IMAGE = 0xd8;
  static final int END_OF_IMAGE = 0xd9;
  static final int START_OF_SCAN = 0xda;
  static final int QUANTIZATION_TABLES = 0xdb;
  static final int RESTART_INTERVAL = 0xdd;
  static final int HUFFMAN_TABLES = 0xc4;
  static final int BASELINE = 0xc0;
  static final int EXTENDED = 0xc1;
  static final int PROGRESSIVE = 0xc2;
  static final int ARITHMETIC = 0xc9;
  static final int ARITHMETIC_PROGRESSIVE = 0xca;
  static final int ARITHMETIC_CONDITIONING = 0xcc;
  static final int RESTART_FIRST = 0xd0;
  static final int RESTART_LAST = 0xd7;
  static final int APP2 = 0xe2;
  static final int APP0 = 0xe0;
  static final int APP14 = 0xee;
  static final int COMMENT = 0xfe;
  private static final int TEMPORARY = 0x01;

  private final CodedFile file;
  private long position;
  private long segmentEnd;
  private int marker;
  private boolean hasStrayBytes;

  MarkerReader(CodedFile file) throws JpegRefused {
    if (file.length() < 4 || file.u8(0) != 0xff || file.u8(1) != START_OF_IMAGE) {
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
  boolean next() {
    position = segmentEnd;
    do {
      long expected = position;
      position = file.nextFf(position);
      hasStrayBytes |= position > expected;
      while (file.u8(position) == 0xff) {
        position++; // any number of 0xFF may come before the code (B.1.1.2)
      }
      if (position >= file.length()) {
        return false;
      }
      marker = file.u8(position++);
      hasStrayBytes |= marker == 0 || marker == START_OF_IMAGE;
    } while (standsAlone(marker));
    if (marker == END_OF_IMAGE) {
      return true;
    }
    if (position + 2 > file.length()) {
      return false;
    }
    int length = file.u8(position) << 8 | file.u8(position + 1);
    hasStrayBytes |= length < 2;
    segmentEnd = position + Math.max(2, length);
    position += 2;
    return segmentEnd <= file.length();
  }

  /** Whether the end of the image is told at that place. */
  static boolean isEnd(CodedFile file, long place) {
    return file.u8(place) == 0xff && file.u8(place + 1) == END_OF_IMAGE;
  }

  private static boolean standsAlone(int code) {
    return code == 0
        || code == TEMPORARY
        || code >= RESTART_FIRST && code <= RESTART_LAST
        || code == START_OF_IMAGE;
  }

  int marker() {
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
  boolean isFrame() {
    return marker >= BASELINE
        && marker <= 0xcf
        && marker != HUFFMAN_TABLES
        && marker != 0xc8
        && marker != ARITHMETIC_CONDITIONING;
  }

  boolean hasMore() {
    return position < segmentEnd;
  }

  int u8() throws JpegRefused {
    if (position >= segmentEnd) {
      throw new JpegDamaged("a segment is shorter than what it should hold");
    }
    return file.u8(position++);
  }

  int u16() throws JpegRefused {
    return u8() << 8 | u8();
  }

  byte[] bytes(int count) throws JpegRefused {
    if (count > segmentEnd - position) {
      throw new JpegDamaged("a segment is shorter than what it should hold");
    }
    byte[] copy = new byte[count];
    file.read(position, copy, 0, count);
    position += count;
    return copy;
  }

  int left() {
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
