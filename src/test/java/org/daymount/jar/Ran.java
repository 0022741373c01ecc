package org.daymount.jar;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A program that was run to its end as a child process, with nothing of this process's environment.
 *
 * @param err standard error, line by line
 */
record Ran(int code, String out, List<String> err) {
  private static final int MINUTES = 3;

  /**
   * @param in the working directory
   * @param command the program's file and its arguments
   */
  static Ran in(Path in, List<String> command) throws IOException, InterruptedException {
    Path out = Files.createTempFile("daymount-out", ".txt");
    Path err = Files.createTempFile("daymount-err", ".txt");
    try {
      ProcessBuilder builder =
          new ProcessBuilder(command)
              .directory(in.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile());
      builder.environment().clear();
      builder.environment().put("LC_ALL", "C.UTF-8");
      Process process = builder.start();
      process.getOutputStream().close();
      if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
        process.destroyForcibly();
        throw new IOException(command + " did not end within " + MINUTES + " minutes");
      }
      return new Ran(
          process.exitValue(),
          Files.readString(out, StandardCharsets.UTF_8),
          Files.readAllLines(err, StandardCharsets.UTF_8));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }

  /** {@code java -jar} with this JDK. */
  static Ran jar(Path javaHome, Path jar, Path in, String... arguments) {
    List<String> command =
        new ArrayList<>(
            List.of(javaHome.resolve("bin/java").toString(), "-Xmx700m", "-jar", jar.toString()));
    command.addAll(List.of(arguments));
    try {
      return in(in, command);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
