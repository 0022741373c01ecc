package org.daymount.unpack;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** A file of the program cannot be written where it is wanted; says where, and why. */
public final class CannotUnpack extends IOException {
  private static final long serialVersionUID = 1;

  CannotUnpack(Path folder, IOException cause) {
    super(
        "cannot be unpacked to "
            + folder
            + ": "
            + reason(cause)
            + "; make room there, or raise the limit on the size of files",
        cause);
  }

  private static String reason(IOException e) {
    String said = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
    return said == null ? e.toString() : said;
  }
}
