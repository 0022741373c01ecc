package org.daymount.look.detect;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * ONNX Runtime 1.29.0 reads this process's command line when it starts, and ends the process with a
 * segmentation fault when that is longer than about 4,096 bytes (measured on Linux x64; a shell
 * that names two hundred pictures is enough). There the detectors are not started.
 */
final class LongCommandLine {
  private static final Path COMMAND_LINE = Path.of("/proc/self/cmdline");
  private static final int MOST_BYTES = 4_000;

  private LongCommandLine() {}

  static void refuse() throws DetectorsUnavailable {
    if (length() > MOST_BYTES) {
      throw new DetectorsUnavailable(
          "the command line is longer than 4,000 characters, which ONNX Runtime does not survive;"
              + " name the folder instead of each picture");
    }
  }

  /** In bytes; 0 where the system does not tell. */
  private static int length() {
    try {
      return Files.exists(COMMAND_LINE) ? Files.readAllBytes(COMMAND_LINE).length : 0;
    } catch (IOException e) {
      return 0;
    }
  }
}
