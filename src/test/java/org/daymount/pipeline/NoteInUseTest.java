package org.daymount.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.daymount.file.StopAt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of two notes, one's own and the one mended in the review, neither hides the other unsaid. */
class NoteInUseTest {
  private static final String TYPED = "3 as typed";
  private static final String MENDED_BEFORE = "3 mended before";

  @TempDir Path folder;
  private Path own;

  @BeforeEach
  void typeANote() throws IOException {
    own = Files.writeString(folder.resolve("note.txt"), TYPED);
  }

  private NoteInUse inUse() {
    return NoteInUse.of(StoppedNote.request(folder), StoppedNote.JUNE).orElseThrow();
  }

  private void keep(String text) throws IOException {
    NoteInUse.keep(StoppedNote.request(folder), StoppedNote.JUNE, text);
  }

  private List<String> everyText() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(".txt")).map(NoteInUseTest::read).toList();
    }
  }

  private static String read(Path file) {
    return UserFiles.note(file);
  }

  @Test
  void whatWasMendedOfAnEarlierNoteIsKeptWhenTheNoteIsMendedAnew() throws IOException {
    keep(MENDED_BEFORE);
    assertTrue(inUse().mended());
    Files.writeString(own, "3 edited since");
    assertEquals("3 edited since", inUse().text());
    assertTrue(inUse().remark().isPresent());
    keep("3 edited since, and mended");
    assertEquals("3 edited since, and mended", inUse().text());
    for (String text : List.of(MENDED_BEFORE, TYPED, "3 edited since")) {
      assertTrue(everyText().contains(text), text + " in " + everyText());
    }
  }

  @Test
  void theNoteAsItWasTypedOutlivesBeingWrittenOverAndMendedAgain() throws IOException {
    NoteInUse.writeOver(StoppedNote.request(folder), StoppedNote.JUNE, "3 written over");
    keep("3 mended again");
    assertTrue(everyText().contains(TYPED), everyText().toString());
  }

  @Test
  void whatAReviewThatDiedLeftUnfinishedGoesThoughNothingIsKeptAgain() throws IOException {
    keep(MENDED_BEFORE);
    Path out = StoppedNote.request(folder).out().folder(StoppedNote.JUNE);
    List<Path> parts = new ArrayList<>();
    for (Path file : List.of(own, out.resolve(NoteInUse.MENDED), out.resolve(NoteInUse.AS_TYPED))) {
      String name = "." + file.getFileName() + ".daymount-part-999999999-1"; // nobody's number
      parts.add(Files.writeString(file.resolveSibling(name), "3 hal"));
    }
    NoteInUse.clearParts(StoppedNote.request(folder), StoppedNote.JUNE);
    assertTrue(parts.stream().noneMatch(Files::exists), parts.toString());
    assertTrue(inUse().mended());
  }

  /** An older mended note must never stand for a newer one of the person's own. */
  @Test
  void aReviewThatDiesBeforeAnyOfItsMovesLosesAndHidesNothing() throws Exception {
    boolean stopped = true;
    for (int step = 0; stopped; step++) {
      Path home = folder;
      folder = Files.createDirectory(home.resolve("step" + step));
      own = Files.writeString(folder.resolve("note.txt"), "3 first");
      keep(MENDED_BEFORE);
      Files.writeString(own, TYPED);
      stopped =
          StopAt.stopped(List.of(), StoppedNote.class, folder.toString(), Integer.toString(step));
      assertEquals(stopped, !Files.exists(folder.resolve("ended")));
      assertFalse(
          inUse().text().equals(MENDED_BEFORE), "step " + step + ": what was edited is hidden");
      for (String text : List.of(TYPED, MENDED_BEFORE)) {
        assertTrue(everyText().contains(text), "step " + step + ": " + text + " is lost");
      }
      folder = home;
    }
  }
}
