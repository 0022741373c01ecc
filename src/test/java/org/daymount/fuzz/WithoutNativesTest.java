package org.daymount.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A HEIC photo on a system for which no decoder comes along: the class path without ffmpeg's. */
@Tag("slow")
class WithoutNativesTest {
  @TempDir Path folder;

  private Path photo() throws IOException {
    Path file = folder.resolve("IMG_1.HEIC");
    try (InputStream in = getClass().getResourceAsStream("/test-documents/testHEIF.heic")) {
      Files.copy(in, file);
    }
    return file;
  }

  private List<String> read(Path file, String path) throws IOException {
    String classPath =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(entry -> !Path.of(entry).getFileName().toString().matches("ffmpeg-.*-.*-.*"))
            .collect(Collectors.joining(File.pathSeparator));
    ProcessBuilder builder =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-Djava.awt.headless=true",
                "-Dorg.bytedeco.javacpp.cachedir=" + folder.resolve("cache"),
                "-cp",
                classPath,
                FuzzWorker.class.getName(),
                file.toString())
            .redirectErrorStream(true);
    builder.environment().put("PATH", path);
    Process process = builder.start();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
        .lines()
        .filter(line -> line.startsWith("used") || line.startsWith("named"))
        .map(line -> line.replaceFirst(" \\d+ ", " "))
        .toList();
  }

  @Test
  void withoutAConverterEachFileIsNamedWithWhatToDo() throws IOException {
    assertEquals(
        List.of(
            "named IMG_1.HEIC is HEIF, for which there is no decoder on this system; install"
                + " libheif's converter (heif-convert), or save a JPEG copy of it"),
        read(photo(), folder.toString()));
  }

  @Test
  void withLibheifsConverterInstalledItIsUsed() throws IOException {
    String path = System.getenv("PATH");
    assumeTrue(
        Stream.of(path.split(File.pathSeparator))
            .anyMatch(
                place ->
                    Files.isExecutable(Path.of(place, "heif-convert"))
                        || Files.isExecutable(Path.of(place, "heif-dec"))),
        "heif-convert is not installed");
    assertEquals(List.of("used IMG_1.HEIC HEIF"), read(photo(), path));
    try (Stream<Path> unpacked = Files.walk(folder)) {
      assertTrue(
          unpacked.noneMatch(file -> file.toString().contains("avcodec")), "natives were there");
    }
  }
}
