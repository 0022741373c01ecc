package org.daymount.review;

import java.nio.file.Path;
import java.time.YearMonth;

/** Has the choices of a folder to itself until it is killed: FILE ADDRESS. */
final class LockHolder {
  private LockHolder() {}

  public static void main(String[] arguments) throws Exception {
    ChoicesStore.open(Path.of(arguments[0]), YearMonth.of(2026, 6), arguments[1]);
    System.out.println("held");
    Thread.sleep(600_000);
  }

  /** Once it holds them. */
  static Process start(Path file, String address) throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            LockHolder.class.getName(),
            file.toString(),
            address);
    builder
        .environment()
        .put(
            "CLASSPATH",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    Process process = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
    if (process.getInputStream().read() != 'h') {
      throw new AssertionError("the other review did not start");
    }
    return process;
  }
}
