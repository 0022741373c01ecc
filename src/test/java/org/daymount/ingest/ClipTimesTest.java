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
    return clip(name, dates, Optional.empty());
  }

  private static ClipReader.Found clip(String name, ClipDates dates, Optional<String> camera) {
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
            camera,
            Optional.empty());
    return new ClipReader.Found(
        new PhotoFile(Path.of("photos"), name),
        clip,
        clip.keyFrames(),
        List.of("00"),
        LocalDateTime.of(2026, 7, 1, 9, 0));
  }

  private static ClipDates header(Instant created) {
    return new ClipDates(Optional.empty(), Optional.empty(), Optional.of(created));
  }

  private static ClipTimes.Judged judged(ClipReader.Found clip, Photo... photos) {
    return judged(List.of(clip), photos).get(0);
  }

  private static List<ClipTimes.Judged> judged(List<ClipReader.Found> clips, Photo... photos) {
    ClipTimes times = new ClipTimes(SETTINGS, List.of(photos), clips);
    return clips.stream().map(times::judge).toList();
  }

  /** Of a camera that knows no offset. */
  private static Photo numbered(String name, String at) {
    return PhotoBuilder.named(name)
        .taken(Taken.at(LocalDateTime.parse(at), TakenFrom.ORIGINAL))
        .photo();
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

  private static final Photo PHONES = photo("2026-06-03T15:00:00", SUMMER);
  private static final Photo BEFORE = numbered("card/IMG_0122.JPG", "2026-06-03T14:20:00");
  private static final Photo AFTER = numbered("card/IMG_0125.JPG", "2026-06-03T14:31:00");
  private static final Instant LOCAL = Instant.parse("2026-06-03T14:25:30Z"); // the camera's own

  /** Pictures and clips of one card are numbered on together (CIPA DC-009, DCF file names). */
  @Test
  void aCameraThatWritesItsLocalTimeIsToldByThePicturesNumberedBeforeAndAfter() {
    ClipTimes.Judged local =
        judged(clip("card/MVI_0123.MP4", header(LOCAL)), PHONES, BEFORE, AFTER);
    assertEquals(Optional.of(THEN), local.taken().local());
    assertEquals(Optional.empty(), local.taken().offset());
    String text = local.remark().orElseThrow().text();
    assertEquals(true, text.contains("IMG_0122.JPG") && text.contains("IMG_0125.JPG"), text);
    ClipTimes.Judged utc = judged(clip("card/MVI_0123.MP4", header(NOON)), PHONES, BEFORE, AFTER);
    assertEquals(Optional.of(THEN), utc.taken().local());
    assertEquals(Optional.of(SUMMER), utc.taken().offset());
    assertEquals(Optional.empty(), utc.remark());
  }

  @Test
  void withoutAnyOffsetThePicturesNumberedBesideItStillTell() {
    ClipTimes.Judged local = judged(clip("card/MVI_0123.MP4", header(LOCAL)), BEFORE, AFTER);
    assertEquals(Optional.of(THEN), local.taken().local());
  }

  /** Nothing is decided by neighbours that are hours apart, elsewhere, or of two cameras. */
  @Test
  void neighboursThatFitBothReadingsOrNoneLeaveTheStandards() {
    Optional<LocalDateTime> standards = Optional.of(THEN.plusHours(2));
    Photo late = numbered("card/IMG_0125.JPG", "2026-06-03T21:00:00");
    Photo elsewhere = numbered("phone/IMG_0125.JPG", "2026-06-03T14:31:00");
    Photo others = numbered("card/DSC_0122.JPG", "2026-06-03T09:00:00");
    Photo far = numbered("card/IMG_0925.JPG", "2026-06-03T14:31:00");
    for (Photo[] photos :
        List.of(
            new Photo[] {PHONES, BEFORE, late},
            new Photo[] {PHONES, BEFORE, elsewhere},
            new Photo[] {PHONES, BEFORE, others, AFTER},
            new Photo[] {PHONES, BEFORE, far},
            new Photo[] {PHONES, AFTER},
            new Photo[] {PHONES, BEFORE})) {
      ClipTimes.Judged judged = judged(clip("card/MVI_0123.MP4", header(LOCAL)), photos);
      assertEquals(standards, judged.taken().local());
      assertEquals(Optional.empty(), judged.remark());
    }
  }

  @Test
  void whatOtherClipsOfTheSameCameraTellHoldsForOneWithoutATimeInItsName() {
    Optional<String> camera = Optional.of("Tarn T4");
    ClipReader.Found named = clip("VID_20260603_142530.mp4", header(LOCAL), camera);
    ClipReader.Found open = clip("boat.mp4", header(LOCAL.plusSeconds(60)), camera);
    ClipReader.Found other = clip("c.mp4", header(LOCAL), Optional.of("Orrery 9"));
    ClipReader.Found unknown = clip("d.mp4", header(LOCAL));
    List<ClipTimes.Judged> judged = judged(List.of(open, named, other, unknown), PHONES);
    assertEquals(Optional.of(THEN.plusSeconds(60)), judged.get(0).taken().local());
    assertEquals(true, judged.get(0).remark().orElseThrow().text().contains("Tarn T4"));
    assertEquals(Optional.of(THEN.plusHours(2)), judged.get(2).taken().local());
    assertEquals(Optional.of(THEN.plusHours(2)), judged.get(3).taken().local());
  }

  @Test
  void clipsOfOneCameraThatDisagreeTellNothingOfAThird() {
    Optional<String> camera = Optional.of("Tarn T4");
    List<ClipTimes.Judged> judged =
        judged(
            List.of(
                clip("boat.mp4", header(LOCAL), camera),
                clip("VID_20260603_142530.mp4", header(LOCAL), camera),
                clip("VID_20260603_152530.mp4", header(NOON.plusSeconds(3600)), camera)),
            PHONES);
    assertEquals(Optional.of(THEN.plusHours(2)), judged.get(0).taken().local());
  }

  /** The difference between the two is its own offset, whatever a photo elsewhere says. */
  @Test
  void aNameInLocalTimeBesideAHeaderInUtcTellsTheOffset() {
    Taken taken =
        judged(
                clip("VID_20260603_142530.mp4", header(Instant.parse("2026-06-03T18:25:31Z"))),
                photo("2026-06-03T20:30:00", SUMMER))
            .taken();
    assertEquals(Optional.of(THEN.plusSeconds(1)), taken.local());
    assertEquals(Optional.of(ZoneOffset.ofHours(-4)), taken.offset());
    Taken odd =
        judged(
                clip("VID_20260603_142530.mp4", header(Instant.parse("2026-06-03T18:05:31Z"))),
                photo("2026-06-03T20:30:00", SUMMER))
            .taken();
    assertEquals(Optional.of(SUMMER), odd.offset());
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
