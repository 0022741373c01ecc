package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
  @TempDir Path home;

  @Test
  void nothingIsInItsPlaceBeforeTheEnd() throws IOException {
    try (OutputFolder folder = OutputFolder.open(home, false)) {
      folder.stage("a/one.txt", bytes("one"));
      assertFalse(Files.exists(home.resolve("a/one.txt")));
      assertEquals(List.of("a/one.txt"), folder.finish());
    }
    assertEquals("one", Files.readString(home.resolve("a/one.txt")));
  }

  @Test
  void aRunThatStopsHalfwayLeavesTheEarlierFilesAndNoParts() throws IOException {
    write("one.txt", "first");
    try (OutputFolder folder = OutputFolder.open(home, false)) {
      folder.stage("one.txt", bytes("second"));
    }
    assertEquals("first", Files.readString(home.resolve("one.txt")));
    try (var files = Files.list(home)) {
      assertTrue(files.noneMatch(file -> file.toString().endsWith(".part")));
    }
  }

  @Test
  void aFileThatIsTheSameIsNotCountedAsChanged() throws IOException {
    write("one.txt", "same");
    try (OutputFolder folder = OutputFolder.open(home, false)) {
      folder.stage("one.txt", bytes("same"));
      assertEquals(List.of(), folder.finish());
    }
  }

  @Test
  void aFileOfAnEarlierRunThatSomebodyChangedIsKept() throws IOException {
    write("old.txt", "ours");
    Files.writeString(home.resolve("old.txt"), "changed by hand");
    write("new.txt", "next");
    assertEquals("changed by hand", Files.readString(home.resolve("old.txt")));
  }

  @Test
  void aSecondRunInTheSameFolderIsRefusedWithASentence() throws IOException {
    try (OutputFolder first = OutputFolder.open(home, false)) {
      OutputException refused =
          assertThrows(OutputException.class, () -> OutputFolder.open(home, false));
      assertTrue(refused.getMessage().contains("another run"), refused.getMessage());
      first.finish();
    }
    OutputFolder.open(home, false).close();
  }

  @Test
  void aFileInTheWayOfTheFolderIsOneSentence() throws IOException {
    Path file = Files.writeString(home.resolve("taken"), "x");
    OutputException refused =
        assertThrows(OutputException.class, () -> OutputFolder.open(file, false));
    assertTrue(refused.getMessage().contains("--out"), refused.getMessage());
  }

  private void write(String name, String content) throws IOException {
    try (OutputFolder folder = OutputFolder.open(home, false)) {
      folder.stage(name, bytes(content));
      folder.finish();
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
