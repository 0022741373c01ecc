package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFolderTest {
  @TempDir Path folder;
  private Path home;

  @BeforeEach
  void makeFolder() throws IOException {
    home = Files.createDirectory(folder.resolve("out"));
  }

  @Test
  void nothingIsInItsPlaceBeforeTheEnd() throws IOException {
    try (OutputFolder open = OutputFolder.open(home, false)) {
      open.stage("sheets/one.jpg", bytes("one"));
      assertFalse(Files.exists(home.resolve("sheets/one.jpg")));
      assertEquals(List.of("sheets/one.jpg"), open.finish().changed());
    }
    assertEquals("one", Files.readString(home.resolve("sheets/one.jpg")));
  }

  @Test
  void aRunThatStopsHalfwayLeavesTheEarlierFilesAndNoParts() throws IOException {
    write("one.pdf", "first");
    try (OutputFolder open = OutputFolder.open(home, false)) {
      open.stage("one.pdf", bytes("second"));
    }
    assertEquals("first", Files.readString(home.resolve("one.pdf")));
    assertEquals(List.of("one.pdf"), shown());
    assertFalse(Files.exists(home.resolve(".daymount-staged")));
  }

  @Test
  void aFileThatIsTheSameIsNotCountedAsChanged() throws IOException {
    write("one.pdf", "same");
    assertEquals(new Finished(List.of(), List.of()), write("one.pdf", "same"));
  }

  /** A retouched sheet: the record says what it was when it was made. */
  @Test
  void aFileThatSomebodyChangedIsSetAsideUnderANameThatIsSaid() throws IOException {
    write("sheets/sheet-01.jpg", "ours");
    Files.writeString(home.resolve("sheets/sheet-01.jpg"), "retouched");
    Finished finished = write("sheets/sheet-01.jpg", "ours");
    assertEquals("ours", Files.readString(home.resolve("sheets/sheet-01.jpg")));
    assertEquals("retouched", Files.readString(home.resolve("set-aside/sheet-01-1.jpg")));
    assertEquals(
        List.of(
            "sheets/sheet-01.jpg was not as daymount had made it; that one is kept as"
                + " set-aside/sheet-01-1.jpg, and a new one was made"),
        finished.notes());
    Files.writeString(home.resolve("sheets/sheet-01.jpg"), "retouched again");
    write("sheets/sheet-01.jpg", "newer");
    assertEquals("retouched again", Files.readString(home.resolve("set-aside/sheet-01-2.jpg")));
    assertEquals(List.of(), write("sheets/sheet-01.jpg", "newest").notes());
  }

  /** Left among the sheets it would be printed with them. */
  @Test
  void aChangedFileThatIsNoLongerWantedIsSetAsideToo() throws IOException {
    write("old.pdf", "ours");
    Files.writeString(home.resolve("old.pdf"), "changed by hand");
    Finished finished = write("new.pdf", "next");
    assertEquals("changed by hand", Files.readString(home.resolve("set-aside/old-1.pdf")));
    assertFalse(Files.exists(home.resolve("old.pdf")));
    assertTrue(finished.notes().get(0).contains("no longer part"), finished.notes().toString());
  }

  @Test
  void aFileTheProgramDidNotMakeIsRefusedAndByForceSetAside() throws IOException {
    Files.writeString(home.resolve("index.html"), "my own page");
    OutputException refused =
        assertThrows(OutputException.class, () -> write("index.html", "ours"));
    assertTrue(refused.getMessage().contains("was not made by daymount"), refused.getMessage());
    try (OutputFolder open = OutputFolder.open(home, true)) {
      open.stage("index.html", bytes("ours"));
      assertEquals(1, open.finish().notes().size());
    }
    assertEquals("my own page", Files.readString(home.resolve("set-aside/index-1.html")));
  }

  /** Whoever wrote these into the record, it was not the program. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "../precious.txt",
        "../precious.jpg",
        "{home}/precious.txt",
        "sheets/../../precious.jpg",
        "choices.json",
        "Holiday.jpg",
        "sheets/Holiday 1.JPG",
        ".daymount-cache",
        "note.txt"
      })
  void aRecordIsBelievedOnlyAboutNamesTheProgramMakes(String name) throws IOException {
    String spelt = name.replace("{home}", folder.toString());
    Path precious = home.resolve(spelt).normalize();
    Files.createDirectories(precious.getParent());
    Files.createDirectories(home.resolve("sheets"));
    Files.writeString(precious, "precious");
    String sum = sumOf("precious");
    Files.writeString(home.resolve(".daymount-made"), sum + "  " + spelt + "\n");
    write("index.html", "ours");
    assertEquals("precious", Files.readString(precious));
  }

  private static String sumOf(String text) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes(text)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aLinkedFolderOfSheetsIsRefusedAndNothingBehindItTouched() throws IOException {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Files.writeString(elsewhere.resolve("sheet-01.jpg"), "a person's");
    Files.createSymbolicLink(home.resolve("sheets"), elsewhere);
    String record = sumOf("a person's") + "  sheets/sheet-01.jpg\n";
    Files.writeString(home.resolve(".daymount-made"), record);
    OutputException refused =
        assertThrows(OutputException.class, () -> write("sheets/sheet-01.jpg", "ours"));
    assertTrue(refused.getMessage().contains("is a link"), refused.getMessage());
    write("index.html", "ours"); // the sheet is no longer wanted: a stale one is not looked for
    assertEquals("a person's", Files.readString(elsewhere.resolve("sheet-01.jpg")));
  }

  @Test
  void aLinkInPlaceOfAFileIsSetAsideAndWhatItLeadsToIsLeftAlone() throws IOException {
    write("index.html", "ours");
    Path page = Files.writeString(folder.resolve("page.html"), "ours");
    Files.delete(home.resolve("index.html"));
    Files.createSymbolicLink(home.resolve("index.html"), page);
    assertEquals(1, write("index.html", "newer").notes().size());
    assertEquals("ours", Files.readString(page));
    assertTrue(Files.isSymbolicLink(home.resolve("set-aside/index-1.html")));
    assertFalse(Files.isSymbolicLink(home.resolve("index.html")));
  }

  @Test
  void aLockThatLeadsElsewhereIsNotFollowed() throws IOException {
    Files.createSymbolicLink(home.resolve(".daymount-lock"), folder.resolve("new-file"));
    assertThrows(OutputException.class, () -> write("index.html", "ours"));
    assertFalse(Files.exists(folder.resolve("new-file")));
  }

  @Test
  void anOutputFolderThatIsALinkIsWrittenWhereItLeads() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link"), home);
    try (OutputFolder open = OutputFolder.open(link, false)) {
      open.stage("index.html", bytes("ours"));
      open.finish();
    }
    assertEquals("ours", Files.readString(home.resolve("index.html")));
  }

  @Test
  void aPersonsOwnPartFilesStay() throws IOException {
    Files.createDirectories(home.resolve("sheets"));
    List<String> names =
        List.of(
            "index.html.part", "sheets/sheet-01.jpg.part", "choices.json.part", "film.mp4.part");
    for (String name : names) {
      Files.writeString(home.resolve(name), "half a download");
    }
    write("index.html", "ours");
    write("sheets/sheet-01.jpg", "ours");
    write("index.html", "newer");
    for (String name : names) {
      assertEquals("half a download", Files.readString(home.resolve(name)), name);
    }
  }

  @Test
  void aFolderInPlaceOfAFileIsSaidBeforeAnythingIsMoved() throws IOException {
    Files.createDirectory(home.resolve("guide.pdf"));
    OutputException refused =
        assertThrows(
            OutputException.class,
            () ->
                StoppedRun.toItsEnd(
                    home, new TreeMap<>(Map.of("a.pdf", "one", "guide.pdf", "two"))));
    assertTrue(refused.getMessage().contains("is a folder"), refused.getMessage());
    assertFalse(Files.exists(home.resolve("a.pdf")));
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

  /**
   * The process ends dead before its first move, its second, and so on: the record, two files that
   * changed, one that was retouched, one that is no longer wanted and was retouched, one that is no
   * longer wanted, and the record again.
   */
  @Test
  void aRunThatDiesBeforeAnyOfItsMovesLosesNothingAndTheNextOneIsAsIfItHadNotBeen()
      throws Exception {
    Map<String, String> earlier =
        new TreeMap<>(
            Map.of(
                "a.pdf", "a1", "b.pdf", "b1", "sheets/c.jpg", "c1", "d.pdf", "d1", "e.pdf", "e1"));
    Map<String, String> next =
        new TreeMap<>(Map.of("a.pdf", "a2", "b.pdf", "b2", "sheets/c.jpg", "c2"));
    int step = 0;
    boolean stopped = true;
    while (stopped) {
      Path out = folder.resolve("step" + step);
      StoppedRun.toItsEnd(out, earlier);
      Files.writeString(out.resolve("sheets/c.jpg"), "c by hand");
      Files.writeString(out.resolve("d.pdf"), "d by hand");
      stopped = StoppedRun.stoppedAt(step, out, next);
      for (String name : List.of("a.pdf", "b.pdf")) {
        String text = Files.readString(out.resolve(name));
        assertTrue(
            text.equals(earlier.get(name)) || text.equals(next.get(name)), step + ": " + text);
      }
      assertEquals(List.of("c by hand", "d by hand"), byHand(out), "step " + step);
      StoppedRun.toItsEnd(out, next);
      next.forEach((name, text) -> assertEquals(text, read(out.resolve(name)), name));
      assertFalse(Files.exists(out.resolve("d.pdf")) || Files.exists(out.resolve("e.pdf")));
      assertEquals(List.of("c by hand", "d by hand"), byHand(out), "step " + step);
      assertEquals(
          List.of(
              ".daymount-lock",
              ".daymount-made",
              "a.pdf",
              "b.pdf",
              "set-aside/c-1.jpg",
              "set-aside/d-1.pdf",
              "sheets/c.jpg"),
          names(out),
          "step " + step);
      step++;
    }
    assertEquals(9, step, "one for each of eight moves, and one that came to its end");
  }

  private static List<String> names(Path out) throws IOException {
    try (Stream<Path> all = Files.walk(out)) {
      return all.filter(Files::isRegularFile)
          .map(file -> out.relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  private static List<String> byHand(Path out) throws IOException {
    return names(out).stream()
        .map(name -> read(out.resolve(name)))
        .filter(text -> text.endsWith("by hand"))
        .sorted()
        .toList();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private List<String> shown() throws IOException {
    return names(home).stream().filter(name -> !name.startsWith(".")).toList();
  }

  private Finished write(String name, String content) throws IOException {
    return StoppedRun.toItsEnd(home, Map.of(name, content));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
