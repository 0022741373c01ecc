package org.daymount.start;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.daymount.file.StopAt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start page's own files: damaged, of other hands, and left by a program that died. */
class StartFilesTest {
  @TempDir Path folder;

  @Test
  void aNoteInAnotherCodingOrALinkOrAFolderInItsPlaceIsKeptBesideTheNewOne() throws IOException {
    byte[] windows = "3 caf\u00e9".getBytes(StandardCharsets.ISO_8859_1);
    Path note = Files.write(folder.resolve("note.txt"), windows);
    MonthText.NOTE.write(folder, "3 second");
    assertArrayEquals(windows, Files.readAllBytes(folder.resolve("note-1.txt")));
    assertEquals("3 second", Files.readString(note));

    Files.delete(note);
    Files.createSymbolicLink(note, Path.of("note-1.txt"));
    MonthText.NOTE.write(folder, "3 third");
    assertArrayEquals(windows, Files.readAllBytes(folder.resolve("note-1.txt")));
    assertEquals("3 third", Files.readString(note));

    Files.delete(note);
    Files.createDirectory(note);
    MonthText.NOTE.write(folder, "3 fourth");
    assertEquals("3 fourth", Files.readString(note));
  }

  @Test
  void eachUnreadableMemoryIsKept() throws IOException {
    StartSettings settings = new StartSettings(folder);
    for (String unreadable : List.of("{", "[]", "")) {
      Files.writeString(folder.resolve("start.json"), unreadable);
      assertEquals(List.of(), settings.months());
    }
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(
          List.of("start-unreadable-1.json", "start-unreadable-2.json", "start-unreadable-3.json"),
          all.map(path -> path.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void aMonthThatCannotBeIsPassedOverAndTheOthersAreThere() throws IOException {
    StartSettings settings = new StartSettings(folder);
    settings.remember(StoppedStart.month(folder, "2026-06"), true);
    Path file = folder.resolve("start.json");
    String impossible =
        "{\"month\":\"2026-05\",\"out\":\"a\\u0000b\"}, {\"month\":\"2026-04\"}, 7, ";
    Files.writeString(
        file,
        Files.readString(file)
            .replaceFirst("(\"months\" : \\[)", "$1" + impossible.replace("\\", "\\\\")));
    assertEquals(List.of("2026-06"), months(settings));
  }

  @Test
  void aStartPageThatDiesBeforeAnyOfItsMovesLosesNothing() throws Exception {
    boolean stopped = true;
    for (int step = 0; stopped; step++) {
      Path place = Files.createDirectory(folder.resolve("step" + step));
      StartSettings settings = new StartSettings(place.resolve("settings"));
      settings.remember(StoppedStart.month(place, "2026-06"), true);
      MonthText.NOTE.write(place.resolve("out"), "3 first");
      stopped =
          StopAt.stopped(List.of(), StoppedStart.class, place.toString(), Integer.toString(step));
      assertEquals(step < 3, stopped);
      assertEquals(stopped ? List.of("2026-06") : List.of("2026-07", "2026-06"), months(settings));
      try (Stream<Path> notes = Files.list(place.resolve("out"))) {
        assertTrue(
            notes
                .filter(file -> file.toString().endsWith(".txt"))
                .anyMatch(file -> read(file).equals("3 first")),
            "step " + step);
      }
    }
  }

  private static List<String> months(StartSettings settings) {
    return settings.months().stream().map(MonthChoice::month).toList();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
