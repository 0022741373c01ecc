package org.daymount.image.jpeg;

import java.io.IOException;
import org.daymount.file.FileBytes;

/**
 * One stretch of coded data: from a scan's header or a restart marker to the next marker. How its
 * bytes become numbers is the matter of those who extend it.
 */
abstract sealed class CodedStretch permits BitReader, ArithmeticDecoder {
  /** Takes the stretch that begins at {@code from}. */
  abstract void load(FileBytes coded, long from) throws IOException;

  /** To be called before each block. */
  abstract void prepare() throws IOException;

  /** Whether more was asked for than there is. */
  abstract boolean isPastEnd();

  /** Whether all of it has been read, and nothing beyond. */
  abstract boolean isUsedUp() throws IOException;

  /** Where in the file it ends: at a marker, or at the file's end. */
  abstract long end() throws IOException;
}
