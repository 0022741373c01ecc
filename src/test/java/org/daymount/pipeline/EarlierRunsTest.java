package org.daymount.pipeline;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.daymount.cache.Cache;
import org.daymount.crop.CropSettings;
import org.daymount.image.Pictures;
import org.daymount.month.Month;
import org.daymount.month.MonthJson;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.Scenes;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What earlier runs left saves time and changes nothing: a run with it leaves the same bytes as one
 * without.
 */
@Tag("slow")
class EarlierRunsTest {
  private static final FileTime TAKEN = FileTime.fromMillis(1_780_000_000_000L);

  @TempDir static Path home;
  @TempDir static Path saved;
  private static Path photos;
  private static Path note;
  private static int fresh;

  @BeforeAll
  static void someDaysOfJuneAndAFirstRun() throws IOException {
    photos = Files.createDirectories(home.resolve("pictures"));
    note = photos.resolve("note.txt");
    Files.writeString(note, "June 2026\n\n3 two 3x4\nA crab under the jetty.\n");
    photo("a.jpg", 1, "2026:06:03 10:00:00");
    photo("b.jpg", 2, "2026:06:03 15:00:00");
    photo("c.jpg", 3, "2026:06:04 11:00:00");
    photo("d.jpg", 4, "2026:06:05 11:00:00");
    run();
    copyTree(home, saved);
  }

  @BeforeEach
  void asAfterTheFirstRun() throws IOException {
    for (String name : List.of("out", "pictures")) {
      deleteTree(home.resolve(name));
      copyTree(saved.resolve(name), home.resolve(name));
    }
  }

  @Test
  void aSecondRunLeavesEverythingAsItIsAndAsARunWithoutMemoryWouldMakeIt() throws IOException {
    assertEquals(List.of(), run(), "files that are new or changed");
    assertSameAsWithoutMemory();
  }

  /** The middle of a photo is spoilt in such a way that its length, time and ends stay. */
  @Test
  void aChangeInTheMiddleOfAPhotoIsNoticed() throws IOException {
    spoil("a.jpg");
    assertTrue(run().contains("month.json"), "its content has another sum");
  }

  @Test
  void anotherProgramDrawsEverythingAnew() throws IOException {
    spoil("a.jpg");
    List<String> changed = run("another program", "out");
    assertTrue(changed.contains("sheets/sheet-01.jpg"), "changed: " + changed);
    assertTrue(changed.contains("sheets.pdf"), "changed: " + changed);
    assertFalse(changed.contains("sheets/sheet-02.jpg"), "drawn anew, but the same: " + changed);
  }

  @Test
  void aPhotoThatHasChangedIsReadAndPaintedAgainThoughItsLengthIsTheSame() throws IOException {
    spoil("c.jpg");
    Files.setLastModifiedTime(photos.resolve("c.jpg"), FileTime.fromMillis(TAKEN.toMillis() + 1));
    List<String> changed = run();
    assertTrue(changed.contains("sheets/sheet-02.jpg"), "changed: " + changed);
    assertFalse(changed.contains("sheets/sheet-01.jpg"), "changed: " + changed);
    assertFalse(changed.contains("sheets/sheet-03.jpg"), "changed: " + changed);
    assertSameAsWithoutMemory();
  }

  @Test
  void aNewPhotoAndAnotherNoteChangeWhatTheyMust() throws IOException {
    photo("e.jpg", 5, "2026:06:06 09:00:00");
    Files.writeString(note, "June 2026\n\n3 two 3x4\nThree crabs under the jetty.\n4 4x6 on mat\n");
    List<String> changed = run();
    assertFalse(changed.contains("sheets/sheet-01.jpg"), "changed: " + changed);
    assertTrue(changed.contains("sheets/sheet-02.jpg"), "changed: " + changed);
    assertTrue(changed.contains("sheets/sheet-04.jpg"), "changed: " + changed);
    assertSameAsWithoutMemory();
  }

  @Test
  void aPhotoThatIsGoneLeavesNothingBehind() throws IOException {
    Files.delete(photos.resolve("d.jpg"));
    run();
    assertSameAsWithoutMemory();
  }

  @Test
  void aDamagedMemoryIsSaidToBeDamagedAndMadeAgain() throws IOException {
    Path file = home.resolve("out").resolve(Cache.FILE);
    byte[] whole = Files.readAllBytes(file);
    byte[] damaged = whole.clone();
    damaged[damaged.length / 2] ^= 1;
    Files.write(file, damaged);
    List<String> notes = cache("this program", "out").notes();
    assertEquals(1, notes.size());
    assertTrue(notes.get(0).contains("checksum"), notes.get(0));
    assertEquals(List.of(), run());
    assertArrayEquals(whole, Files.readAllBytes(file));
    assertSameAsWithoutMemory();
  }

  @Test
  void aSheetThatSomebodyChangedIsPaintedAgain() throws IOException {
    Path sheet = home.resolve("out").resolve("sheets/sheet-02.jpg");
    byte[] whole = Files.readAllBytes(sheet);
    byte[] changed = whole.clone();
    changed[changed.length / 2]++;
    Files.write(sheet, changed);
    assertEquals(List.of("sheets/sheet-02.jpg"), run());
    assertArrayEquals(whole, Files.readAllBytes(sheet));
    Files.delete(sheet);
    assertEquals(List.of("sheets/sheet-02.jpg"), run());
    assertArrayEquals(whole, Files.readAllBytes(sheet));
  }

  /** After the pictures were looked at, before they are printed. */
  @Test
  void aPhotoThatChangesWhileTheProgramRunsIsNotPrintedForTheOneThatWasChosen() throws IOException {
    Map<String, byte[]> before = output("out");
    for (String change : List.of("another", "gone")) {
      Month month =
          new MonthMaker(new Pictures(), Progress.SILENT).make(request("out"), note -> {});
      Path chosen = photos.resolve("c.jpg");
      Files.delete(chosen);
      if (change.equals("another")) {
        Files.copy(photos.resolve("d.jpg"), chosen);
      }
      MonthWriter writer =
          new MonthWriter(new Pictures(), new MonthJson("test"), Progress.SILENT, Cache.NONE);
      RunFailed failed =
          assertThrows(RunFailed.class, () -> writer.write(month, home.resolve("out"), false, 2));
      assertEquals(
          change.equals("another")
              ? "c.jpg was changed while this ran; run it again"
              : "c.jpg: cannot be decoded (it is no longer there); open it in a viewer, or copy it"
                  + " again; run it again without that file",
          failed.getMessage());
      assertSame(before, output("out"));
      Files.copy(saved.resolve("pictures/c.jpg"), chosen, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static void assertSameAsWithoutMemory() throws IOException {
    String name = "fresh" + fresh++;
    Month month = new MonthMaker(new Pictures(), Progress.SILENT).make(request(name), note -> {});
    new MonthWriter(new Pictures(), new MonthJson("test"), Progress.SILENT, Cache.NONE)
        .write(month, home.resolve(name), false, 2);
    assertSame(output(name), output("out"));
  }

  private static void assertSame(Map<String, byte[]> expected, Map<String, byte[]> actual) {
    assertEquals(expected.keySet(), actual.keySet());
    expected.forEach(
        (name, bytes) -> assertTrue(Arrays.equals(bytes, actual.get(name)), name + " differs"));
  }

  private static List<String> run() throws IOException {
    return run("this program", "out");
  }

  private static List<String> run(String program, String out) throws IOException {
    Cache cache = cache(program, out);
    Month month =
        new MonthMaker(new Pictures(), Progress.SILENT, cache).make(request(out), note -> {});
    List<String> changed =
        new MonthWriter(new Pictures(), new MonthJson("test"), Progress.SILENT, cache)
            .write(month, home.resolve(out), false, 2)
            .changed();
    cache.write(home.resolve(out).resolve(Cache.FILE));
    return changed;
  }

  private static Cache cache(String program, String out) {
    return Cache.read(List.of(home.resolve(out).resolve(Cache.FILE)), program);
  }

  /** Every file but those that begin with a dot, which only later runs read. */
  private static Map<String, byte[]> output(String out) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(home.resolve(out))) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        boolean ours = !file.startsWith(home.resolve(out).resolve("set-aside"));
        if (ours && !file.getFileName().toString().startsWith(".")) {
          files.put(home.resolve(out).relativize(file).toString(), Files.readAllBytes(file));
        }
      }
    }
    return files;
  }

  private static Request request(String out) {
    return TestRequests.of(
        photos,
        Optional.of(note),
        new OutputLocation(home, Optional.of(Path.of(out))),
        CropSettings.of(new Ppi(100), new Ppi(50)));
  }

  private static void photo(String name, long seed, String taken) throws IOException {
    ExifPhoto.painted()
        .picture(Scenes.scene(seed, 1500, 1125))
        .original(taken)
        .write(photos.resolve(name));
    Files.setLastModifiedTime(photos.resolve(name), TAKEN);
  }

  /** One byte in the middle becomes another, such that the picture decodes but looks otherwise. */
  private static void spoil(String name) throws IOException {
    Path file = photos.resolve(name);
    byte[] whole = Files.readAllBytes(file);
    for (int at = whole.length / 2; at < whole.length * 3 / 4; at++) {
      byte[] spoilt = whole.clone();
      spoilt[at]++;
      if (spoilt[at] != -1 && spoilt[at - 1] != -1 && decodes(spoilt)) {
        Files.write(file, spoilt);
        Files.setLastModifiedTime(file, TAKEN);
        return;
      }
    }
    throw new IllegalStateException("every byte matters");
  }

  private static boolean decodes(byte[] jpeg) throws IOException {
    ImageReader reader = ImageIO.getImageReadersByFormatName("jpeg").next();
    boolean[] warned = {false};
    reader.addIIOReadWarningListener((source, warning) -> warned[0] = true);
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(jpeg))) {
      reader.setInput(in);
      reader.read(0);
      return !warned[0];
    } catch (IIOException e) {
      return false;
    } finally {
      reader.dispose();
    }
  }

  private static void copyTree(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : all.toList()) {
        Path target = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(target);
        } else {
          Files.copy(path, target, StandardCopyOption.COPY_ATTRIBUTES);
        }
      }
    }
  }

  private static void deleteTree(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
