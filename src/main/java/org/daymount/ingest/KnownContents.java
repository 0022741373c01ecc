package org.daymount.ingest;

import java.io.IOException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;

/** What is known of files from earlier runs. Asked from several threads at once. */
@FunctionalInterface
public interface KnownContents {
  /** Every file is new. */
  KnownContents NONE = (file, bytes, modified, reading) -> reading.read();

  /** Reads a whole file. */
  @FunctionalInterface
  interface Reading {
    FileContent read() throws IOException;
  }

  /**
   * @param reading is asked when the file is not known
   */
  FileContent content(Path file, long bytes, FileTime modified, Reading reading) throws IOException;
}
