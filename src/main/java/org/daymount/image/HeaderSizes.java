package org.daymount.image;

import java.io.IOException;
import org.daymount.file.FileBytes;
import org.daymount.image.jpeg.MarkerReader;

/** Width and height out of the headers that need only a few lines each. */
final class HeaderSizes {
  private HeaderSizes() {}

  /** ITU-T T.81, B.2.2: the frame header, any of SOF0 to SOF15 but DHT, JPG and DAC. */
  static StoredSize jpeg(FileBytes bytes) throws IOException {
    MarkerReader markers = new MarkerReader(bytes);
    while (markers.advance()) {
      if (markers.isFrame()) {
        long at = markers.position();
        return new StoredSize(bytes.u16(at + 3), bytes.u16(at + 1));
      }
      if (markers.isScan() || markers.isEnd()) {
        break;
      }
    }
    return new StoredSize(0, 0);
  }

  /** PNG 3rd edition, 11.2.1: IHDR comes first. */
  static StoredSize png(FileBytes bytes) throws IOException {
    if (!bytes.name(12).equals("IHDR")) {
      return new StoredSize(0, 0);
    }
    return new StoredSize(bytes.u32(16), bytes.u32(20));
  }

  /** RFC 9649: VP8X has the canvas, VP8L 14 bits each, VP8 (RFC 6386, 9.1) 14 bits each. */
  static StoredSize webp(FileBytes bytes) throws IOException {
    return switch (bytes.name(12)) {
      case "VP8X" -> new StoredSize(1 + u24(bytes, 24), 1 + u24(bytes, 27));
      case "VP8L" -> {
        if (bytes.u8(20) != 0x2f) {
          yield new StoredSize(0, 0);
        }
        long bits = bytes.u32(21, false);
        yield new StoredSize(1 + (bits & 0x3fff), 1 + (bits >> 14 & 0x3fff));
      }
      case "VP8 " -> {
        if (bytes.size() >= 26 && !bytes.has(23, 0x9d, 0x01, 0x2a)) {
          yield new StoredSize(0, 0);
        }
        yield new StoredSize(bytes.u16(26, false) & 0x3fff, bytes.u16(28, false) & 0x3fff);
      }
      default -> new StoredSize(0, 0);
    };
  }

  private static long u24(FileBytes bytes, long at) throws IOException {
    return bytes.u16(at, false) | (long) bytes.u8(at + 2) << 16;
  }

  /** A negative height means that rows run from the top. */
  static StoredSize bmp(FileBytes bytes) throws IOException {
    if (bytes.u32(14, false) == 12) { // the oldest header, 16-bit sides
      return new StoredSize(bytes.u16(18, false), bytes.u16(20, false));
    }
    return new StoredSize((int) bytes.u32(18, false), Math.abs((long) (int) bytes.u32(22, false)));
  }
}
