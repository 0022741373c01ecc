package org.daymount.look.detect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DetectorsUnavailableTest {
  /** In a Java of its own, because a library that is loaded once stays loaded. */
  @Test
  void whereTheNativeLibraryIsMissingTheReasonIsSaidInOneSentence(@TempDir Path empty)
      throws Exception {
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Donnxruntime.native.path=" + empty,
                "-cp",
                System.getProperty("java.class.path"),
                Loading.class.getName())
            .redirectErrorStream(true)
            .start();
    String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertEquals(0, java.waitFor(), said);
    String sentence = said.lines().reduce((before, last) -> last).orElseThrow();
    assertTrue(
        sentence.startsWith(
            "faces and subjects are not looked for: ONNX Runtime does not run on this computer ("),
        said);
  }

  /** Prints why the detectors cannot be loaded. */
  static final class Loading {
    private Loading() {}

    public static void main(String[] arguments) {
      try (Detectors detectors = Detectors.load()) {
        System.out.println("loaded " + detectors);
      } catch (DetectorsUnavailable e) {
        System.out.println(e.getMessage());
      }
    }
  }
}
