package org.daymount.trust;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a run leaves beside its output: docs/trust.md lists it, and this looks whether it is all.
 */
@Tag("slow")
class WrittenBesideTest {
  @TempDir Path folder;
  private Path home;
  private Path temporary;

  @BeforeEach
  void aHomeAndPhotosOfSeveralFormats() throws IOException {
    home = Files.createDirectory(folder.resolve("home"));
    temporary = Files.createDirectory(folder.resolve("tmp"));
    Runs.photos(folder.resolve("photos"));
    Path others = Files.createDirectory(folder.resolve("others"));
    copy("/test-documents/testHEIF.heic", others.resolve("a.heic")); // Tika's test pictures
    copy("/test-documents/testTIFF.tif", others.resolve("b.tif"));
    copy("/test-documents/testWEBP.webp", others.resolve("c.webp"));
    copy("/test-documents/testPNG.png", others.resolve("d.png"));
  }

  private static void copy(String resource, Path to) throws IOException {
    try (InputStream in = WrittenBesideTest.class.getResourceAsStream(resource)) {
      Files.copy(in, to);
    }
  }

  private Runs.Ended makeSheets(String... before) throws Exception {
    return run(List.of(before), Runs.arguments(folder.resolve("photos"), folder.resolve("out")));
  }

  private Runs.Ended lookAtOthers() throws Exception {
    return run(List.of(), List.of("look", folder.resolve("others").toString()));
  }

  /** In a Java whose home and temporary directory are folders of ours, empty at first. */
  private Runs.Ended run(List<String> before, List<String> arguments) throws Exception {
    List<String> command = new ArrayList<>(before);
    command.addAll(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx512m",
            "-Duser.home=" + home,
            "-Djava.io.tmpdir=" + temporary,
            "org.daymount.Main"));
    command.addAll(arguments);
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("CLASSPATH", System.getProperty("java.class.path"));
    Process process = builder.start();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Runs.Ended(process.waitFor(), text);
  }

  private static TreeSet<String> files(Path below) throws IOException {
    try (Stream<Path> all = Files.walk(below)) {
      TreeSet<String> found = new TreeSet<>();
      all.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
          .forEach(path -> found.add(below.relativize(path).toString()));
      return found;
    }
  }

  @Test
  void nothingStaysInTheTemporaryDirectoryAndInTheHomeOnlyWhatIsListed() throws Exception {
    Runs.Ended sheets = makeSheets();
    assertEquals(0, sheets.code(), sheets.text());
    Runs.Ended looks = lookAtOthers();
    assertEquals(0, looks.code(), looks.text());
    List<String> listed = List.of(".cache/daymount/unpacked/", ".java/fonts/");
    TreeSet<String> there = files(home);
    assertTrue(there.stream().anyMatch(name -> name.contains("avcodec")), "no HEIC was read");
    assertTrue(there.stream().anyMatch(name -> name.contains("onnxruntime")), "no detectors ran");
    there.removeIf(name -> listed.stream().anyMatch(name::startsWith));
    assertEquals(new TreeSet<>(), there);
    try (Stream<Path> left = Files.list(temporary)) {
      assertEquals(List.of(), left.toList());
    }
  }

  @Test
  void unpackedFilesThatSomebodyChangedAreReplacedBeforeTheyAreLoaded() throws Exception {
    assertEquals(0, makeSheets().code());
    assertEquals(0, lookAtOthers().code());
    List<Path> changed = new ArrayList<>();
    try (Stream<Path> all = Files.walk(home)) {
      for (Path file :
          all.filter(path -> path.getFileName().toString().matches("lib(avcodec|onnx).*"))
              .filter(path -> Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))
              .toList()) {
        FileTime time = Files.getLastModifiedTime(file);
        Files.write(file, new byte[(int) Files.size(file)]);
        Files.setLastModifiedTime(file, time); // length and time tell nothing
        changed.add(file);
      }
    }
    assumeTrue(changed.size() >= 3, "natives have other names on this system");
    Runs.Ended sheets = makeSheets();
    assertEquals(0, sheets.code(), sheets.text());
    Runs.Ended looks = lookAtOthers();
    assertEquals(0, looks.code(), looks.text());
    for (Path file : changed) {
      assertFalse(allZero(Files.readAllBytes(file)), file + " is as it was changed");
    }
  }

  private static boolean allZero(byte[] bytes) {
    return Arrays.equals(bytes, new byte[bytes.length]);
  }

  /** bash counts blocks of 1,024 bytes (GNU bash manual, ulimit). */
  @Test
  void aLimitOnTheSizeOfFilesIsNamedAsWhatItIs() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no bash here");
    Runs.Ended ended = makeSheets("/bin/bash", "-c", "ulimit -f 300; exec \"$@\"", "bash");
    assertEquals(1, ended.code(), ended.text());
    List<String> errors = ended.text().lines().filter(line -> line.startsWith("error:")).toList();
    assertEquals(1, errors.size(), ended.text());
    assertTrue(
        errors.get(0).matches("error: the typeface \\S+ cannot be unpacked to .*: .*(?i)large.*"),
        errors.get(0));
  }
}
