package org.daymount.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.daymount.file.WholeFile;

/** Every step by which a run changes what stands under a final name; a test stops at each. */
class Moves {
  /** Takes the place of whatever is there, at once where the file system can. */
  void replace(Path from, Path to) throws IOException {
    WholeFile.replace(from, to);
  }

  /** To a name that is free. */
  void aside(Path from, Path to) throws IOException {
    Files.move(from, to);
  }

  void delete(Path file) throws IOException {
    Files.delete(file);
  }
}
