package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.Scenes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A photo whose coded data are damaged is the last resort, and is told of wherever one looks. */
@Tag("slow")
class DamagedPhotosTest {
  @TempDir Path home;
  private Path photos;

  @BeforeEach
  void aSoundAndTwoDamagedPhotos() throws IOException {
    photos = Files.createDirectories(home.resolve("pictures"));
    Files.write(photos.resolve("a.jpg"), damaged(photo(1, "2026:06:03 10:00:00")));
    Files.write(photos.resolve("b.jpg"), photo(2, "2026:06:03 16:00:00"));
    Files.write(photos.resolve("c.jpg"), damaged(photo(3, "2026:06:04 10:00:00")));
  }

  private static byte[] photo(long seed, String taken) {
    return ExifPhoto.painted().picture(Scenes.scene(seed, 1800, 1350)).original(taken).bytes();
  }

  /** Its last lines told by bytes that are no code; the end marker stays. */
  private static byte[] damaged(byte[] jpeg) {
    for (int at = jpeg.length - 400; at < jpeg.length - 200; at += 2) {
      jpeg[at] = (byte) 0xff;
      jpeg[at + 1] = 0;
    }
    return jpeg;
  }

  @Test
  void itIsPassedOverForASoundOneAndElsePrintedWithAWarning() throws IOException {
    Shell.Result run = sheets();
    assertEquals(0, run.code(), run.err());
    JsonNode month = new ObjectMapper().readTree(home.resolve("out/month.json").toFile());
    assertEquals("b.jpg", hero(month, 3).get("photo").asText());
    assertEquals("c.jpg", hero(month, 4).get("photo").asText());
    assertTrue(hero(month, 4).get("reasons").toString().contains("damaged ("));
    for (JsonNode photo : month.get("photos")) {
      String problem = photo.get("problem").asText();
      assertEquals(!photo.get("file").asText().equals("b.jpg"), problem.startsWith("is damaged: "));
    }
    assertTrue(run.err().contains("a.jpg is damaged: "), run.err());
    assertTrue(run.err().contains("It is not printed"), run.err());
    assertTrue(run.err().contains("It is printed, for there is no sound one"), run.err());
    assertTrue(Files.readString(home.resolve("out/index.html")).contains("is damaged: "));
  }

  @Test
  void whatAnEarlierRunNoticedIsStillKnown() throws IOException {
    String first = sheets().err();
    String second = sheets().err();
    assertFalse(damage(first).isEmpty());
    assertEquals(damage(first), damage(second));
  }

  private Shell.Result sheets() {
    String out = home.resolve("out").toString();
    return new Shell(home).run("sheets", photos.toString(), "--out", out, "--days", "3-4");
  }

  private static List<String> damage(String err) {
    return Arrays.stream(err.split("\n")).filter(line -> line.contains("is damaged")).toList();
  }

  private static JsonNode hero(JsonNode month, int day) {
    for (JsonNode one : month.get("days")) {
      if (one.get("day").asText().equals("2026-06-0" + day)) {
        return one.get("spaces").get(0);
      }
    }
    throw new AssertionError("no day " + day);
  }
}
