package org.daymount.trust;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.daymount.file.StopAt;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whole runs that die at every move, one after the other, from an empty home on: unpacked natives
 * and typefaces, the cache, the record, each sheet and page.
 */
@Tag("slow")
class StoppedInEveryMoveTest {
  private static final int MOST_RUNS = 60;

  @TempDir Path folder;

  private boolean stopped(int step, String home, String out) throws Exception {
    Path homeFolder = Files.createDirectories(folder.resolve(home));
    Path temporary = Files.createDirectories(folder.resolve("tmp"));
    List<String> arguments = new ArrayList<>(List.of(Integer.toString(step)));
    arguments.addAll(Runs.arguments(folder.resolve("photos"), folder.resolve(out)));
    return StopAt.stopped(
        List.of(
            "-Duser.home=" + homeFolder,
            "-Djava.io.tmpdir=" + temporary,
            "-XX:-UsePerfData",
            "-XX:TieredStopAtLevel=1"), // short runs are over before the second compiler pays
        StoppedProgram.class,
        arguments.toArray(String[]::new));
  }

  /**
   * Each run does one move more than the one before it had done, and dies: so the process ends
   * between any two moves, and every run but the first finds what a dead one left.
   */
  @Test
  void runsThatDieBetweenAnyTwoMovesLeaveWholeFilesAndInTheEndTheSameOnes() throws Exception {
    Path photos = Runs.photos(folder.resolve("photos"));
    Map<String, byte[]> before = Runs.files(photos);
    assertEquals(false, stopped(Integer.MAX_VALUE, "other-home", "undisturbed"));
    Map<String, byte[]> whole = Runs.files(folder.resolve("undisturbed"));
    Map<String, byte[]> unpacked = Runs.files(folder.resolve("other-home"));

    int died = 0;
    while (stopped(1, "home", "out")) {
      died++;
      assertTrue(died < MOST_RUNS, "the runs get nowhere");
      assertWhole(folder.resolve("out"), whole);
      assertWhole(folder.resolve("home"), unpacked);
      try (Stream<Path> left = Files.list(folder.resolve("tmp"))) {
        assertEquals(List.of(), left.toList(), "in the temporary directory");
      }
    }
    assertTrue(died > 10, "only " + died + " runs died");
    Map<String, byte[]> made = Runs.files(folder.resolve("out"));
    assertEquals(whole.keySet(), made.keySet());
    whole.forEach((name, bytes) -> assertArrayEquals(bytes, made.get(name), name));
    before.forEach((name, bytes) -> assertArrayEquals(bytes, read(photos.resolve(name)), name));
  }

  /** Whatever stands under a name of an undisturbed run is as that one made it. */
  private static void assertWhole(Path below, Map<String, byte[]> whole) throws IOException {
    if (Files.exists(below)) {
      Runs.files(below)
          .forEach(
              (name, bytes) -> {
                // the record, the cache and the lock grow; Java writes its list of typefaces itself
                boolean other = name.startsWith(".daymount-") || name.startsWith(".java");
                if (whole.containsKey(name) && !other) {
                  assertArrayEquals(whole.get(name), bytes, name);
                }
              });
    }
  }

  private static byte[] read(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
