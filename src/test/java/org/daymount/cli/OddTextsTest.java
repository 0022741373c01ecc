package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whatever lies in the place of a person's text, it is named with the fact and the next step, in
 * one line, before any picture is looked at, and costs no memory.
 */
class OddTextsTest {
  private static final Duration SOON = Duration.ofMinutes(5); // a pipe would never end

  @TempDir Path home;
  private Path photos;

  @BeforeEach
  void onePhoto() throws IOException {
    photos = Files.createDirectory(home.resolve("photos"));
    ExifPhoto.painted().original("2026:06:03 10:00:00").write(photos.resolve("a.jpg"));
  }

  private void make(String kind, Path file) throws Exception {
    switch (kind) {
      case "folder" -> Files.createDirectory(file);
      case "pipe" -> {
        Process mkfifo;
        try {
          mkfifo = new ProcessBuilder("mkfifo", file.toString()).start();
        } catch (IOException e) {
          mkfifo = null;
        }
        assumeTrue(mkfifo != null && mkfifo.waitFor() == 0, "no pipes with names here");
      }
      case "device" -> {
        assumeTrue(Files.exists(Path.of("/dev/zero")), "no /dev/zero here");
        Files.createSymbolicLink(file, Path.of("/dev/zero"));
      }
      case "huge" -> {
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
          sparse.setLength(3L << 30); // more than an array holds
        }
      }
      case "circle" -> {
        Files.createSymbolicLink(file, home.resolve("other"));
        Files.createSymbolicLink(home.resolve("other"), file);
      }
      case "dangling" -> Files.createSymbolicLink(file, home.resolve("nothing"));
      case "zeros" -> Files.write(file, new byte[1000]);
      case "rich" -> Files.writeString(file, "{\\rtf1\\ansi 3 two photos}");
      default -> throw new IllegalArgumentException(kind);
    }
  }

  private Shell.Result sheets(String... more) {
    String[] all = {"sheets", photos.toString(), "--dry-run", "--out", home + "/out"};
    String[] command = java.util.Arrays.copyOf(all, all.length + more.length);
    System.arraycopy(more, 0, command, all.length, more.length);
    return assertTimeoutPreemptively(SOON, () -> new Shell(home).run(command));
  }

  private static void assertRefused(Shell.Result run, Path file, String fact) {
    assertTrue(run.code() == 1 || run.code() == 2, run.code() + ": " + run.err());
    String said = run.err().lines().findFirst().orElse("");
    assertTrue(said.contains(file.getFileName().toString()), run.err());
    assertTrue(said.contains(fact), run.err());
    assertTrue(said.contains("; "), "no next step: " + said);
    assertTrue(!run.err().contains("looking at pictures"), "too late: " + run.err());
  }

  @ParameterizedTest
  @CsvSource({
    "folder, is a folder",
    "pipe, is no ordinary file",
    "device, is no ordinary file",
    "huge, is larger than",
    "circle, is a link that leads to nothing",
    "dangling, is a link that leads to nothing",
    "zeros, is no ",
  })
  void whatIsNamedInPlaceOfATextIsRefused(String kind, String fact) throws Exception {
    for (String option : new String[] {"--note", "--album", "--dates"}) {
      Path file = home.resolve(option.substring(2) + "-" + kind);
      Files.deleteIfExists(home.resolve("other"));
      make(kind, file);
      assertRefused(sheets(option, file.toString()), file, fact);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "pipe, is no ordinary file",
    "device, is no ordinary file",
    "huge, is larger than",
    "circle, is a link that leads to nothing",
    "dangling, is a link that leads to nothing",
    "zeros, is no ",
  })
  void whatLiesBesideThePhotosUnderATextsNameIsRefused(String kind, String fact) throws Exception {
    for (String name : new String[] {"dates.csv", "note.txt", "album.txt"}) {
      Path file = photos.resolve(name);
      if (name.equals("album.txt")) {
        Files.writeString(photos.resolve("note.txt"), "3 two photos\n");
      }
      Files.deleteIfExists(home.resolve("other"));
      make(kind, file);
      assertRefused(sheets(), file, fact);
      Files.delete(file);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "folder, is a folder",
    "pipe, is no ordinary file",
    "huge, is larger than",
    "zeros, is damaged",
  })
  void whatIsNoChoicesIsRefusedBeforeAPictureIsLookedAt(String kind, String fact) throws Exception {
    Path file = Files.createDirectories(home.resolve("out")).resolve("choices.json");
    make(kind, file);
    Shell.Result run = sheets();
    assertEquals(1, run.code(), run.err());
    assertTrue(run.err().contains("choices.json") && run.err().contains(fact), run.err());
    assertTrue(!run.err().contains("looking at pictures"), "too late: " + run.err());
  }

  @Test
  void aFolderOfATextsNameIsSaidAndTheMonthIsMade() throws IOException {
    Files.createDirectory(photos.resolve("note.txt"));
    Files.createDirectory(photos.resolve("dates.csv"));
    Shell.Result run = sheets();
    assertEquals(0, run.code(), run.err());
    for (String name : new String[] {"note.txt", "dates.csv"}) {
      assertTrue(run.err().contains(name + " is a folder and not used; "), run.err());
    }
  }

  @Test
  void aRichTextIsToldFromAPlainOneAndUnicodeOfAnyKindIsRead() throws Exception {
    Path file = home.resolve("note.rtf");
    make("rich", file);
    Shell.Result rich = new Shell(home).run("note", file.toString());
    assertEquals(1, rich.code());
    assertTrue(rich.err().contains("save it as plain text"), rich.err());
    String note = "June 2026\n3 two photos\nCaf\u00e9 by the ferry.\n";
    String plain = read(note.getBytes(StandardCharsets.UTF_8));
    assertTrue(plain.contains("Caf\u00e9"), plain);
    assertEquals(plain, read(("\uFEFF" + note).getBytes(StandardCharsets.UTF_8)));
    assertEquals(plain, read(("\uFEFF" + note).getBytes(StandardCharsets.UTF_16LE)));
    assertEquals(plain, read(("\uFEFF" + note).getBytes(StandardCharsets.UTF_16BE)));
    assertEquals(plain, read(note.getBytes(StandardCharsets.ISO_8859_1)));
  }

  private String read(byte[] note) throws IOException {
    Path file = Files.write(home.resolve("note.txt"), note);
    Shell.Result run = new Shell(home).run("note", file.toString());
    assertEquals(0, run.code(), run.err());
    return run.out();
  }

  /** What steers a terminal (ECMA-48) or turns a line around stands in words in the error too. */
  @Test
  void anErrorAboutAFileOfAnOddNameIsOneLine() throws IOException {
    String name = "a\nerror: all is well\u001b[2K\u202Etxt.b";
    Path folder;
    try {
      folder = Files.createDirectory(home.resolve(name));
    } catch (IOException | java.nio.file.InvalidPathException e) {
      assumeTrue(false, "no such names here");
      return;
    }
    Shell.Result run = new Shell(home).run("note", folder.toString());
    assertEquals(1, run.code());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("\\u000aerror: all is well\\u001b[2K\\u202etxt.b"), run.err());
    Shell.Result wrong = sheets("--dates", home.resolve("no\u001b[2Kne").toString());
    assertEquals(2, wrong.code());
    assertTrue(wrong.err().contains("no\\u001b[2Kne"), wrong.err());
  }

  /** A hundred thousand letters without an end of line, brackets in brackets. */
  @ParameterizedTest
  @CsvSource({"a", "(", "'1 '", "'\"'", "4x", "1/2", "twenty-one"})
  void aLineWithoutEndIsRead(String piece) throws IOException {
    Path note = home.resolve("note.txt");
    Files.writeString(note, "3 " + piece.repeat(100_000 / piece.length()) + "\n");
    Shell.Result run =
        assertTimeoutPreemptively(SOON, () -> new Shell(home).run("note", note.toString()));
    assertEquals(0, run.code(), run.err());
  }
}
