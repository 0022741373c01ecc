package org.daymount.image;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A program the tests compare with. Where it is not installed, the test is shown as skipped. */
record Tool(String name) {
  static Tool orSkip(String name, String... harmless) {
    Tool tool = new Tool(name);
    boolean installed;
    try {
      tool.run(harmless);
      installed = true;
    } catch (IOException e) {
      installed = false;
    }
    assumeTrue(installed, name + " is not installed");
    return tool;
  }

  /** What it prints, on both streams. */
  String run(String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of(name));
    command.addAll(List.of(arguments));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    process.getOutputStream().close();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }
}
