package org.daymount.trust;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.daymount.cli.CommandLines;
import org.daymount.testphoto.ExifPhoto;

/** Whole runs of the program over a small month, here or in a Java of their own. */
final class Runs {
  /**
   * @param text all it printed, on both streams
   */
  record Ended(int code, String text) {}

  private Runs() {}

  /** Four photos of two days in June 2026. */
  static Path photos(Path folder) throws IOException {
    for (int i = 0; i < 4; i++) {
      photo(i)
          .original("2026:06:0" + (3 + i / 2) + " 14:2" + i + ":30")
          .write(folder.resolve("IMG_000" + i + ".jpg"));
    }
    return folder;
  }

  /** Speckled, and no two alike. */
  static ExifPhoto photo(int number) {
    BufferedImage picture = new BufferedImage(900, 600, BufferedImage.TYPE_INT_RGB);
    Random chance = new Random(number);
    for (int y = 0; y < 600; y += 20) {
      for (int x = 0; x < 900; x += 20) {
        int rgb = chance.nextInt(1 << 24);
        for (int i = 0; i < 400; i++) {
          picture.setRGB(x + i % 20, y + i / 20, rgb);
        }
      }
    }
    return ExifPhoto.painted().picture(picture).model("Tarn T4").exposure(125);
  }

  static List<String> arguments(Path photos, Path out, String... more) {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "sheets",
                photos.toString(),
                "--out",
                out.toString(),
                "--min-ppi",
                "80",
                "--jobs",
                "1"));
    arguments.addAll(Arrays.asList(more));
    return arguments;
  }

  static Ended here(List<String> arguments) {
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(text, true, StandardCharsets.UTF_8);
    int code = CommandLines.runHere(print, print, arguments.toArray(String[]::new));
    return new Ended(code, text.toString(StandardCharsets.UTF_8));
  }

  /** A process of its own, not waited for; its command line stays short. */
  static Process elsewhere(List<String> arguments) throws IOException {
    return elsewhere(List.of("-Xmx512m"), Map.of(), arguments);
  }

  /**
   * @param options of Java
   * @param variables of its environment, beside those of this process
   */
  static Process elsewhere(
      List<String> options, Map<String, String> variables, List<String> arguments)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.add("org.daymount.Main");
    command.addAll(arguments);
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD);
    builder.environment().putAll(variables);
    builder.environment().put("CLASSPATH", System.getProperty("java.class.path"));
    return builder.start();
  }

  /** Every file below a folder, by its path there. */
  static Map<String, byte[]> files(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }
}
