package org.daymount.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.daymount.Main;

/**
 * The program in a process of its own, as a double-click starts it: no terminal, a desktop, and a
 * home of its own. In place of the system's command that opens a browser stands one of ours, first
 * in PATH, that notes what it was given.
 */
public final class DoubleClicked {
  private static final int PATIENCE = 120_000; // ms; a busy machine

  private final Path home;
  private int started;

  /**
   * @param home of the person; empty
   */
  public DoubleClicked(Path home) {
    this.home = home;
  }

  /**
   * The command that opens things.
   *
   * @param name of the command
   * @param code it ends with
   */
  public void opener(String name, int code) throws IOException {
    Path command = Files.createDirectories(home.resolve("commands")).resolve(name);
    Files.writeString(
        command,
        "#!/bin/sh\necho \"$1\" > '%1$s.part'\nmv '%1$s.part' '%1$s'\nexit %2$d\n"
            .formatted(given(), code));
    Files.setPosixFilePermissions(command, PosixFilePermissions.fromString("rwx------"));
  }

  private Path given() {
    return home.resolve("given");
  }

  /** What the command was given, once; waits for it. */
  public String opened() throws Exception {
    String text = await(given(), "\n").strip();
    Files.delete(given());
    return text;
  }

  /** Starts the program; what it says is read with {@link #said}. */
  public Process start(String... arguments) throws IOException {
    return java(Main.class, arguments);
  }

  Process java(Class<?> main, String... arguments) throws IOException {
    started++;
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.add("-Duser.home=" + home);
    words.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    words.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(words).redirectErrorStream(true);
    builder.environment().put("DISPLAY", ":0");
    builder.environment().remove("XDG_CONFIG_HOME");
    builder
        .environment()
        .merge("PATH", home.resolve("commands").toString(), (path, ours) -> ours + ":" + path);
    return builder.redirectOutput(home.resolve("said-" + started).toFile()).start();
  }

  /** What the start of that number said, counted from 1, once it holds some words. */
  public String said(int start, String words) throws Exception {
    return await(home.resolve("said-" + start), words);
  }

  private static String await(Path file, String part) throws Exception {
    for (int waited = 0; waited < PATIENCE; waited += 50) {
      String text = Files.exists(file) ? Files.readString(file) : "";
      if (text.contains(part)) {
        return text;
      }
      Thread.sleep(50);
    }
    throw new AssertionError("waited in vain for " + part + " in " + file);
  }
}
