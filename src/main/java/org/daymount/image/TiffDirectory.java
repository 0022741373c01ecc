package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.daymount.file.FileBytes;

/**
 * One image file directory of a TIFF file (TIFF 6.0, section 2; BigTIFF has 8-byte offsets). Only
 * whole-number fields are kept, and long lists stay in the file.
 */
final class TiffDirectory {
  static final int NEW_SUBFILE_TYPE = 254;
  static final int WIDTH = 256;
  static final int HEIGHT = 257;
  static final int PHOTOMETRIC = 262;
  static final int STRIP_OFFSETS = 273;
  static final int STRIP_BYTES = 279;
  static final int JPEG_OFFSET = 513;
  static final int JPEG_BYTES = 514;
  static final int PROFILE = 34675;
  static final int TILE_OFFSETS = 324;
  static final int TILE_BYTES = 325;
  private static final int SUB_DIRECTORIES = 330;
  private static final int SAMPLE_FORMAT = 339;
  private static final int FLOATS = 3; // IEEE, of SAMPLE_FORMAT
  private static final int CIE_LAB = 8; // of PHOTOMETRIC; 9 is ICC's
  private static final int ITU_LAB = 10;
  private static final int DNG_VERSION = 50706;
  private static final int COLOR_FILTER_ARRAY = 32803; // TIFF/EP, a raw sensor
  private static final int LINEAR_RAW = 34892; // DNG
  private static final int MOST_DIRECTORIES = 64;
  private static final int MOST_FIELDS = 4096;

  /** Where a field's values stand. */
  record Field(int width, long count, long position) {}

  private final FileBytes bytes;
  private final boolean bigEndian;
  private final Map<Integer, Field> fields = new HashMap<>();
  private long next;

  private TiffDirectory(FileBytes bytes, boolean bigEndian) {
    this.bytes = bytes;
    this.bigEndian = bigEndian;
  }

  static boolean begins(FileBytes bytes) throws IOException {
    return bytes.has(0, 'I', 'I', 42, 0)
        || bytes.has(0, 'M', 'M', 0, 42)
        || bytes.has(0, 'I', 'I', 43, 0)
        || bytes.has(0, 'M', 'M', 0, 43);
  }

  /** The first directory, the pages after it and the sub-directories of each. */
  static List<TiffDirectory> all(FileBytes bytes) throws IOException {
    boolean bigEndian = bytes.u8(0) == 'M';
    boolean big = bytes.u16(2, bigEndian) == 43;
    List<TiffDirectory> found = new ArrayList<>();
    Set<Long> seen = new HashSet<>();
    List<Long> waiting = new ArrayList<>();
    waiting.add(big ? offset64(bytes, 8, bigEndian) : bytes.u32(4, bigEndian));
    while (!waiting.isEmpty() && found.size() < MOST_DIRECTORIES) {
      long at = waiting.remove(0);
      if (at == 0 || !seen.add(at)) {
        continue;
      }
      TiffDirectory directory = new TiffDirectory(bytes, bigEndian);
      try {
        directory.read(at, big);
        found.add(directory);
        waiting.add(directory.next);
        for (int i = 0; i < Math.min(directory.count(SUB_DIRECTORIES), MOST_DIRECTORIES); i++) {
          waiting.add(directory.value(SUB_DIRECTORIES, i));
        }
      } catch (EOFException e) {
        if (found.isEmpty()) {
          throw e;
        }
        // a broken later page does not spoil the first
      }
    }
    return found;
  }

  /** The largest picture among the directories: raw files begin with a small one. */
  static StoredSize largest(FileBytes bytes) throws IOException {
    if (!begins(bytes)) {
      return new StoredSize(0, 0);
    }
    StoredSize first = new StoredSize(0, 0);
    for (TiffDirectory directory : all(bytes)) {
      StoredSize size = directory.size();
      boolean reduced = directory.first(NEW_SUBFILE_TYPE, 0) % 2 == 1; // bit 0, a smaller version
      if (size.width() > 0 && (first.width() == 0 || (!reduced && area(size) > area(first)))) {
        first = size;
      }
      if (!isRaw(bytes)) {
        break; // of a file with pages, the first is the picture
      }
    }
    return first;
  }

  private static double area(StoredSize size) {
    return (double) size.width() * size.height();
  }

  static boolean isRaw(FileBytes bytes) throws IOException {
    if (bytes.has(8, 'C', 'R', 2)) {
      return true;
    }
    try {
      for (TiffDirectory directory : all(bytes)) {
        long photometric = directory.first(PHOTOMETRIC, 0);
        if (directory.fields.containsKey(DNG_VERSION)
            || photometric == COLOR_FILTER_ARRAY
            || photometric == LINEAR_RAW) {
          return true;
        }
      }
    } catch (EOFException e) {
      return false;
    }
    return false;
  }

  private StoredSize size() throws IOException {
    return new StoredSize(first(WIDTH, 0), first(HEIGHT, 0));
  }

  /** TIFF 6.0, 23 defines Lab in whole numbers; so are the kinds of ICC and ITU. */
  boolean isLabInFloats() throws IOException {
    long colours = first(PHOTOMETRIC, 0);
    return colours >= CIE_LAB && colours <= ITU_LAB && first(SAMPLE_FORMAT, 1) == FLOATS;
  }

  long count(int tag) {
    Field field = fields.get(tag);
    return field == null ? 0 : field.count();
  }

  long first(int tag, long otherwise) throws IOException {
    return count(tag) == 0 ? otherwise : value(tag, 0);
  }

  long value(int tag, long index) throws IOException {
    Field field = fields.get(tag);
    long at = field.position() + index * field.width();
    return switch (field.width()) {
      case 1 -> bytes.u8(at);
      case 2 -> bytes.u16(at, bigEndian);
      case 4 -> bytes.u32(at, bigEndian);
      default -> offset64(bytes, at, bigEndian);
    };
  }

  /** Where the values of a field stand; null when it has none. */
  Field field(int tag) {
    return fields.get(tag);
  }

  private void read(long at, boolean big) throws IOException {
    long entries = big ? offset64(bytes, at, bigEndian) : bytes.u16(at, bigEndian);
    int head = big ? 8 : 2;
    int entry = big ? 20 : 12;
    int inline = big ? 8 : 4;
    for (long i = 0; i < Math.min(entries, MOST_FIELDS); i++) {
      long start = at + head + i * entry;
      int tag = bytes.u16(start, bigEndian);
      int width = widthOfType(bytes.u16(start + 2, bigEndian));
      long count = big ? offset64(bytes, start + 4, bigEndian) : bytes.u32(start + 4, bigEndian);
      long value = start + (big ? 12 : 8);
      if (width == 0 || count <= 0 || count > bytes.size()) {
        continue;
      }
      long position =
          count * width <= inline
              ? value
              : big ? offset64(bytes, value, bigEndian) : bytes.u32(value, bigEndian);
      fields.put(tag, new Field(width, count, position));
    }
    long end = at + head + Math.min(entries, MOST_FIELDS) * entry;
    boolean hasNext = end + inline <= bytes.size();
    next = !hasNext ? 0 : big ? offset64(bytes, end, bigEndian) : bytes.u32(end, bigEndian);
  }

  /**
   * Bytes a value takes: BYTE and UNDEFINED 1, SHORT 2, LONG and IFD 4, LONG8 and IFD8 8; others
   * are not kept.
   */
  private static int widthOfType(int type) {
    return switch (type) {
      case 1, 7 -> 1;
      case 3 -> 2;
      case 4, 13 -> 4;
      case 16, 18 -> 8;
      default -> 0;
    };
  }

  /** Eight bytes; a value no file can have becomes one beyond any end. */
  private static long offset64(FileBytes bytes, long at, boolean bigEndian) throws IOException {
    long first = bytes.u32(at, bigEndian);
    long second = bytes.u32(at + 4, bigEndian);
    long value = bigEndian ? first << 32 | second : second << 32 | first;
    return value < 0 || value > 1L << 48 ? 1L << 48 : value;
  }
}
