package org.daymount.output;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Every step by which a run changes what stands under a final name; a test stops at each. */
class Moves {
  /** Takes the place of whatever is there, at once where the file system can. */
  void replace(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** To a name that is free. */
  void aside(Path from, Path to) throws IOException {
    Files.move(from, to);
  }

  void delete(Path file) throws IOException {
    Files.delete(file);
  }
}
