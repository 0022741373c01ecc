package org.daymount.image.jpeg;

/**
 * One stretch of coded data: from a scan's header or a restart marker to the next marker. How its
 * bytes become numbers is the matter of those who extend it.
 */
abstract sealed class CodedStretch permits BitReader, ArithmeticDecoder {
  /** Takes the stretch that begins at {@code from}. */
  abstract void load(CodedFile coded, long from);

  /** To be called before each block. */
  abstract void prepare();

  /** Whether more was asked for than there is. */
  abstract boolean isPastEnd();

  /** Whether all of it has been read, and nothing beyond. */
  abstract boolean isUsedUp();

  /** Where in the file it ends: at a marker, or at the file's end. */
  abstract long end();
}
