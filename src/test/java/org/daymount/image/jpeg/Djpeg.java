package org.daymount.image.jpeg;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** The reference's programs: cjpeg makes files, djpeg decodes them. Absent: the test is skipped. */
final class Djpeg {
  private static final Random CHANCE = new Random(7);

  private Djpeg() {}

  /** A picture as the portable pixmap cjpeg reads. */
  record Ppm(int width, int height, byte[] rgb) {}

  /** Edges, slopes and noise: every coefficient has something to do. */
  static Ppm noisy(int width, int height) {
    CHANCE.setSeed(width * 31L + height);
    byte[] rgb = new byte[width * height * 3];
    for (int y = 0, at = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        boolean dark = (x / 23 + y / 17) % 3 == 0;
        for (int channel = 0; channel < 3; channel++) {
          double wave = 60 * Math.sin(x * 0.2 * (channel + 1)) * Math.cos(y * 0.13);
          rgb[at++] = level((dark ? 40 : 150) + wave + CHANCE.nextGaussian() * 12);
        }
      }
    }
    return new Ppm(width, height, rgb);
  }

  static Ppm smooth(int width, int height) {
    byte[] rgb = new byte[width * height * 3];
    for (int y = 0, at = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        rgb[at++] = level(255.0 * x / width);
        rgb[at++] = level(255.0 * y / height);
        rgb[at++] = level(127 + 120 * Math.sin(x * 0.01));
      }
    }
    return new Ppm(width, height, rgb);
  }

  private static byte level(double value) {
    return (byte) Math.max(0, Math.min(255, Math.round(value)));
  }

  static byte[] compress(Ppm picture, String... options) throws IOException {
    ByteArrayOutputStream ppm = new ByteArrayOutputStream();
    ppm.writeBytes(
        ("P6\n" + picture.width + " " + picture.height + "\n255\n")
            .getBytes(StandardCharsets.US_ASCII));
    ppm.writeBytes(picture.rgb);
    List<String> command = new ArrayList<>(List.of("cjpeg"));
    command.addAll(List.of(options));
    byte[] file = run(command, ppm.toByteArray());
    assumeTrue(file.length > 0, "this cjpeg does not know " + List.of(options));
    return file;
  }

  static byte[] brightness(Path folder, byte[] file, Reduction reduction) throws IOException {
    return decode(folder, file, reduction, "-grayscale");
  }

  static byte[] colours(Path folder, byte[] file, Reduction reduction) throws IOException {
    return decode(folder, file, reduction, "-nosmooth");
  }

  private static byte[] decode(Path folder, byte[] file, Reduction reduction, String option)
      throws IOException {
    Path jpeg = folder.resolve("reference.jpg");
    Files.write(jpeg, file);
    byte[] pnm =
        run(
            List.of("djpeg", "-scale", "1/" + reduction.factor(), option, "-pnm", jpeg.toString()),
            new byte[0]);
    int at = 0;
    for (int line = 0; line < 3; at++) { // "P5", the size, "255"
      line += pnm[at] == '\n' ? 1 : 0;
    }
    return Arrays.copyOfRange(pnm, at, pnm.length);
  }

  /** What it says of a file that it decodes; empty when all is well. */
  static String warning(Path file) throws IOException {
    Process process;
    try {
      process =
          new ProcessBuilder("djpeg", file.toString())
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
    } catch (IOException e) {
      assumeTrue(false, "djpeg is not installed");
      throw e;
    }
    return new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8).strip();
  }

  /** The first samples that differ, in words; none when all are the same. */
  static List<String> differences(byte[] expected, byte[] actual, int width) {
    if (expected.length != actual.length) {
      return List.of(actual.length + " samples instead of " + expected.length);
    }
    List<String> differences = new ArrayList<>();
    for (int i = 0; i < expected.length && differences.size() < 3; i++) {
      if (expected[i] != actual[i]) {
        differences.add(
            "sample %d of row %d is %d, not %d"
                .formatted(i % width, i / width, actual[i] & 0xff, expected[i] & 0xff));
      }
    }
    return differences;
  }

  private static byte[] run(List<String> command, byte[] input) throws IOException {
    Process process;
    try {
      process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    } catch (IOException e) {
      assumeTrue(false, command.get(0) + " is not installed");
      throw e;
    }
    Thread feeder =
        new Thread(
            () -> {
              try (OutputStream in = process.getOutputStream()) {
                new ByteArrayInputStream(input).transferTo(in);
              } catch (IOException e) {
                // it ended before it had read everything, which its output will show
              }
            });
    feeder.start();
    return process.getInputStream().readAllBytes();
  }
}
