package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.daymount.cli.Shell.Result;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.Scenes;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("slow")
class CommandLinesTest {
  @TempDir Path home;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sheets . --sheet huge",
        "sheets . --ppi 0",
        "sheets . --month June",
        "sheets . --day-starts noonish",
        "sheets . --days 0-40",
        "sheets . --clock fast",
        "sheets . --space blue",
        "sheets . --jobs 0",
        "sheets . --paper papyrus",
        "sheets nowhere",
        "sheets . --note nowhere.txt",
        "sheets",
        "sheets . --min-ppi 400",
        "paint ."
      })
  void aWrongCommandLineIsOneLineAHintAndCodeTwo(String line) {
    Result result = new Shell(home).run(line.split(" "));
    assertEquals(2, result.code(), result.err());
    assertEquals("", result.out());
    assertEquals(1, result.err().lines().count(), result.err());
    assertTrue(result.err().startsWith("error: "), result.err());
    assertTrue(result.err().contains("--help"), result.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "sheets --help", "days --help", "look -h", "note --help"})
  void askedForHelpGoesToStandardOutputAndOpensWithAnExample(String line) {
    Result result = new Shell(home).run(line.split(" "));
    assertEquals(0, result.code());
    assertEquals("", result.err());
    assertTrue(result.out().startsWith("For example: daymount "), result.out());
  }

  @Test
  void theExitCodesStandInTheHelp() {
    String help = new Shell(home).run("--help").out();
    for (String code : new String[] {"0", "1", "2", "3"}) {
      assertTrue(help.lines().anyMatch(line -> line.strip().startsWith(code + " ")), help);
    }
  }

  @Test
  void daysListsWhatWasTakenOnWhichDayAndWritesNothing() throws Exception {
    ExifPhoto.painted()
        .picture(Scenes.scene(1, 400, 300))
        .original("2026:06:03 10:00:00")
        .write(home.resolve("pics/one.jpg"));
    Result result = new Shell(home).run("days", home.resolve("pics").toString());
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("Wed 3 Jun 2026"), result.out());
    assertTrue(result.out().contains("10:00:00  one.jpg"), result.out());
    try (var files = Files.list(home)) {
      assertEquals(1, files.count());
    }
  }

  @Test
  void lookTellsTheMeasuresAndDrawsTheCrops() throws Exception {
    Path photo =
        ExifPhoto.painted()
            .picture(Scenes.scene(4, 1200, 900))
            .original("2026:06:03 10:00:00")
            .model("Tarn T4")
            .write(home.resolve("one.jpg"));
    Path drawn = home.resolve("seen.jpg");
    Result result = new Shell(home).run("look", photo.toString(), "--draw", drawn.toString());
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("1200 x 900 upright pixels, landscape"), result.out());
    assertTrue(result.out().contains("as 6x4 in"), result.out());
    assertTrue(result.out().contains("camera       Tarn T4"), result.out());
    assertTrue(Files.size(drawn) > 10_000);
  }

  @Test
  void aNameThatWouldSteerTheTerminalIsShownAsText() throws Exception {
    ExifPhoto.painted()
        .picture(Scenes.scene(1, 400, 300))
        .original("2026:06:03 10:00:00")
        .write(home.resolve("pics/a\u001b[31mb\nc.jpg"));
    Result result = new Shell(home).run("days", home.resolve("pics").toString());
    assertTrue(result.out().contains("a\\u001b[31mb\\u000ac.jpg"), result.out());
  }

  @Test
  void noteShowsWhatWasReadInANote() throws Exception {
    Files.writeString(home.resolve("mine.txt"), "June 2026\n1 Ferry.\n2O two photos\n21 skip\n");
    Result table = new Shell(home).run("note", "mine.txt");
    assertEquals(0, table.code());
    assertTrue(table.out().contains("? 20  photo, photo"), table.out());
    assertTrue(table.out().contains("line 3, column 1: '2O two photos' is taken as day 20"));
    Result json = new Shell(home).run("note", "mine.txt", "--json");
    assertTrue(json.out().contains("\"page\" : \"leave out\""), json.out());
    assertEquals(1, new Shell(home).run("note", "nowhere.txt").code());
  }

  @Test
  void noteWritesAMonthToFillIn() {
    Result result = new Shell(home).run("note", "--month", "2026-06");
    assertEquals(0, result.code());
    assertTrue(result.out().contains("June 2026"), result.out());
    assertTrue(result.out().lines().count() > 30, result.out());
  }

  /** A file called @june.txt is a file's name; its lines are no arguments. */
  @Test
  void aNameThatBeginsWithAnAtIsANameAndItsContentNoArguments() throws Exception {
    Files.writeString(home.resolve("june.txt"), "--help\n");
    Result named = new Shell(home).run("days", "@june.txt");
    assertEquals(2, named.code(), named.out());
    assertTrue(named.err().contains("there is no file or folder @june.txt"), named.err());
    Files.writeString(home.resolve("@june.txt"), "--help\n");
    Result there = new Shell(home).run("days", "@june.txt");
    assertTrue(!there.out().startsWith("For example"), there.out());
  }

  @Test
  void thePhotosFolderIsNoPlaceForTheOutputAndThatIsTheReasonGiven() throws Exception {
    ExifPhoto.painted().original("2026:06:03 12:00:00").write(home.resolve("June/a.jpg"));
    Result result = new Shell(home).run("sheets", "June", "--out", "June");
    assertEquals(2, result.code(), result.err());
    assertTrue(result.err().contains("--out June is the folder of the photos"), result.err());
  }
}
