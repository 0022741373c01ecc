package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import org.daymount.file.FileBytes;

/** Steps over the boxes of an ISO media file, one level of them (ISO/IEC 14496-12, 4.2). */
final class IsoBoxes {
  /**
   * @param body position behind the box's header; a full box has its version and flags there
   * @param end first position behind the box
   */
  record Box(String name, long body, long end) {
    long length() {
      return end - body;
    }
  }

  private final FileBytes bytes;
  private final long end;
  private long at;

  IsoBoxes(FileBytes bytes, long from, long to) {
    this.bytes = bytes;
    this.at = from;
    this.end = to;
  }

  static IsoBoxes of(FileBytes bytes) {
    return new IsoBoxes(bytes, 0, bytes.size());
  }

  /**
   * The next box; null behind the last.
   *
   * @throws EOFException when a box reaches beyond what it lies in
   */
  Box next() throws IOException {
    if (at + 8 > end) {
      return null;
    }
    long length = bytes.u32(at);
    String name = bytes.name(at + 4);
    long body = at + 8;
    if (length == 1) {
      length = bytes.u32(at + 8) << 32 | bytes.u32(at + 12);
      body = at + 16;
    } else if (length == 0) { // to the end
      length = end - at;
    }
    if (length < body - at || length > end - at) {
      throw new EOFException();
    }
    at += length;
    return new Box(name, body, at);
  }
}
