package org.daymount.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
  @TempDir Path folder;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aPersonsOwnPartFilesStay() throws IOException {
    Files.writeString(folder.resolve("note.txt"), "before");
    Files.writeString(folder.resolve("note.txt.part"), "mine");
    Files.writeString(folder.resolve("note.txt.1.part"), "mine too");
    byte[] bytes = "after".getBytes(StandardCharsets.UTF_8);
    WholeFile.write(folder.resolve("note.txt"), bytes);
    assertArrayEquals(bytes, Files.readAllBytes(folder.resolve("note.txt")));
    assertEquals("mine", Files.readString(folder.resolve("note.txt.part")));
    assertEquals("mine too", Files.readString(folder.resolve("note.txt.1.part")));
    assertEquals(3, names().size());
  }

  @Test
  void whatARunThatDiedLeftGoesAndWhatALivingOneWritesStays() throws Exception {
    Process dead =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version")
            .start();
    dead.getErrorStream().readAllBytes();
    dead.waitFor();
    Files.writeString(folder.resolve(".note.txt.daymount-part-" + dead.pid() + "-1"), "half");
    Path earlier = // by a process that died long ago, whose number this one was given again
        folder.resolve(".note.txt.daymount-part-" + ProcessHandle.current().pid() + "-2");
    Files.writeString(earlier, "half");
    Files.setLastModifiedTime(earlier, FileTime.fromMillis(0));
    String living = ".note.txt.daymount-part-" + ProcessHandle.current().pid() + "-1";
    Files.writeString(folder.resolve(living), "another thread's");
    Files.writeString(folder.resolve(".note.txt.daymount-part-mine-1"), "a person's");
    WholeFile.write(folder.resolve("note.txt"), new byte[] {1});
    assertEquals(List.of(living, ".note.txt.daymount-part-mine-1", "note.txt"), names());
  }

  @Test
  void whatCannotBePutInPlaceLeavesNothingBehind() throws IOException {
    Path taken = Files.createDirectories(folder.resolve("taken").resolve("full")).getParent();
    assertThrows(IOException.class, () -> WholeFile.write(taken, new byte[] {1}));
    assertEquals(List.of("taken"), names());
  }

  /** FIPS 180-4's example of one block, as NIST publishes it: "abc". */
  @Test
  void aSumIsTheStandards() {
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        Sha256.hex("abc".getBytes(StandardCharsets.US_ASCII)));
  }
}
