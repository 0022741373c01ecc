package org.daymount.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.daymount.file.StopAt;

/** A run in a Java of its own that stops dead before one of its moves: FOLDER STEP NAME=TEXT… */
final class StoppedRun {
  private StoppedRun() {}

  public static void main(String[] arguments) throws IOException {
    StopAt.step(Integer.parseInt(arguments[1]));
    try (OutputFolder folder = OutputFolder.open(Path.of(arguments[0]), false)) {
      for (int i = 2; i < arguments.length; i++) {
        String[] file = arguments[i].split("=");
        folder.stage(file[0], file[1].getBytes(StandardCharsets.UTF_8));
      }
      folder.finish();
    }
  }

  /** In this process, and to its end. */
  static Finished toItsEnd(Path folder, Map<String, String> files) throws IOException {
    try (OutputFolder open = OutputFolder.open(folder, false)) {
      for (Map.Entry<String, String> file : files.entrySet()) {
        open.stage(file.getKey(), file.getValue().getBytes(StandardCharsets.UTF_8));
      }
      return open.finish();
    }
  }

  /**
   * @return whether it stopped; false when it came to its end
   */
  static boolean stoppedAt(int step, Path folder, Map<String, String> files) throws Exception {
    List<String> arguments = new ArrayList<>(List.of(folder.toString(), Integer.toString(step)));
    files.forEach((name, text) -> arguments.add(name + "=" + text));
    return StopAt.stopped(List.of(), StoppedRun.class, arguments.toArray(String[]::new));
  }
}
