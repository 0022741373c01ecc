package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.daymount.problem.Problem;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** Folders that are very full, very deep or oddly named: each file is used or named. */
@Tag("slow")
@Isolated // counts the processor time of the whole process
class HostileFoldersTest {
  private static final int NAME_BYTES = 255; // the most that Linux's file systems take
  private static final int PATH_BYTES = 4096; // the most that its system calls take, with a zero

  private static final String LONG = "d".repeat(200);

  @TempDir Path folder;

  private final byte[] photo =
      ExifPhoto.painted().size(16, 12).original("2026:06:03 14:25:30").bytes();

  private void fill(Path into, int files) throws IOException {
    Files.createDirectories(into);
    for (int i = 0; i < files; i++) {
      Files.write(into.resolve("IMG_%05d.jpg".formatted(i)), photo);
    }
  }

  private static long cpu() {
    return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
  }

  /** Were the work quadratic, ten times the files would cost a hundred times as much. */
  @Test
  void tenThousandFilesInOneFolderCostTenTimesAThousand() throws IOException {
    fill(folder.resolve("few"), 1_000);
    fill(folder.resolve("many"), 10_000);
    Reading.all(folder.resolve("few")); // compiles what is used
    long start = cpu();
    assertEquals(1_000, Reading.all(folder.resolve("few")).photos().size());
    long few = cpu() - start;
    start = cpu();
    assertEquals(10_000, Reading.all(folder.resolve("many")).photos().size());
    long many = cpu() - start;
    assertTrue(many < 30 * few, few / 1_000_000 + " ms, then " + many / 1_000_000 + " ms");
  }

  @Test
  void aNameOfTwoHundredAndFiftyFiveBytesIsRead() throws IOException {
    String plain = "a".repeat(NAME_BYTES - 4) + ".jpg";
    String accents = "\u00e9".repeat((NAME_BYTES - 5) / 2) + "b.jpg";
    Files.write(folder.resolve(plain), photo);
    assumeTrue(canSpell(accents), "this system's language setting cannot spell \u00e9");
    Files.write(folder.resolve(accents), photo);
    Ingested read = Reading.all(folder);
    assertEquals(List.of(), read.problems());
    assertEquals(
        List.of(plain, accents), read.photos().stream().map(p -> p.file().name()).toList());
  }

  private static boolean canSpell(String name) {
    try {
      return Path.of(name).toString().equals(name);
    } catch (java.nio.file.InvalidPathException e) {
      return false;
    }
  }

  /** As deep as a path can be spoken of; and one folder deeper, which only its parent can name. */
  @Test
  void aPathAsLongAsTheSystemTakesIsReadAndALongerOneIsNamed() throws Exception {
    assumeTrue(System.getProperty("os.name").startsWith("Linux"), "the limits are those of Linux");
    Path deep = folder.toRealPath();
    while (deep.toString().length() + 101 < PATH_BYTES - 1 - "/a.jpg".length()) {
      deep = Files.createDirectory(deep.resolve("d".repeat(100)));
    }
    Files.write(deep.resolve("a.jpg"), photo);
    Path source = Files.write(folder.resolve("b.jpg"), photo);
    try {
      shell(deep, "mkdir " + LONG + " && cp " + source + " " + LONG + "/c.jpg");
      Ingested read = Reading.all(folder);
      assertEquals(2, read.photos().size(), "photos");
      assertEquals(1, read.problems().size(), "problems");
      assertTrue(read.problems().get(0).file().name().endsWith(LONG));
    } finally {
      shell(folder, "rm -r d*"); // the test's own cleaning cannot speak of that path
    }
  }

  /** Bytes that are no UTF-8, such as names of an old camera's or computer's own letters. */
  @Test
  void aNameThatCannotBeSpeltIsNamedAndTheRestIsRead() throws Exception {
    Files.write(folder.resolve("a.jpg"), photo);
    shell(folder, "cp a.jpg \"$(printf 'caf\\351.jpg')\" && mkdir \"$(printf 'd\\377')\"");
    shell(folder, "cp a.jpg \"$(printf 'd\\377')\"/b.jpg");
    Ingested read = Reading.all(folder);
    assertEquals(List.of("a.jpg"), read.photos().stream().map(p -> p.file().name()).toList());
    assertEquals(2, read.problems().size(), read.problems().toString());
    for (Problem problem : read.problems()) {
      assertEquals(Problem.Kind.UNREADABLE, problem.kind());
      assertTrue(problem.text().contains("rename it"), problem.text());
    }
    shell(folder, "rm -r caf*.jpg d?");
  }

  private static void shell(Path in, String command) throws Exception {
    Process process;
    try {
      process =
          new ProcessBuilder("sh", "-c", command)
              .directory(in.toFile())
              .redirectErrorStream(true)
              .start();
    } catch (IOException e) {
      // the shell's own working folder is too deep for it
      process = null;
    }
    assumeTrue(process != null, "no shell");
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assumeTrue(process.waitFor() == 0, "this file system takes no such names: " + said);
  }

  @Test
  void emptyFilesAndFoldersWithThePicturesNamesAreNamedOrWalkedInto() throws IOException {
    Files.createFile(folder.resolve("empty.jpg"));
    Files.createFile(folder.resolve("empty.heic"));
    Files.createDirectory(folder.resolve("folder.jpg"));
    Files.write(folder.resolve("folder.jpg").resolve("inside.jpg"), photo);
    Files.createDirectory(folder.resolve("nothing.png"));
    Ingested read = Reading.all(folder);
    assertEquals(
        List.of("folder.jpg/inside.jpg"),
        read.photos().stream().map(p -> p.file().name()).toList());
    List<String> named = new ArrayList<>();
    read.problems().forEach(problem -> named.add(problem.file() + " " + problem.text()));
    assertEquals(
        List.of(
            "empty.heic is empty; copy it again from the phone",
            "empty.jpg is empty; copy it again from the phone"),
        named);
  }

  /** Links among folders, each to all the others: every file is met once, and it ends. */
  @Test
  void aTangleOfLinksEnds() throws IOException {
    for (int i = 0; i < 20; i++) {
      Path one = Files.createDirectory(folder.resolve("f" + i));
      Files.write(one.resolve("p.jpg"), photo);
      for (int j = 0; j < 20; j++) {
        Files.createSymbolicLink(one.resolve("to" + j), folder.resolve("f" + j));
      }
      Files.createSymbolicLink(one.resolve("up"), folder);
    }
    Ingested read = Reading.all(folder);
    assertEquals(20, read.photos().size());
    assertEquals(List.of(), read.problems());
  }

  /** They would be read for ever, or never; those that are called like pictures are named. */
  @Test
  void pipesAndDevicesAreNeverOpenedAndNamedIfTheirNamesAreThoseOfPictures() throws Exception {
    assumeTrue(Files.exists(Path.of("/dev/zero")), "no /dev/zero here");
    Files.write(folder.resolve("a.jpg"), photo);
    shell(folder, "mkfifo pipe.jpg film.mp4 other");
    Files.createSymbolicLink(folder.resolve("device.jpg"), Path.of("/dev/zero"));
    Ingested read = Reading.all(folder);
    assertEquals(1, read.photos().size());
    assertEquals(
        List.of("device.jpg", "film.mp4", "pipe.jpg"),
        read.problems().stream().map(problem -> problem.file().name()).sorted().toList());
    for (Problem problem : read.problems()) {
      assertEquals("is a pipe or a device; copy the picture itself", problem.text());
    }
  }

  /**
   * In a process without root's right to read everything (setpriv of util-linux), whoever runs it.
   */
  @Test
  void foldersAndFilesThatMayNotBeReadAreNamed() throws Exception {
    Files.write(folder.resolve("a.jpg"), photo);
    Files.write(folder.resolve("locked.jpg"), photo);
    Files.createDirectory(folder.resolve("locked"));
    Files.write(folder.resolve("locked").resolve("b.jpg"), photo);
    shell(folder, "chmod 000 locked locked.jpg");
    try {
      assertEquals(
          List.of(
              "photo a.jpg",
              "problem locked is a folder that may not be opened; give yourself the right to read"
                  + " it",
              "problem locked.jpg cannot be read from the disk; check that it may be opened"),
          said(
              "setpriv",
              "--bounding-set=-dac_override,-dac_read_search",
              Path.of(System.getProperty("java.home"), "bin", "java").toString(),
              "-cp",
              System.getProperty("java.class.path"),
              ListingWorker.class.getName(),
              folder.toString()));
    } finally {
      shell(folder, "chmod 700 locked locked.jpg");
    }
  }

  private static List<String> said(String... command) throws Exception {
    Process process;
    try {
      process = new ProcessBuilder(command).redirectErrorStream(true).start();
    } catch (IOException e) {
      assumeTrue(false, command[0] + " is not installed");
      throw e;
    }
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assumeTrue(!said.startsWith("setpriv:"), "this user may not give up rights: " + said);
    return said.lines().toList();
  }
}
