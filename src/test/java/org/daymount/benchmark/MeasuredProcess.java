package org.daymount.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Runs a command line under the POSIX shell, whose {@code times} tells the processor time of all
 * its children. Memory is looked up in /proc while it runs, so it is 0 where there is no such
 * thing, and low for processes that end within a few milliseconds.
 */
final class MeasuredProcess {
  private static final long LOOK_EVERY_MILLIS = 10;

  private MeasuredProcess() {}

  /** Whether a program is there to be compared with. */
  static boolean isInstalled(String program) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder("sh", "-c", "command -v " + program)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    return process.waitFor() == 0;
  }

  /**
   * @param script shell words; what it prints is thrown away
   * @param log a file for what {@code times} says
   * @return empty when it failed
   */
  static Optional<Cost> run(String script, List<String> arguments, Path log)
      throws IOException, InterruptedException {
    String measured = "{ " + script + "; } >/dev/null 2>&1; code=$?; times; exit $code";
    List<String> command =
        Stream.concat(Stream.of("sh", "-c", measured, "sh"), arguments.stream()).toList();
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    double megabytes = 0;
    while (!process.waitFor(LOOK_EVERY_MILLIS, TimeUnit.MILLISECONDS)) {
      megabytes =
          Math.max(
              megabytes,
              process.descendants().mapToDouble(MeasuredProcess::megabytes).max().orElse(0));
    }
    double wall = (System.nanoTime() - start) / 1e9;
    double cpu = childrensSeconds(Files.readAllLines(log));
    return process.exitValue() == 0 || process.exitValue() == 3
        ? Optional.of(new Cost(cpu, wall, megabytes))
        : Optional.empty();
  }

  /** The second line of {@code times}: "0m1.23s 0m0.45s", user and system, of the children. */
  private static double childrensSeconds(List<String> lines) {
    String[] times = lines.get(lines.size() - 1).trim().split("\\s+");
    return seconds(times[0]) + seconds(times[1]);
  }

  private static double seconds(String time) {
    int minutes = time.indexOf('m');
    return 60 * Integer.parseInt(time.substring(0, minutes))
        + Double.parseDouble(time.substring(minutes + 1, time.length() - 1));
  }

  private static double megabytes(ProcessHandle process) {
    try (Stream<String> lines = Files.lines(Path.of("/proc/" + process.pid() + "/status"))) {
      return lines
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
          .findFirst()
          .orElse(0);
    } catch (IOException | java.io.UncheckedIOException e) {
      return 0; // it has ended meanwhile
    }
  }
}
