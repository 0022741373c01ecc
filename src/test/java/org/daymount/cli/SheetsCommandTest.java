package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.daymount.cli.Shell.Result;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.Scenes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole job as a person runs it, on a small painted month. */
@Tag("slow")
class SheetsCommandTest {
  @TempDir Path home;
  private Path photos;
  private Shell shell;

  @BeforeEach
  void someDaysOfJune() throws IOException {
    photos = Files.createDirectories(home.resolve("June pictures"));
    shell = new Shell(home);
    photo("a first.jpg", 1, 1800, 1350, "2026:06:03 10:00:00");
    photo("tall.jpg", 2, 1350, 1800, "2026:06:04 11:00:00");
    photo("late.jpg", 3, 1800, 1350, "2026:06:06 01:30:00");
  }

  @Test
  void theMonthIsWrittenWithASheetForEachDay() throws IOException {
    Result result = sheets("--days", "3-5");
    assertEquals(0, result.code(), result.err());
    JsonNode month = month();
    assertEquals(1, month.get("schema").asInt());
    assertEquals("2026-06", month.get("month").asText());
    assertEquals("a first.jpg", space(month, 3).get("photo").asText());
    assertEquals("landscape", space(month, 3).get("direction").asText());
    assertEquals("portrait", space(month, 4).get("direction").asText());
    assertEquals("late.jpg", space(month, 5).get("photo").asText(), "before 04:00 is the evening");
    assertEquals(3, month.get("sheets").size());
    for (JsonNode sheet : month.get("sheets")) {
      BufferedImage picture = ImageIO.read(out(sheet.get("file").asText()).toFile());
      // 4 x 6 in at 300 ppi: the usual arithmetic of print sizes
      int wide = sheet.get("width").asDouble() > 5 ? 1800 : 1200;
      assertEquals(wide, picture.getWidth());
      assertEquals(3000 - wide, picture.getHeight());
    }
    for (String name : new String[] {"index.html", "sheets.pdf", "guide.pdf"}) {
      assertTrue(Files.size(out(name)) > 1000, name);
    }
    assertTrue(result.out().contains("index.html"), result.out());
  }

  @Test
  void aSecondRunWithNothingChangedRewritesNothingAndSaysSo() throws IOException {
    sheets("--days", "3-5");
    Map<String, FileTime> before = new TreeMap<>();
    for (String name : files()) {
      Files.setLastModifiedTime(out(name), FileTime.from(Instant.EPOCH));
      before.put(name, Files.getLastModifiedTime(out(name)));
    }
    Result again = sheets("--days", "3-5");
    assertEquals(0, again.code());
    assertTrue(again.out().contains("nothing was rewritten"), again.out());
    for (String name : files()) {
      assertEquals(before.get(name), Files.getLastModifiedTime(out(name)), name);
    }
  }

  @Test
  void theSameInputGivesTheSameBytesWhateverTheNumberOfJobs() throws IOException {
    sheets("--jobs", "1");
    Map<String, byte[]> first = new TreeMap<>();
    for (String name : files()) {
      first.put(name, Files.readAllBytes(out(name)));
    }
    deleteOutput();
    sheets("--jobs", "3");
    assertEquals(first.keySet(), new java.util.TreeSet<>(files()));
    for (String name : files()) {
      assertTrue(Arrays.equals(first.get(name), Files.readAllBytes(out(name))), name);
    }
  }

  @Test
  void photosAreNeverWrittenTo() throws IOException {
    Map<Path, byte[]> before = new TreeMap<>();
    Map<Path, FileTime> times = new TreeMap<>();
    for (Path photo : everything(photos)) {
      before.put(photo, Files.readAllBytes(photo));
      times.put(photo, Files.getLastModifiedTime(photo));
    }
    sheets();
    assertEquals(before.size(), everything(photos).size());
    for (Path photo : before.keySet()) {
      assertTrue(Arrays.equals(before.get(photo), Files.readAllBytes(photo)));
      assertEquals(times.get(photo), Files.getLastModifiedTime(photo));
    }
  }

  @Test
  void aPhotoThatIsCutOffIsNamedAndNotPicked() throws IOException {
    Path whole = photos.resolve("a first.jpg");
    byte[] bytes = Files.readAllBytes(whole);
    Files.write(photos.resolve("broken.jpg"), Arrays.copyOf(bytes, bytes.length / 2));
    Result result = sheets();
    assertEquals(3, result.code());
    assertTrue(result.err().contains("broken.jpg"), result.err());
    assertTrue(result.err().contains("cut off"), result.err());
    JsonNode month = month();
    for (JsonNode photo : month.get("photos")) {
      boolean broken = photo.get("file").asText().equals("broken.jpg");
      assertEquals(broken, !photo.get("problem").isNull());
      assertFalse(broken && photo.get("used").asBoolean());
    }
  }

  @Test
  void theSharpestOfABurstIsTakenAndTheReasonSaysSo() throws IOException {
    BufferedImage sharp = Scenes.scene(9, 1800, 1350);
    write("burst1.jpg", Scenes.blurred(sharp, 4), "2026:06:08 12:00:00");
    write("burst2.jpg", sharp, "2026:06:08 12:00:02");
    write("burst3.jpg", Scenes.blurred(sharp, 8), "2026:06:08 12:00:03");
    sheets("--days", "8");
    JsonNode space = space(month(), 8);
    assertEquals("burst2.jpg", space.get("photo").asText());
    assertEquals("sharpest of 3 alike", space.get("reasons").get(0).asText());
  }

  @Test
  void twoSmallSpacesShareASheet() throws IOException {
    photo("b.jpg", 21, 1800, 1350, "2026:06:03 15:00:00");
    Files.writeString(
        photos.resolve("note.txt"), "June 2026\n\n3 two 3x4\nWe found a crab under the jetty.\n");
    Result result = sheets("--days", "3");
    assertEquals(0, result.code(), result.err());
    JsonNode month = month();
    assertEquals(1, month.get("sheets").size(), "two 3x4 pieces are one 4x6 sheet, cut once");
    assertEquals(2, month.get("sheets").get(0).get("pieces").size());
    assertEquals(1, month.get("sheets").get(0).get("cuts").size());
    assertEquals("We found a crab under the jetty.", day(month, 3).get("story").asText());
  }

  @Test
  void aSpaceOnAMatGivesASmallerPiece() throws IOException {
    Files.writeString(photos.resolve("note.txt"), "June 2026\n\n3 4x6 on mat\n");
    sheets("--days", "3");
    JsonNode space = space(month(), 3);
    // common practice, no source: a 4x6 mat with the picture trimmed to 3 3/4 x 5 3/4
    assertEquals(5.75, space.get("pieceWidth").asDouble());
    assertEquals(3.75, space.get("pieceHeight").asDouble());
  }

  @Test
  void aLargePageIsTwoSheetsThatMeet() throws IOException {
    Files.writeString(photos.resolve("note.txt"), "June 2026\n\n4 6x8\n");
    sheets("--days", "4", "--min-ppi", "150");
    JsonNode month = month();
    assertEquals(2, space(month, 4).get("pieces").size());
    assertEquals(2, month.get("sheets").size());
  }

  @Test
  void aDryRunWritesNothing() {
    Result result = sheets("--dry-run");
    assertEquals(0, result.code());
    assertFalse(Files.exists(home.resolve("out")));
    assertTrue(result.out().contains("3 of 30 spaces filled"), result.out());
  }

  @Test
  void jsonOnStandardOutputIsTheMonthAndNothingElse() throws IOException {
    Result result = sheets("--json", "--dry-run");
    JsonNode month = new ObjectMapper().readTree(result.out());
    assertEquals(30, month.get("days").size());
  }

  @Test
  void strictTurnsAWarningIntoFailureBeforeAnythingIsWritten() {
    Result result = sheets("--strict");
    assertEquals(1, result.code(), "27 days have no picture");
    assertFalse(Files.exists(home.resolve("out")));
  }

  @Test
  void aFileWeDidNotMakeIsNotReplaced() throws IOException {
    Files.createDirectories(home.resolve("out"));
    Files.writeString(out("index.html"), "mine");
    Result result = sheets();
    assertEquals(1, result.code());
    assertEquals("mine", Files.readString(out("index.html")));
    assertEquals(1, result.err().lines().filter(line -> line.startsWith("error: ")).count());
    assertTrue(result.err().contains("--force"), result.err());
    assertFalse(Files.exists(out("sheets.pdf")), "whole or not at all");
    assertEquals(0, sheets("--force").code());
  }

  @Test
  void sheetsThatAreNoLongerNeededGoAway() throws IOException {
    sheets("--days", "3-5");
    sheets("--days", "3");
    assertEquals(
        java.util.Set.of("sheets/sheet-01.jpg"),
        files().stream()
            .filter(name -> name.startsWith("sheets/"))
            .collect(java.util.stream.Collectors.toSet()));
  }

  @Test
  void anEmptyFolderIsOneSentence() throws IOException {
    Files.createDirectories(home.resolve("empty"));
    Result result =
        shell.run("sheets", home.resolve("empty").toString(), "--out", "out", "--quiet");
    assertEquals(1, result.code());
    assertEquals(1, result.err().lines().count(), result.err());
    assertTrue(result.err().startsWith("error: no pictures in "), result.err());
  }

  private Result sheets(String... more) {
    String[] start = {"sheets", photos.toString(), "--out", out("").toString()};
    return shell.run(Stream.concat(Stream.of(start), Stream.of(more)).toArray(String[]::new));
  }

  private Path out(String name) {
    return home.resolve("out").resolve(name);
  }

  private JsonNode month() throws IOException {
    return new ObjectMapper().readTree(Files.readAllBytes(out("month.json")));
  }

  private static JsonNode day(JsonNode month, int day) {
    return month.get("days").get(day - 1);
  }

  private static JsonNode space(JsonNode month, int day) {
    return day(month, day).get("spaces").get(0);
  }

  private java.util.List<String> files() throws IOException {
    return everything(home.resolve("out")).stream()
        .map(path -> home.resolve("out").relativize(path).toString())
        .filter(name -> !name.startsWith("."))
        .toList();
  }

  private static java.util.List<Path> everything(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private void deleteOutput() throws IOException {
    for (Path file : everything(home.resolve("out"))) {
      Files.delete(file);
    }
  }

  private void photo(String name, long seed, int width, int height, String taken)
      throws IOException {
    write(name, Scenes.scene(seed, width, height), taken);
  }

  private void write(String name, BufferedImage picture, String taken) throws IOException {
    ExifPhoto.painted().picture(picture).original(taken).write(photos.resolve(name));
  }
}
