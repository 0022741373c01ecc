package org.daymount.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Ends a process dead, as SIGKILL would, before one of the steps by which the program changes what
 * stands under a name: a file put in its place, set aside, or taken away.
 */
public final class StopAt {
  private static final int STOPPED = 99;

  private StopAt() {}

  /**
   * In this process, from now on.
   *
   * @param step how many of them are done first, whatever thread they are on
   */
  public static void step(int step) {
    AtomicInteger left = new AtomicInteger(step);
    WholeFile.beforeEachMove(
        () -> {
          if (left.getAndDecrement() == 0) {
            Runtime.getRuntime().halt(STOPPED);
          }
        });
  }

  /**
   * Runs a main method in a Java of its own.
   *
   * @param options for Java
   * @return whether it was stopped; false when it came to its end
   */
  public static boolean stopped(List<String> options, Class<?> main, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of("-Xshare:auto", "-XX:TieredStopAtLevel=1", "-Xmx512m", "-Djava.awt.headless=true"));
    command.addAll(options);
    command.add(main.getName());
    command.addAll(Arrays.asList(arguments));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
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
