package org.daymount.look.detect;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/**
 * A person who names a thousand photos one by one has a command line of 50,000 characters. ONNX
 * Runtime 1.29.0 overran its stack on it and took the process down without a word.
 */
class LongCommandLineTest {
  /** Loads the detectors and says so. */
  static final class LoadDetectors {
    private LoadDetectors() {}

    public static void main(String[] photos) throws DetectorsUnavailable {
      try (Detectors detectors = Detectors.load()) {
        System.out.print("loaded");
      }
    }
  }

  @Test
  void theDetectorsLoadHoweverManyPhotosAreNamed() throws IOException, InterruptedException {
    ProcessBuilder java =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            LoadDetectors.class.getName(),
            "IMG_20260603_142530.jpg ".repeat(2_100)); // below the 128 kB Linux allows one argument
    java.environment()
        .put(
            "CLASSPATH",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    java.redirectError(ProcessBuilder.Redirect.DISCARD);
    Process process = java.start();
    String said = new String(process.getInputStream().readAllBytes());
    process.waitFor(2, TimeUnit.MINUTES);
    assertEquals("loaded", said);
    assertEquals(0, process.exitValue());
  }
}
