package org.daymount.look.cache;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.daymount.look.Face;
import org.daymount.look.Fingerprint;
import org.daymount.look.Measures;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.SaliencyMap;
import org.daymount.look.Subject;
import org.daymount.photo.Photo;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MemoryTest {
  private static final String MAKER = "test";

  @TempDir Path folder;

  @Test
  void measuresComeBackBitForBit() throws IOException {
    Random chance = new Random(11);
    for (int i = 0; i < 200; i++) {
      Measures measures = measures(chance);
      Memory memory = Memory.empty(MAKER);
      memory.keepFirstLook(photo("a"), measures);
      Measures back = afterARun(memory).firstLook(photo("a")).orElseThrow();
      assertEquals(measures, back);
      assertArrayEquals(measures.map().shares(), back.map().shares());
      assertEquals(
          Double.doubleToRawLongBits(measures.sharpness()),
          Double.doubleToRawLongBits(back.sharpness()));
    }
  }

  @Test
  void closeLooksComeBackForTheSameFramesInTheSameOrderOnly() throws IOException {
    CloseLook look =
        new CloseLook(
            List.of(new Face(new PixelBox(-3, 4, 50, 60), 0.1 + 0.2)),
            List.of(new Subject(new PixelBox(1, 2, 3, 4), "dog", 1 / 3.0)),
            1e-300);
    Memory memory = Memory.empty(MAKER);
    List<Photo> frames = List.of(photo("a"), photo("b"));
    memory.keepCloseLook(frames, List.of(Optional.of(look), Optional.empty()));
    Memory later = afterARun(memory);
    assertEquals(
        Optional.of(List.of(Optional.of(look), Optional.empty())), later.closeLook(frames));
    assertTrue(later.closeLook(List.of(photo("b"), photo("a"))).isEmpty());
    assertTrue(later.closeLook(List.of(photo("a"))).isEmpty());
  }

  @Test
  void whatNoMeasuringGivesIsMeasuredAgain() throws IOException {
    Map<String, CloseLook> impossible =
        Map.of(
            "no number", look(new PixelBox(1, 2, 3, 4), Double.NaN),
            "over 1", look(new PixelBox(1, 2, 3, 4), 1.5),
            "beside the picture", look(new PixelBox(1_000_000, 2, 3, 4), 0.7));
    for (Map.Entry<String, CloseLook> one : impossible.entrySet()) {
      Memory memory = Memory.empty(MAKER);
      memory.keepCloseLook(List.of(photo("a")), List.of(Optional.of(one.getValue())));
      assertTrue(afterARun(memory).closeLook(List.of(photo("a"))).isEmpty(), one.getKey());
      Files.delete(file());
    }
    Memory sound = Memory.empty(MAKER);
    sound.keepCloseLook(
        List.of(photo("a")), List.of(Optional.of(look(new PixelBox(1, 2, 3, 4), 0.7))));
    assertTrue(afterARun(sound).closeLook(List.of(photo("a"))).isPresent());
  }

  private static CloseLook look(PixelBox box, double confidence) {
    return new CloseLook(List.of(new Face(box, confidence)), List.of(), 0.5);
  }

  @Test
  void aFileIsReadAgainWhenItsLengthItsTimeOrAByteAnywhereInItHasChanged() throws IOException {
    Path file = folder.resolve("a.jpg");
    byte[] content = new byte[100_000];
    new Random(1).nextBytes(content);
    Files.write(file, content);
    AtomicInteger reads = new AtomicInteger();
    Memory memory = Memory.empty(MAKER);
    FileTime time = FileTime.fromMillis(1_000_000);
    read(memory, file, time, reads);
    read(afterARun(memory), file, time, reads);
    assertEquals(1, reads.get());
    read(memory, file, FileTime.fromMillis(1_000_001), reads);
    assertEquals(2, reads.get());
    content[50_000]++; // as in the middle of a picture that is not packed
    Files.write(file, content);
    read(memory, file, time, reads);
    assertEquals(3, reads.get());
    Files.write(file, Arrays.copyOf(content, 10));
    read(memory, file, time, reads);
    assertEquals(4, reads.get());
  }

  private static void read(Memory memory, Path file, FileTime time, AtomicInteger reads)
      throws IOException {
    byte[] known =
        memory.content(
            file,
            Files.size(file),
            time,
            () -> {
              reads.incrementAndGet();
              return new byte[] {1, 2, 3};
            });
    assertArrayEquals(new byte[] {1, 2, 3}, known);
  }

  @Test
  void whatARunThatDiedLeftOfTheFileGoesThoughThereIsNothingNew() throws Exception {
    Memory memory = Memory.empty(MAKER);
    memory.keepMade("a", new byte[] {1});
    Memory later = afterARun(memory);
    later.made("a");
    Process dead = new ProcessBuilder("true").start();
    dead.waitFor();
    Path part =
        Files.createFile(
            folder.resolve("." + file().getFileName() + ".daymount-part-" + dead.pid() + "-1"));
    later.write(file());
    assertTrue(Files.notExists(part));
  }

  @Test
  void whatWasMadeIsKeptAsLongAsRunsHaveAUseForIt() throws IOException {
    Memory first = Memory.empty(MAKER);
    first.keepMade("a", new byte[] {1});
    first.keepMade("b", new byte[] {2});
    Memory second = afterARun(first);
    assertArrayEquals(new byte[] {1}, second.made("a").orElseThrow());
    second.keepMade("c", new byte[] {3});
    Memory third = afterARun(second);
    assertArrayEquals(new byte[] {1}, third.made("a").orElseThrow());
    assertArrayEquals(new byte[] {3}, third.made("c").orElseThrow());
    assertTrue(third.made("b").isEmpty());
  }

  @Test
  void aDamagedFileIsSaidToBeDamagedAndHoldsNothing() throws IOException {
    Memory memory = Memory.empty(MAKER);
    memory.keepFirstLook(photo("a"), measures(new Random(2)));
    memory.write(file());
    byte[] whole = Files.readAllBytes(file());
    Random chance = new Random(3);
    for (int round = 0; round < 300; round++) {
      byte[] damaged = whole.clone();
      damaged[chance.nextInt(damaged.length)] ^= (byte) (1 + chance.nextInt(255));
      Files.write(file(), round % 3 > 0 ? damaged : Arrays.copyOf(whole, round));
      Memory read = Memory.read(List.of(file()), MAKER);
      assertTrue(read.firstLook(photo("a")).isEmpty(), "round " + round);
    }
    Files.write(file(), Arrays.copyOf(whole, whole.length - 1));
    assertTrue(Memory.read(List.of(file()), MAKER).notes().get(0).contains("is not used"));
  }

  @Test
  void whatAnotherProgramMeasuredIsNotUsed() throws IOException {
    Memory memory = Memory.empty(MAKER);
    memory.keepFirstLook(photo("a"), measures(new Random(2)));
    memory.write(file());
    Memory other = Memory.read(List.of(file()), "another");
    assertTrue(other.firstLook(photo("a")).isEmpty());
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
                  Memory memory = Memory.read(List.of(file()), MAKER);
                  assertEquals(List.of(), memory.notes());
                  memory.keepFirstLook(photo(name + i), measures(new Random(i)));
                  memory.write(file());
                }
                return null;
              }));
    }
    for (Future<?> run : running) {
      run.get();
    }
    runs.shutdown();
    assertEquals(List.of(), Memory.read(List.of(file()), MAKER).notes());
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(List.of(file()), left.toList());
    }
  }

  @Test
  void nothingIsWrittenWhenNothingIsNew() throws IOException {
    Memory memory = Memory.empty(MAKER);
    memory.keepFirstLook(photo("a"), measures(new Random(2)));
    memory.write(file());
    FileTime old = FileTime.fromMillis(5_000);
    Files.setLastModifiedTime(file(), old);
    Memory again = Memory.read(List.of(file()), MAKER);
    assertTrue(again.firstLook(photo("a")).isPresent());
    again.write(file());
    assertEquals(old, Files.getLastModifiedTime(file()));
  }

  private Memory afterARun(Memory memory) throws IOException {
    memory.write(file());
    return Memory.read(List.of(file()), MAKER);
  }

  private Path file() {
    return folder.resolve(Memory.FILE);
  }

  private static Measures measures(Random chance) {
    List<Float> moments = new ArrayList<>();
    for (int i = 0; i < 27; i++) {
      moments.add(chance.nextFloat());
    }
    float[] weights = new float[48 * 36];
    for (int i = 0; i < weights.length; i++) {
      weights[i] = chance.nextFloat() * chance.nextFloat();
    }
    return new Measures(
        chance.nextDouble() * 1000,
        chance.nextDouble(),
        chance.nextDouble(),
        new Fingerprint(chance.nextLong(), chance.nextLong(), moments),
        new SaliencyMap(48, 36, weights),
        Optional.empty());
  }

  private Photo photo(String sha256) {
    return PhotoBuilder.at(folder, sha256 + ".jpg").sha256(sha256).photo();
  }
}
