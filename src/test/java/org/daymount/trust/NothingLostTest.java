package org.daymount.trust;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.daymount.output.OutputFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class NothingLostTest {
  /** {@code -Dkills=50} for a long run. */
  private static final int KILLS = Integer.getInteger("kills", 5);

  @TempDir Path folder;
  private Path photos;
  private Path out;
  private Map<String, byte[]> before;
  private Map<String, FileTime> times;

  @BeforeEach
  void takePhotos() throws IOException {
    photos = Runs.photos(folder.resolve("photos"));
    out = folder.resolve("out");
    before = Runs.files(photos);
    times = times();
  }

  @AfterEach
  void thePhotosAreAsTheyWere() throws IOException {
    assertSame(before, Runs.files(photos));
    assertEquals(times, times());
  }

  private Map<String, FileTime> times() throws IOException {
    Map<String, FileTime> times = new TreeMap<>();
    for (String name : before.keySet()) {
      times.put(name, Files.getLastModifiedTime(photos.resolve(name)));
    }
    return times;
  }

  private static void assertSame(Map<String, byte[]> expected, Map<String, byte[]> actual) {
    assertEquals(expected.keySet(), actual.keySet());
    expected.forEach((name, bytes) -> assertArrayEquals(bytes, actual.get(name), name));
  }

  /**
   * Runs of two kinds take turns, so that each has files to replace; each is killed (SIGKILL) at a
   * random point. Whatever stands under its final name must be whole: as the one kind of run or the
   * other makes it.
   */
  @Test
  void aKilledRunLeavesNoHalfFileAndTheNextOneMakesTheSameBytes() throws Exception {
    String[][] kinds = {{"--reveal", "1/8in"}, {"--space", "3x4"}};
    Map<String, byte[]> one = undisturbed("one", kinds[0]);
    long start = System.nanoTime();
    Map<String, byte[]> other = undisturbed("other", kinds[1]);
    long usual = System.nanoTime() - start;
    Files.createDirectories(out);
    byte[] choices = "{\n  \"schema\" : 1\n}\n".getBytes(java.nio.charset.StandardCharsets.UTF_8);
    Random chance = new Random(50);
    int killed = 0;
    for (int i = 0; i < KILLS; i++) {
      Process process = Runs.elsewhere(Runs.arguments(photos, out, kinds[i % 2]));
      // the first one early: what was usual a minute ago may take half the time now
      double when = i == 0 ? .2 : chance.nextDouble();
      boolean ended = process.waitFor((long) (usual * when), TimeUnit.NANOSECONDS);
      process.destroyForcibly().waitFor();
      killed += ended ? 0 : 1;
      for (Map.Entry<String, byte[]> file : Runs.files(out).entrySet()) {
        assertWhole(file.getKey(), file.getValue(), one, other);
      }
    }
    assertTrue(killed > 0, "every run was over before it was killed");
    Files.write(out.resolve("choices.json"), choices);
    Process last = Runs.elsewhere(Runs.arguments(photos, out, kinds[0]));
    last.waitFor();
    assertEquals(0, last.exitValue());
    Map<String, byte[]> made = Runs.files(out);
    assertArrayEquals(choices, made.remove("choices.json"), "choices.json");
    made.keySet().removeIf(name -> !one.containsKey(name) && other.containsKey(name));
    assertSame(one, made);
  }

  private Map<String, byte[]> undisturbed(String name, String... options) throws Exception {
    Path target = folder.resolve(name);
    Process process = Runs.elsewhere(Runs.arguments(photos, target, options));
    process.waitFor();
    assertEquals(0, process.exitValue());
    return Runs.files(target);
  }

  private static void assertWhole(
      String name, byte[] bytes, Map<String, byte[]> one, Map<String, byte[]> other) {
    boolean ours = name.startsWith(".daymount") || name.matches("\\..*\\.daymount-part-\\d+-\\d+");
    assertTrue(
        ours || Arrays.equals(bytes, one.get(name)) || Arrays.equals(bytes, other.get(name)),
        name + " is half written");
  }

  @Test
  void aSecondRunInTheSameFolderRefusesWithASentence() throws IOException {
    Files.createDirectories(out);
    try (OutputFolder first = OutputFolder.open(out, false)) {
      Runs.Ended second = Runs.here(Runs.arguments(photos, out));
      assertEquals(1, second.code());
      assertTrue(second.text().contains("is being written by another run"), second.text());
      assertEquals(1, second.text().lines().filter(l -> l.startsWith("error:")).count());
    }
    assertEquals(0, Runs.here(Runs.arguments(photos, out)).code());
  }

  @Test
  void aFolderThatCannotBeMadeIsOneLineAndCodeOne() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "here first");
    Runs.Ended ended = Runs.here(Runs.arguments(photos, file.resolve("out")));
    assertFailedInOneLine(ended);
    assertEquals("here first", Files.readString(file));
  }

  private static void assertFailedInOneLine(Runs.Ended ended) {
    assertEquals(1, ended.code(), ended.text());
    String last = ended.text().lines().reduce("", (a, b) -> b);
    assertTrue(last.startsWith("error: cannot write"), ended.text());
    assertTrue(!ended.text().contains("\tat "), "a stack trace");
  }

  @Test
  void aFullDiskFailsInOneLineAndLeavesTheEarlierOutputWhole() throws Exception {
    Map<String, byte[]> earlier = undisturbed("one", "--reveal", "1/8in");
    long size = earlier.values().stream().mapToLong(bytes -> bytes.length).sum();
    try (Mounted disk = Mounted.orSkip(folder.resolve("disk"), "size=" + (size + 100_000))) {
      Path target = disk.folder().resolve("out");
      assertEquals(0, Runs.here(Runs.arguments(photos, target, "--reveal", "1/8in")).code());
      Map<String, byte[]> made = Runs.files(target);
      assertFailedInOneLine(Runs.here(Runs.arguments(photos, target, "--space", "3x4")));
      assertSame(made, Runs.files(target));
    }
  }

  @Test
  void aReadOnlyFolderFailsInOneLine() throws Exception {
    try (Mounted disk = Mounted.orSkip(folder.resolve("disk"), "ro")) {
      assertFailedInOneLine(Runs.here(Runs.arguments(photos, disk.folder().resolve("out"))));
    }
  }

  /** A small file system in memory, where the test may mount one. */
  private record Mounted(Path folder) implements AutoCloseable {
    static Mounted orSkip(Path folder, String options) throws Exception {
      Files.createDirectories(folder);
      int code;
      try {
        code = run("mount", "-t", "tmpfs", "-o", options, "tmpfs", folder.toString());
      } catch (IOException e) {
        code = -1;
      }
      assumeTrue(code == 0, "this user may not mount a small disk");
      return new Mounted(folder);
    }

    private static int run(String... command) throws Exception {
      return new ProcessBuilder(command)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start()
          .waitFor();
    }

    @Override
    public void close() throws Exception {
      run("umount", folder.toString());
    }
  }
}
