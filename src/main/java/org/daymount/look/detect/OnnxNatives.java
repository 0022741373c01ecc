package org.daymount.look.detect;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.daymount.unpack.Unpacked;

/**
 * ONNX Runtime's native libraries, unpacked by us: by itself it makes a copy of them in the
 * temporary directory for every run, and leaves the folder.
 */
final class OnnxNatives {
  private static final String FOLDER = "onnxruntime.native.path"; // ONNX Runtime's property
  private static final String RESOURCES = "/ai/onnxruntime/native/";

  private OnnxNatives() {}

  /** Unless they lie unpacked already, as beside an installed program. */
  static synchronized void unpack() throws IOException {
    if (System.getProperty(FOLDER) == null) {
      String folder = RESOURCES + system() + "-" + processor() + "/";
      List<String> files =
          Stream.of("onnxruntime", "onnxruntime4j_jni", "onnxruntime_providers_shared")
              .map(name -> folder + System.mapLibraryName(name))
              .toList();
      try {
        Path unpacked = Unpacked.ofThisUser().together("onnxruntime", files);
        System.setProperty(FOLDER, unpacked.toString());
      } catch (FileNotFoundException e) {
        // none for this system: the library itself says so
      }
    }
  }

  /**
   * Takes away the folder that the library makes in the temporary directory when it is loaded, and
   * would leave there if the program were killed. Nothing is in it, for all is unpacked already.
   */
  static synchronized void clearTemporary() {
    try {
      Field folder = Class.forName("ai.onnxruntime.OnnxRuntime").getDeclaredField("tempDirectory");
      folder.setAccessible(true);
      if (folder.get(null) instanceof Path made) {
        Files.deleteIfExists(made);
      }
    } catch (ReflectiveOperationException | IOException | RuntimeException e) {
      // another version of the library: it takes it away at the end of the program
    }
  }

  /** As the library names the folders in its jar. */
  private static String system() {
    String name = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    return name.startsWith("windows") ? "win" : name.startsWith("mac") ? "osx" : "linux";
  }

  private static String processor() {
    String name = System.getProperty("os.arch", "").toLowerCase(Locale.ROOT);
    return name.equals("aarch64") || name.equals("arm64") ? "aarch64" : "x64";
  }
}
