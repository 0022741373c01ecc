package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.daymount.clip.Clip;
import org.daymount.clip.ClipDates;
import org.daymount.clip.Codec;
import org.daymount.clip.KeyFrame;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

class ClipTimesTest {
  private static final ZoneOffset SUMMER = ZoneOffset.ofHours(2);
  private static final Instant NOON = Instant.parse("2026-06-03T12:25:30Z");
  private static final LocalDateTime THEN = LocalDateTime.of(2026, 6, 3, 14, 25, 30);
  private static final IngestSettings SETTINGS =
      new IngestSettings(
          ClockCorrections.NONE, LocalDate.of(2026, 7, 4), ZoneId.of("America/New_York"));

  private static ClipReader.Found clip(String name, ClipDates dates) {
    PixelSize size = new PixelSize(1920, 1080);
    Clip clip =
        new Clip(
            Codec.H264,
            size,
            size,
            ExifOrientation.TOP_LEFT,
            Optional.empty(),
            Duration.ofSeconds(9),
            List.of(new KeyFrame(Duration.ofSeconds(7), 100, 100)),
            dates,
            Optional.empty());
    return new ClipReader.Found(
        new PhotoFile(Path.of("photos"), name),
        1000,
        clip,
        clip.keyFrames(),
        List.of("00"),
        LocalDateTime.of(2026, 7, 1, 9, 0));
  }

  private static ClipDates header(Instant created) {
    return new ClipDates(Optional.empty(), Optional.empty(), Optional.of(created));
  }

  private static ClipTimes.Judged judged(ClipReader.Found clip, Photo... photos) {
    return new ClipTimes(SETTINGS, List.of(photos)).judge(clip);
  }

  private static Photo photo(String at, ZoneOffset offset) {
    return PhotoBuilder.named("a.jpg")
        .taken(
            new Taken(
                Optional.of(LocalDateTime.parse(at)), Optional.of(offset), TakenFrom.ORIGINAL))
        .photo();
  }

  @Test
  void quickTimesCreationDateGoesFirst() {
    ClipDates dates =
        new ClipDates(
            Optional.of("2026-06-03T14:25:30+0200"),
            Optional.of("2026-06-05T01:00:00Z"),
            Optional.of(NOON.plusSeconds(90_000)));
    Taken taken = judged(clip("IMG_1.MOV", dates)).taken();
    assertEquals(Optional.of(THEN), taken.local());
    assertEquals(Optional.of(SUMMER), taken.offset());
    assertEquals(TakenFrom.CLIP, taken.from());
  }

  @Test
  void theHeaderIsUtcWithTheOffsetOfThePhotoNearestInTime() {
    Taken taken =
        judged(
                clip("a.mp4", header(NOON)),
                photo("2026-06-01T10:00:00", ZoneOffset.ofHours(-5)),
                photo("2026-06-03T15:00:00", SUMMER))
            .taken();
    assertEquals(Optional.of(THEN), taken.local());
    assertEquals(Optional.of(SUMMER), taken.offset());
  }

  @Test
  void aCameraThatWritesItsLocalTimeIsToldByTheName() {
    ClipTimes.Judged judged =
        judged(
            clip("20260603_142530.mp4", header(Instant.parse("2026-06-03T14:25:40Z"))),
            photo("2026-06-03T15:00:00", SUMMER));
    assertEquals(Optional.of(THEN.plusSeconds(10)), judged.taken().local());
    assertEquals(Optional.empty(), judged.taken().offset());
    assertEquals("20260603_142530.mp4", judged.remark().orElseThrow().file().name());
  }

  @Test
  void aNameInUtcDoesNotMakeItsHeaderLocal() {
    ClipTimes.Judged judged =
        judged(
            clip("PXL_20260603_122530123.mp4", header(NOON)), photo("2026-06-03T15:00:00", SUMMER));
    assertEquals(Optional.of(THEN), judged.taken().local());
    assertEquals(Optional.empty(), judged.remark());
  }

  @Test
  void withoutAnOffsetTheNameTellsThenThisComputersZoneWhichIsSaid() {
    assertEquals(
        Optional.of(THEN), judged(clip("VID_20260603_142530.mp4", header(NOON))).taken().local());
    ClipTimes.Judged zoned = judged(clip("a.mp4", header(NOON)));
    assertEquals(Optional.of(LocalDateTime.of(2026, 6, 3, 8, 25, 30)), zoned.taken().local());
    assertEquals(true, zoned.remark().orElseThrow().text().contains("-04:00"));
  }

  @Test
  void nothingButTheFilesTimeIsAGuess() {
    ClipDates none = new ClipDates(Optional.empty(), Optional.empty(), Optional.empty());
    assertEquals(TakenFrom.FILE_TIME, judged(clip("a.mp4", none)).taken().from());
  }

  @Test
  void aStillIsAsMuchLaterAsItLiesInTheClip() {
    ClipReader.Found found = clip("clips/a.mp4", header(NOON));
    Photo still = found.photos(Taken.at(THEN, TakenFrom.CLIP)).get(0);
    assertEquals(Optional.of(THEN.plusSeconds(7)), still.taken().local());
    assertEquals("clips/a.mp4 at 0:07", still.file().name());
    assertEquals(Path.of("photos/clips/a.mp4"), still.file().path());
  }
}
