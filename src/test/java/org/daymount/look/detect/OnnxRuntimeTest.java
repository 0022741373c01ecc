package org.daymount.look.detect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/**
 * What is asked of the version of ONNX Runtime in use: that it lives with any command line, and
 * that it reports nothing. 1.29.0 fails both.
 */
class OnnxRuntimeTest {
  /** Loads the detectors and says so. */
  static final class LoadDetectors {
    private LoadDetectors() {}

    public static void main(String[] photos) throws DetectorsUnavailable {
      try (Detectors detectors = Detectors.load()) {
        System.out.print("loaded");
      }
    }
  }

  /**
   * The program makes no network connection; what a library could call home with must not be there.
   */
  @Test
  void theNativeLibraryHasNoCollectorOfUsage() throws IOException {
    try (InputStream library =
        OnnxRuntimeTest.class.getResourceAsStream(
            "/ai/onnxruntime/native/linux-x64/libonnxruntime.so")) {
      String bytes = new String(library.readAllBytes(), StandardCharsets.ISO_8859_1);
      assertTrue(bytes.contains("OrtGetApiBase"), "this is ONNX Runtime's library");
      assertFalse(bytes.contains("OneCollector"));
    }
  }

  /**
   * A thousand photos named one by one are a command line of 25,000 characters; 1.29.0 overran its
   * stack at some 6,000 and took the process down without a word.
   */
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
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor(2, TimeUnit.MINUTES);
    assertEquals("loaded", said);
    assertEquals(0, process.exitValue());
  }
}
