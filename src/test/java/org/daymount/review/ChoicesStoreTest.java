package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.daymount.choices.Choices;
import org.daymount.choices.ChoicesFile;
import org.daymount.file.StopAt;
import org.daymount.output.OutputException;
import org.daymount.output.OutputFolder;
import org.daymount.pipeline.RunFailed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChoicesStoreTest {
  private static final YearMonth JUNE = YearMonth.of(2026, 6);
  private static final String ADDRESS = "http://127.0.0.1:41234";

  /** No process has a number as large: Linux's go to 2^22 (proc(5), pid_max). */
  private static final String NOBODY = "999999999";

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void nameFile() {
    file = folder.resolve("June/choices.json");
  }

  private ChoicesStore open() {
    return ChoicesStore.open(file, JUNE, ADDRESS);
  }

  private static Choices story(String text) {
    return StoppedChoices.story(text);
  }

  private Path beside(String name) {
    return file.resolveSibling(name);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"{\"schema\":1,\"days\":[{\"da", "", "{\"schema\":2}", "not json", "\u0000\u0000"})
  void whatCannotBeReadIsNeverReplacedAndACopyOfItIsKept(String unreadable) throws Exception {
    try (ChoicesStore store = open()) {
      store.read();
      store.write(story("first"));
      Files.writeString(file, unreadable);
      for (int i = 0; i < 2; i++) {
        assertTrue(store.isChangedByOthers());
        RunFailed refused = assertThrows(RunFailed.class, store::read);
        assertTrue(refused.getMessage().contains("choices.json.damaged-1"), refused.getMessage());
        assertThrows(OutputException.class, () -> store.write(story("second")));
        assertEquals(unreadable, Files.readString(file));
      }
      assertEquals(unreadable, Files.readString(beside("choices.json.damaged-1")));
      assertFalse(Files.exists(beside("choices.json.damaged-2")), "one copy is enough");
      Files.writeString(file, "{");
      assertTrue(
          assertThrows(RunFailed.class, store::read)
              .getMessage()
              .contains("choices.json.damaged-2"));
      Files.writeString(file, "{\"schema\":1}");
      assertEquals(Choices.NONE, store.read());
      store.write(story("third"));
    }
    assertTrue(Files.readString(file).contains("third"));
  }

  @Test
  void theVersionBeforeTheLastIsKept() throws Exception {
    try (ChoicesStore store = open()) {
      store.read();
      store.write(story("first"));
      assertFalse(Files.exists(beside("choices.json.bak")));
      store.write(story("second"));
      assertTrue(Files.readString(beside("choices.json.bak")).contains("first"));
      Files.writeString(file, "{");
      assertTrue(
          assertThrows(RunFailed.class, store::read)
              .getMessage()
              .contains("choices.json.bak is as it was before the last change"));
    }
  }

  @Test
  void whatSomethingElseWroteIsNotReplacedUnread() throws Exception {
    try (ChoicesStore store = open()) {
      store.read();
      store.write(story("mine"));
      String theirs = Files.readString(file).replace("mine", "theirs");
      Files.writeString(file, theirs);
      assertThrows(OutputException.class, () -> store.write(story("mine again")));
      assertEquals(theirs, Files.readString(file));
      assertEquals(story("theirs"), store.read());
      store.write(story("mine again"));
    }
  }

  @Test
  void aSecondReviewIsToldWhereTheFirstIs() throws Exception {
    try (ChoicesStore store = open()) {
      RunFailed refused = assertThrows(RunFailed.class, () -> open().close());
      assertEquals(
          "a review of June 2026 is open already at http://127.0.0.1:41234; go on in its page, or"
              + " end it first (by its button End Daymount, or Ctrl-C where it"
              + " was started)",
          refused.getMessage());
      store.read();
      store.write(story("still mine"));
      OutputFolder.open(folder.resolve("June"), false).close(); // sheets may be made meanwhile
    }
    open().close();
  }

  /** The lock belongs to the process, not to the file: a dead one leaves nothing to clear away. */
  @Test
  void aReviewOfAnotherProcessKeepsItsChoicesUntilItDies() throws Exception {
    Process other = LockHolder.start(file, "http://127.0.0.1:41000");
    try {
      RunFailed refused = assertThrows(RunFailed.class, () -> open().close());
      assertTrue(refused.getMessage().contains("at http://127.0.0.1:41000"), refused.getMessage());
    } finally {
      other.destroyForcibly().waitFor();
    }
    try (ChoicesStore store = open()) {
      store.read();
      store.write(story("taken over"));
      assertEquals(ADDRESS, Files.readString(beside(".daymount-review")));
    }
    assertEquals("", Files.readString(beside(".daymount-review")), "no address of a review past");
  }

  @Test
  void aLinkedFileIsWrittenWhereItLeadsAndALinkToNothingIsRefused() throws Exception {
    Files.createDirectories(folder.resolve("June"));
    Path kept = folder.resolve("kept-elsewhere.json");
    Files.createSymbolicLink(file, kept);
    try (ChoicesStore store = open()) {
      assertTrue(
          assertThrows(RunFailed.class, store::read)
              .getMessage()
              .contains("is a link to something"));
      Files.writeString(kept, "{\"schema\":1}");
      store.read();
      store.write(story("through the link"));
    }
    assertTrue(Files.isSymbolicLink(file));
    assertTrue(Files.readString(kept).contains("through the link"));
  }

  @Test
  void twoReviewsWhoseFilesAreLinksToOneDoNotBothWriteIt() throws Exception {
    Path kept = Files.writeString(folder.resolve("kept-elsewhere.json"), "{\"schema\":1}");
    Path july = Files.createDirectories(folder.resolve("July")).resolve("choices.json");
    Files.createDirectories(folder.resolve("June"));
    Files.createSymbolicLink(file, kept);
    Files.createSymbolicLink(july, kept);
    YearMonth month = YearMonth.of(2026, 6);
    try (ChoicesStore store = open()) {
      RunFailed refused =
          assertThrows(RunFailed.class, () -> ChoicesStore.open(july, month, "other").close());
      assertEquals(
          "a review whose choices are the same file, "
              + kept.toRealPath()
              + ", is open already at "
              + ADDRESS
              + "; end it first, or remove the link "
              + july,
          refused.getMessage());
      store.read();
      store.write(story("still mine"));
    }
    ChoicesStore.open(july, month, "other").close();
    Files.delete(july);
    Files.createSymbolicLink(july, file); // the file of a folder, which is itself a link
    try (ChoicesStore store = open()) {
      assertThrows(RunFailed.class, () -> ChoicesStore.open(july, month, "other").close());
    }
    Files.delete(file);
    Files.writeString(file, "{\"schema\":1}"); // and one that is none
    try (ChoicesStore store = open()) {
      assertThrows(RunFailed.class, () -> ChoicesStore.open(july, month, "other").close());
    }
    ChoicesStore.open(july, month, "other").close();
    open().close();
  }

  @Test
  void aPersonsOwnPartFileStaysAndOnesOfAKilledReviewGo() throws Exception {
    Files.createDirectories(folder.resolve("June"));
    Files.writeString(beside("choices.json.part"), "half a download");
    Path killed = beside(".choices.json.daymount-part-" + NOBODY + "-1");
    Path before = beside(".choices.json.bak.daymount-part-" + NOBODY + "-1");
    for (Path part : List.of(killed, before)) {
      Files.writeString(part, "{\"schema\":1,\"days\":[{\"da");
    }
    try (ChoicesStore store = open()) {
      assertFalse(Files.exists(killed) || Files.exists(before), "gone, though nothing is written");
      assertEquals(Choices.NONE, store.read());
      store.write(story("whole"));
      store.write(story("whole again"));
    }
    assertEquals("half a download", Files.readString(beside("choices.json.part")));
  }

  @Test
  void whatAKilledReviewLeftBehindALinkGoesAndAnothersUnfinishedFileStays() throws Exception {
    Files.createDirectories(folder.resolve("June"));
    Path kept = folder.resolve("kept-elsewhere.json");
    Files.writeString(kept, "{\"schema\":1}");
    Files.createSymbolicLink(file, kept);
    String stem = ".kept-elsewhere.json.daymount-part-";
    Path killed = Files.writeString(folder.resolve(stem + NOBODY + "-1"), "{");
    Path alive =
        Files.writeString(folder.resolve(stem + ProcessHandle.current().pid() + "-9"), "{");
    open().close();
    assertFalse(Files.exists(killed));
    assertTrue(Files.exists(alive));
  }

  /** Not even looked into: it may be a pipe that never ends, or as large as a disk. */
  @Test
  void whatCannotBeChoicesIsNamedAndNothingIsSaved() throws Exception {
    Files.createDirectories(file);
    try (ChoicesStore store = open()) {
      RunFailed folder = assertThrows(RunFailed.class, store::read);
      assertTrue(folder.getMessage().contains("is a folder; "), folder.getMessage());
      Files.delete(file);
      try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
        sparse.setLength(3L << 30); // more than an array holds
      }
      assertTrue(store.isChangedByOthers());
      RunFailed huge = assertThrows(RunFailed.class, store::read);
      assertTrue(huge.getMessage().contains("is larger than 20 MB"), huge.getMessage());
      assertThrows(OutputException.class, () -> store.write(story("over it")));
      assertEquals(3L << 30, Files.size(file));
    }
  }

  @Test
  void nothingIsWrittenAfterTheReviewHasEnded() throws IOException {
    ChoicesStore store = open();
    store.read();
    store.close();
    assertThrows(OutputException.class, () -> store.write(story("late")));
    assertFalse(Files.exists(file));
  }

  /** And the version before the last is whole, too. */
  @Test
  void aReviewThatDiesBeforeAnyOfItsMovesLosesNothing() throws Exception {
    boolean stopped = true;
    for (int step = 0; stopped; step++) {
      file = folder.resolve("step" + step + "/choices.json");
      try (ChoicesStore store = open()) {
        store.read();
        store.write(story("first"));
      }
      stopped =
          StopAt.stopped(List.of(), StoppedChoices.class, file.toString(), Integer.toString(step));
      assertEquals(stopped, step < 4, "a copy of the one before, and the new one, twice");
      List<String> whole = List.of("first", "second", "third");
      assertTrue(whole.stream().anyMatch(text -> holds(file, text)), "step " + step);
      Path before = beside("choices.json.bak");
      assertTrue(
          Files.notExists(before) || whole.stream().anyMatch(text -> holds(before, text)),
          "step " + step);
      try (ChoicesStore store = open()) {
        store.read();
        store.write(story("fourth"));
      }
      assertTrue(holds(file, "fourth"));
      try (Stream<Path> left = Files.list(file.getParent())) {
        assertEquals(
            List.of(".daymount-review", "choices.json", "choices.json.bak"),
            left.map(path -> path.getFileName().toString()).sorted().toList());
      }
    }
  }

  private static boolean holds(Path file, String text) {
    try {
      return Arrays.equals(ChoicesFile.write(story(text)), Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
