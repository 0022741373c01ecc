package org.daymount.cache;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.daymount.cache.Cache.Keep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CacheTest {
  private static final String MAKER = "test";

  @TempDir Path folder;

  /** Something that is kept. */
  private record Value(List<Double> numbers, Optional<LocalDateTime> time, byte[] bytes) {
    static Value of(int seed) {
      Random chance = new Random(seed);
      byte[] bytes = new byte[100];
      chance.nextBytes(bytes);
      return new Value(
          List.of(chance.nextDouble(), Double.MIN_VALUE, -0.0, 0.1 + 0.2),
          Optional.of(LocalDateTime.of(2026, 6, 1 + chance.nextInt(28), 8, 0, 1, 5)),
          bytes);
    }

    boolean isSameAs(Value other) {
      return numbers.equals(other.numbers)
          && time.equals(other.time)
          && Arrays.equals(bytes, other.bytes);
    }
  }

  private record Other(String text) {}

  private static boolean has(Cache cache, String key, int seed) {
    return cache
        .get(Keep.MEASURED, key, Value.class)
        .filter(value -> value.isSameAs(Value.of(seed)))
        .isPresent();
  }

  private static Cache with(String key, int seed) {
    Cache cache = Cache.empty(MAKER);
    cache.put(Keep.MEASURED, key, Value.of(seed));
    return cache;
  }

  @Test
  void recordsComeBackBitForBitAsWhatTheyWereOnly() throws IOException {
    Cache later = afterARun(with("a", 1));
    assertTrue(has(later, "a", 1));
    assertTrue(later.get(Keep.MEASURED, "a", Other.class).isEmpty());
    assertTrue(later.get(Keep.DRAWN, "a", Value.class).isEmpty());
    assertTrue(later.get(Keep.MEASURED, "b", Value.class).isEmpty());
  }

  /** RFC 8949, appendix A: an open array is 9f to ff, the text "a" 61 61, 1.1 is fb 3f f1 99…9a. */
  @Test
  void theyAreKeptAsTheStandardHasThem() {
    record Two(String text, double number) {}
    assertEquals(
        "9f6161fb3ff199999999999aff",
        HexFormat.of().formatHex(RecordCodec.bytes(new Two("a", 1.1))));
  }

  @Test
  void bytesThatAreNoSuchRecordAreNone() {
    byte[] whole = RecordCodec.bytes(Value.of(1));
    for (int length = 0; length < whole.length; length++) {
      assertTrue(RecordCodec.record(Arrays.copyOf(whole, length), Value.class).isEmpty());
    }
    assertTrue(RecordCodec.record(Arrays.copyOf(whole, whole.length + 1), Value.class).isEmpty());
  }

  @Test
  void whereNothingIsKeptNothingIsThere() throws IOException {
    Cache.NONE.put(Keep.MEASURED, "a", Value.of(1));
    assertTrue(Cache.NONE.get(Keep.MEASURED, "a", Value.class).isEmpty());
    Cache.NONE.write(file());
    assertTrue(Files.notExists(file()));
  }

  @Test
  void whatARunThatDiedLeftOfTheFileGoesThoughThereIsNothingNew() throws Exception {
    Cache later = afterARun(with("a", 1));
    assertTrue(has(later, "a", 1));
    Process dead = new ProcessBuilder("true").start();
    dead.waitFor();
    Path part =
        Files.createFile(
            folder.resolve("." + file().getFileName() + ".daymount-part-" + dead.pid() + "-1"));
    later.write(file());
    assertTrue(Files.notExists(part));
  }

  @Test
  void whatWasDrawnIsKeptAsLongAsRunsHaveAUseForIt() throws IOException {
    Cache first = with("measured", 1);
    first.put(Keep.DRAWN, "a", new Other("a"));
    first.put(Keep.DRAWN, "b", new Other("b"));
    Cache second = afterARun(first);
    assertEquals(Optional.of(new Other("a")), second.get(Keep.DRAWN, "a", Other.class));
    second.put(Keep.DRAWN, "c", new Other("c"));
    Cache third = afterARun(second);
    assertEquals(Optional.of(new Other("a")), third.get(Keep.DRAWN, "a", Other.class));
    assertEquals(Optional.of(new Other("c")), third.get(Keep.DRAWN, "c", Other.class));
    assertTrue(third.get(Keep.DRAWN, "b", Other.class).isEmpty());
    assertTrue(has(third, "measured", 1));
  }

  @Test
  void aDamagedFileIsSaidToBeDamagedAndHoldsNothing() throws IOException {
    with("a", 2).write(file());
    byte[] whole = Files.readAllBytes(file());
    Random chance = new Random(3);
    for (int round = 0; round < 300; round++) {
      byte[] damaged = whole.clone();
      damaged[chance.nextInt(damaged.length)] ^= (byte) (1 + chance.nextInt(255));
      Files.write(file(), round % 3 > 0 ? damaged : Arrays.copyOf(whole, round));
      Cache read = Cache.read(List.of(file()), MAKER);
      assertTrue(read.get(Keep.MEASURED, "a", Value.class).isEmpty(), "round " + round);
    }
    Files.write(file(), Arrays.copyOf(whole, whole.length - 1));
    assertTrue(Cache.read(List.of(file()), MAKER).notes().get(0).contains("is not used"));
  }

  @Test
  void whatAnotherProgramMeasuredIsNotUsed() throws IOException {
    with("a", 2).write(file());
    Cache other = Cache.read(List.of(file()), "another");
    assertTrue(other.get(Keep.MEASURED, "a", Value.class).isEmpty());
    assertTrue(other.notes().get(0).contains("another build"));
  }

  @Test
  void runsAtTheSameTimeLeaveAWholeFile() throws Exception {
    ExecutorService runs = Executors.newFixedThreadPool(4);
    List<Future<?>> running = new ArrayList<>();
    for (int run = 0; run < 8; run++) {
      String name = "photo " + run;
      running.add(
          runs.submit(
              () -> {
                for (int i = 0; i < 10; i++) {
                  Cache memory = Cache.read(List.of(file()), MAKER);
                  assertEquals(List.of(), memory.notes());
                  memory.put(Keep.MEASURED, name + i, Value.of(i));
                  memory.write(file());
                }
                return null;
              }));
    }
    for (Future<?> run : running) {
      run.get();
    }
    runs.shutdown();
    assertEquals(List.of(), Cache.read(List.of(file()), MAKER).notes());
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(List.of(file()), left.toList());
    }
  }

  @Test
  void nothingIsWrittenWhenNothingIsNew() throws IOException {
    with("a", 2).write(file());
    FileTime old = FileTime.fromMillis(5_000);
    Files.setLastModifiedTime(file(), old);
    Cache again = Cache.read(List.of(file()), MAKER);
    assertTrue(has(again, "a", 2));
    again.write(file());
    assertEquals(old, Files.getLastModifiedTime(file()));
  }

  private Cache afterARun(Cache memory) throws IOException {
    memory.write(file());
    return Cache.read(List.of(file()), MAKER);
  }

  private Path file() {
    return folder.resolve(Cache.FILE);
  }
}
