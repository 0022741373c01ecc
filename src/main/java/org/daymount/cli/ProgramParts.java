package org.daymount.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The parts of the program that are made for one system each, and what their lack means. */
final class ProgramParts {
  private ProgramParts() {}

  /**
   * @param detectors whether faces and subjects can be looked for here
   * @param heif whether HEIC and AVIF can be read here
   * @return a sentence for each that is missing, and last what to do; empty when all is there
   */
  static List<String> missing(boolean detectors, boolean heif) {
    List<String> told = new ArrayList<>();
    if (!detectors) {
      told.add("Faces and subjects are not looked for: pictures are judged without them.");
    }
    if (!heif) {
      told.add("HEIC and AVIF pictures, as newer phones take them, cannot be read.");
    }
    if (!told.isEmpty()) {
      told.add(
          "This program was made for another system than this computer's ("
              + system(System.getProperty("os.name", ""), System.getProperty("os.arch", ""))
              + "). Everything else works; for these, take the program for this system.");
    }
    return told;
  }

  /** The system in the words the programs' files are named by; else as Java has it. */
  static String system(String name, String arch) {
    String lower = name.toLowerCase(Locale.ROOT);
    String family =
        lower.startsWith("windows")
            ? "windows"
            : lower.startsWith("mac") ? "macos" : lower.startsWith("linux") ? "linux" : name;
    String machine =
        switch (arch) {
          case "amd64", "x86_64" -> "x64";
          case "aarch64", "arm64" -> "arm64";
          default -> arch;
        };
    return family + "-" + machine;
  }
}
