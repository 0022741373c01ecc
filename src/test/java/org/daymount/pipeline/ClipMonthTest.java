package org.daymount.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.daymount.cache.Cache;
import org.daymount.crop.CropSettings;
import org.daymount.image.Pictures;
import org.daymount.month.Month;
import org.daymount.month.MonthJson;
import org.daymount.pick.SpacePick;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.Scenes;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A month with a clip on a day without a photo, and one of the moment of a photo. */
@Tag("slow")
class ClipMonthTest {
  @TempDir static Path home;
  private static Month month;
  private static JsonNode json;

  @BeforeAll
  static void aMonthWithTwoClips() throws IOException {
    Path photos = Files.createDirectories(home.resolve("pictures"));
    for (int day = 3; day <= 4; day++) {
      ExifPhoto.painted()
          .picture(Scenes.scene(day, 1920, 1280))
          .original("2026:06:0" + day + " 10:00:00")
          .write(photos.resolve("day " + day + ".jpg"));
    }
    clip(photos, 3, "2026-06-03T09:59:58");
    clip(photos, 5, "2026-06-05T10:00:00");
    month =
        new MonthMaker(new Pictures(), Progress.SILENT)
            .make(
                TestRequests.of(
                    photos,
                    Optional.empty(),
                    new OutputLocation(home, Optional.of(Path.of("out"))),
                    CropSettings.of(new Ppi(300), new Ppi(200))),
                note -> {});
    json = new ObjectMapper().readTree(new MonthJson("test").write(month));
  }

  /** Three seconds of a still scene, a key frame a second, dated as Apple's cameras do. */
  private static void clip(Path photos, int scene, String taken) throws IOException {
    Path still = home.resolve("scene.png");
    ImageIO.write(Scenes.scene(scene, 1920, 1280), "png", still.toFile());
    List<String> command =
        new ArrayList<>(
            List.of(
                "ffmpeg",
                "-y",
                "-v",
                "error",
                "-loop",
                "1",
                "-framerate",
                "5",
                "-t",
                "3",
                "-i",
                still.toString(),
                "-c:v",
                "libx264",
                "-preset",
                "veryfast",
                "-qp",
                "14",
                "-g",
                "5",
                "-pix_fmt",
                "yuv420p",
                "-movflags",
                "use_metadata_tags",
                "-metadata",
                "com.apple.quicktime.creationdate=" + taken + "+0200",
                photos.resolve("VID " + scene + ".mp4").toString()));
    try {
      assertEquals(0, new ProcessBuilder(command).inheritIO().start().waitFor(), "ffmpeg's code");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (IOException e) {
      assumeTrue(false, "ffmpeg is not installed");
    }
  }

  private static SpacePick pick(int day) {
    return month.days().get(day - 1).spaces().get(0).pick();
  }

  @Test
  void aDayWithOnlyAClipHasAStillFromItWhichSaysSo() {
    String hero = pick(5).hero().orElseThrow().looked().photo().file().name();
    assertTrue(hero.startsWith("VID 5.mp4 at 0:0"), hero);
    assertEquals(
        "a still from the clip VID 5.mp4, at " + hero.substring(hero.length() - 4),
        pick(5).reasons().get(0));
  }

  @Test
  void aPhotoOfTheSameMomentGoesBeforeItsClip() {
    assertEquals("day 3.jpg", pick(3).hero().orElseThrow().looked().photo().file().name());
    assertTrue(
        pick(3).runnersUp().stream()
            .allMatch(other -> other.looked().photo().file().frame().isPresent()));
    assertTrue(
        pick(3).runnersUp().get(0).reasons().contains("another frame of the same moment"),
        pick(3).runnersUp().get(0).reasons().toString());
  }

  @Test
  void theRecordNamesTheClipAndTheTime() {
    int stills = 0;
    for (JsonNode photo : json.get("photos")) {
      if (photo.get("file").asText().startsWith("VID 5.mp4 at ")) {
        assertEquals("VID 5.mp4", photo.get("clip").asText());
        assertEquals(stills, photo.get("frameAt").asDouble(), 0.001);
        assertEquals("clip", photo.get("takenFrom").asText());
        assertEquals("2026-06-05T10:00:0" + stills + "+02:00", photo.get("takenAt").asText());
        stills++;
      } else {
        assertEquals(photo.get("file").asText().startsWith("VID"), photo.has("clip"));
      }
    }
    assertEquals(3, stills);
  }

  @Test
  void nothingIsSaidToBeLeftOut() {
    assertFalse(
        month.warnings().stream().anyMatch(warning -> warning.file().isPresent()),
        month.warnings().toString());
  }

  @Test
  void theMonthIsWrittenWithItsStills() throws IOException {
    Path out = home.resolve("written");
    new MonthWriter(new Pictures(), new MonthJson("daymount test"), Progress.SILENT, Cache.NONE)
        .write(month, out, false, 2);
    assertTrue(Files.readString(out.resolve("index.html")).contains("VID 5.mp4"));
  }
}
