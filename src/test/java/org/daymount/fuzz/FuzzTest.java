package org.daymount.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("slow")
class FuzzTest {
  @TempDir Path folder;

  /** Short runs of the fuzz command; the long one is in DEVELOPERS.md. */
  @ParameterizedTest
  @EnumSource
  void aHundredDamagedFilesAreEachUsedOrNamed(Fuzz.Damage damage) throws IOException {
    Fuzz.Tally tally = new Fuzz(folder).run(100, 20260601, damage);
    assertEquals(List.of(), tally.faults());
    assertTrue(tally.byKind().containsKey("heif"), "no HEIC among " + tally.byKind().keySet());
    assertEquals(
        100,
        tally.byKind().values().stream().mapToInt(n -> Arrays.stream(n).sum()).sum(),
        "files told of");
    assertTrue(
        tally.byKind().values().stream().allMatch(n -> n[1] + n[2] > 0),
        "nothing was damaged enough");
  }
}
