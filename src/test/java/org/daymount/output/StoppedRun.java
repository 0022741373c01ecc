package org.daymount.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A run in a Java of its own that stops dead before one of its moves: FOLDER STEP NAME=TEXT… */
final class StoppedRun {
  private StoppedRun() {}

  /** Counts the steps, and ends the process at the one that is asked for, as SIGKILL would. */
  private static final class Stopping extends Moves {
    private int left;

    private Stopping(int left) {
      this.left = left;
    }

    private void count() {
      if (left-- == 0) {
        Runtime.getRuntime().halt(STOPPED);
      }
    }

    @Override
    void replace(Path from, Path to) throws IOException {
      count();
      super.replace(from, to);
    }

    @Override
    void aside(Path from, Path to) throws IOException {
      count();
      super.aside(from, to);
    }

    @Override
    void delete(Path file) throws IOException {
      count();
      super.delete(file);
    }
  }

  static final int STOPPED = 99;

  public static void main(String[] arguments) throws IOException {
    Moves moves = new Stopping(Integer.parseInt(arguments[1]));
    try (OutputFolder folder = OutputFolder.open(Path.of(arguments[0]), false, moves)) {
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
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of(
            "-Xshare:auto",
            "-XX:TieredStopAtLevel=1",
            StoppedRun.class.getName(),
            folder.toString(),
            Integer.toString(step)));
    files.forEach((name, text) -> command.add(name + "=" + text));
    ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
    builder
        .environment()
        .put(
            "CLASSPATH",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    int code = builder.start().waitFor();
    if (code != 0 && code != STOPPED) {
      throw new AssertionError("the run ended with " + code);
    }
    return code == STOPPED;
  }
}
