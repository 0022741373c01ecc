package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import org.daymount.file.FileBytes;
import org.daymount.image.IsoBoxes.Box;

/** Reads on from a position, inside one box. */
final class BoxCursor {
  private final FileBytes bytes;
  private final long end;
  private long at;
  private int version;
  private int flags;

  BoxCursor(FileBytes bytes, Box box) {
    this.bytes = bytes;
    this.at = box.body();
    this.end = box.end();
  }

  /** Past the version and flags of a full box. */
  BoxCursor versioned() throws IOException {
    version = (int) unsigned(1);
    flags = (int) unsigned(3);
    return this;
  }

  long unsigned(int width) throws IOException {
    if (at + width > end) {
      throw new EOFException();
    }
    long value = 0;
    for (int i = 0; i < width; i++) {
      value = value << 8 | bytes.u8(at++);
    }
    return value;
  }

  int version() {
    return version;
  }

  int flags() {
    return flags;
  }

  /** Where the next byte is read, in the file. */
  long at() {
    return at;
  }

  /** An item's number: two bytes up to that version of the box, four above it. */
  int id(int lastNarrowVersion) throws IOException {
    return (int) unsigned(version <= lastNarrowVersion ? 2 : 4);
  }

  String name() throws IOException {
    String name = bytes.name(at);
    unsigned(4);
    return name;
  }

  /** Up to a zero byte; at most 200 characters are kept. */
  String text() throws IOException {
    StringBuilder text = new StringBuilder();
    while (at < end) {
      int c = (int) unsigned(1);
      if (c == 0) {
        break;
      }
      if (text.length() < 200) {
        text.append((char) c);
      }
    }
    return text.toString();
  }
}
