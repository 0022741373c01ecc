package org.daymount.image;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A program the tests compare with. Where it is not installed, the test is shown as skipped. */
public record Tool(String name) {
  public static Tool orSkip(String name, String... harmless) {
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

  /** ImageMagick's; a program of that name that comes earlier in the path may only look like it. */
  public static Tool imageMagickOrSkip() throws IOException {
    for (String name : List.of("/usr/bin/convert", "magick", "convert")) {
      try {
        Tool tool = new Tool(name);
        if (tool.run("-version").contains("ImageMagick")) {
          return tool;
        }
      } catch (IOException e) {
        // not installed under that name
      }
    }
    assumeTrue(false, "ImageMagick is not installed");
    throw new IOException("no ImageMagick");
  }

  /** What it prints, on both streams. */
  public String run(String... arguments) throws IOException {
    return printed(process(arguments).redirectErrorStream(true));
  }

  /** What it prints on standard output when it reads a file as its standard input. */
  public String runOn(Path input, String... arguments) throws IOException {
    return printed(
        process(arguments)
            .redirectInput(input.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD));
  }

  private ProcessBuilder process(String... arguments) {
    List<String> command = new ArrayList<>(List.of(name));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command);
  }

  private static String printed(ProcessBuilder builder) throws IOException {
    Process process = builder.start();
    process.getOutputStream().close();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }
}
