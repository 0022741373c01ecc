package org.daymount.ingest;

import java.io.IOException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;

/** What is known of files from earlier runs. Asked from several threads at once. */
@FunctionalInterface
public interface KnownContents {
  /** Every file is new. */
  KnownContents NONE = (file, bytes, modified, reading) -> reading.read();

  /** Reads a whole file, and gives what is to be known of it next time. */
  @FunctionalInterface
  interface Reading {
    byte[] read() throws IOException;
  }

  /**
   * What reading a file gave, now or in an earlier run: bytes that the reader alone understands.
   *
   * @param reading is asked when the file is not known
   */
  byte[] content(Path file, long bytes, FileTime modified, Reading reading) throws IOException;
}
