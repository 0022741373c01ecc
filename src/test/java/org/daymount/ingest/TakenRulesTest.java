package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.PngPhoto;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TakenRulesTest {
  private static final String NOON = "2026:06:03 12:00:00";

  @TempDir Path folder;
  private ExifPhoto photo;

  @BeforeEach
  void paint() {
    photo = ExifPhoto.painted();
  }

  private Taken taken(String name) throws IOException {
    Path file = photo.write(folder.resolve(name));
    Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2026-06-20T10:11:12Z")));
    return Reading.one(file).taken();
  }

  private static LocalDateTime local(String iso) {
    return LocalDateTime.parse(iso);
  }

  @Test
  void theOriginalTimeComesBeforeAllOthers() throws IOException {
    photo
        .original("2026:06:03 14:25:30")
        .digitized("2026:06:04 01:02:03")
        .modified("2026:06:05 01:02:03")
        .xmp("photoshop:DateCreated=\"2026-06-06\"");
    Taken taken = taken("IMG_20260607_101010.jpg");
    assertEquals(local("2026-06-03T14:25:30"), taken.local().orElseThrow());
    assertEquals(TakenFrom.ORIGINAL, taken.from());
  }

  @Test
  void theDigitizedTimeFollowsTheOriginal() throws IOException {
    photo.digitized("2026:06:04 01:02:03").modified("2026:06:05 01:02:03");
    Taken taken = taken("a.jpg");
    assertEquals(local("2026-06-04T01:02:03"), taken.local().orElseThrow());
    assertEquals(TakenFrom.DIGITIZED, taken.from());
  }

  @Test
  void theTimeOfTheLastChangeIsNeverTheTimeTaken() throws IOException {
    photo.modified("2026:06:05 01:02:03");
    assertEquals(TakenFrom.FILE_TIME, taken("a.jpg").from());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "exif:DateTimeOriginal=\"2026-06-03T14:25:30.5\"",
        "photoshop:DateCreated=\"2026-06-03T14:25:30.500\"",
        "xmp:CreateDate=\"2026-06-03T14:25:30.5\"",
        "exif:DateTimeOriginal=\"2026-06-03T14:25:30.5\" xmp:CreateDate=\"2026-06-09T01:01:01\"",
        "photoshop:DateCreated=\"\" xmp:CreateDate=\"2026-06-03T14:25:30.5\""
      })
  void xmpDatesCountWhenExifHasNone(String attributes) throws IOException {
    photo.xmp(attributes);
    Taken taken = taken("IMG_20260607_101010.jpg");
    assertEquals(local("2026-06-03T14:25:30.5"), taken.local().orElseThrow());
    assertEquals(TakenFrom.XMP, taken.from());
  }

  @Test
  void anXmpDayWithoutAnHourIsThatDayAtNoonAndSaysSo() throws IOException {
    photo.xmp("photoshop:DateCreated=\"2026-06-03\"");
    Taken taken = taken("a.jpg");
    assertEquals(local("2026-06-03T12:00"), taken.local().orElseThrow());
    assertFalse(taken.hourKnown());
  }

  @Test
  void aFractionKeepsItsLeadingZeros() throws IOException {
    photo.original(NOON).subSeconds("007419");
    assertEquals(local("2026-06-03T12:00:00.007419"), taken("a.jpg").local().orElseThrow());
  }

  @Test
  void aBlankFractionIsNone() throws IOException {
    photo.original(NOON).subSeconds("   ");
    assertEquals(local("2026-06-03T12:00:00"), taken("a.jpg").local().orElseThrow());
  }

  @Test
  void anOffsetIsKeptAndMovesNothing() throws IOException {
    photo.original("2026:06:03 23:30:00").offset("+05:45");
    Taken taken = taken("a.jpg");
    assertEquals(local("2026-06-03T23:30"), taken.local().orElseThrow());
    assertEquals(Optional.of(ZoneOffset.ofHoursMinutes(5, 45)), taken.offset());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "      ", "   :  ", "+25:00", "CEST"})
  void anOffsetThatIsNoneIsUnknown(String offset) throws IOException {
    photo.original(NOON).offset(offset);
    assertEquals(Optional.empty(), taken("a.jpg").offset());
  }

  /** Blank as CIPA DC-008 4.6.5 D spells "unknown"; zeros and resets as cameras write them. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "                   ",
        "    :  :     :  :  ",
        "0000:00:00 00:00:00",
        "2026:00:00 00:00:00",
        "2026:13:01 10:00:00",
        "2026:06:31 10:00:00",
        "2026:06:03 25:00:00",
        "2026:06:03 10:61:00",
        "1970:01:01 00:00:00",
        "1989:12:31 23:59:59",
        "2026:07:03 00:00:00",
        "2099:01:01 00:00:00",
        "9999:99:99 99:99:99",
        "3 June 2026",
        "2026:06:03 10:00:00 or so"
      })
  void blankZeroMalformedAndAbsurdDatesAreUnknown(String text) throws IOException {
    photo.original(text);
    Taken taken = taken("a.jpg");
    assertEquals(TakenFrom.FILE_TIME, taken.from());
    assertFalse(taken.from().isTrusted());
  }

  @Test
  void aDateADayAheadIsBelievedForZonesAhead() throws IOException {
    photo.original("2026:07:02 23:59:59");
    assertEquals(TakenFrom.ORIGINAL, taken("a.jpg").from());
  }

  @Test
  void anUnusableOriginalGivesWayToTheDigitizedTime() throws IOException {
    photo.original("0000:00:00 00:00:00").digitized(NOON);
    assertEquals(TakenFrom.DIGITIZED, taken("a.jpg").from());
  }

  /** The trap of an evening west of Greenwich: in UTC it is tomorrow already. */
  @Test
  void gpsNeverSetsTheDayOfAPhotoWithAWallTime() throws IOException {
    photo.original("2026:06:03 23:16:12").offset("-03:00").gpsTime("2026:06:04", 2, 16, 8);
    assertEquals(local("2026-06-03T23:16:12"), taken("a.jpg").local().orElseThrow());
  }

  @Test
  void gpsCountsOnlyWithAnOffset() throws IOException {
    photo.gpsTime("2026:06:04", 2, 16, 8);
    assertEquals(TakenFrom.FILE_TIME, taken("without.jpg").from());
    photo.offset("-03:00");
    Taken with = taken("with.jpg");
    assertEquals(TakenFrom.GPS, with.from());
    assertEquals(local("2026-06-03T23:16:08"), with.local().orElseThrow());
  }

  @Test
  void theNameComesBeforeGps() throws IOException {
    photo.offset("-03:00").gpsTime("2026:06:04", 2, 16, 8);
    Taken taken = taken("IMG_20260603_142530123.jpg");
    assertEquals(TakenFrom.NAME, taken.from());
    assertEquals(local("2026-06-03T14:25:30.123"), taken.local().orElseThrow());
  }

  @Test
  void aChatNameGivesADayOnly() throws IOException {
    Taken taken = taken("IMG-20260603-WA0002.jpg");
    assertEquals(local("2026-06-03T12:00"), taken.local().orElseThrow());
    assertFalse(taken.hourKnown());
    assertTrue(taken.from().isTrusted());
  }

  @Test
  void theFilesOwnTimeIsTheLastResortAndAGuess() throws IOException {
    Taken taken = taken("a.jpg");
    assertEquals(local("2026-06-20T10:11:12"), taken.local().orElseThrow());
    assertEquals(TakenFrom.FILE_TIME, taken.from());
  }

  @Test
  void anAbsurdFileTimeIsNoTimeAtAll() throws IOException {
    Path file = photo.write(folder.resolve("a.jpg"));
    Files.setLastModifiedTime(file, FileTime.from(Instant.EPOCH));
    assertEquals(Taken.UNKNOWN, Reading.one(file).taken());
  }

  @Test
  void aPngsExifComesFirstThenItsCreationTimeThenItsNameThenItsLastChange() throws IOException {
    byte[] exif = photo.original("2026:06:03 14:25:30").exifBlock();
    PngPhoto png = PngPhoto.painted().lastModified(2026, 6, 9, 1, 2, 3);
    assertEquals(TakenFrom.PNG, Reading.one(png.write(folder.resolve("tIME.png"))).taken().from());
    assertEquals(
        local("2026-06-08T07:06:05"),
        Reading.localOf(png.write(folder.resolve("20260608_070605.png"))));
    png.text("Creation Time", "Thu, 4 Jun 2026 10:20:30 +0200");
    assertEquals(
        local("2026-06-04T10:20:30"),
        Reading.localOf(png.write(folder.resolve("20260608_070606.png"))));
    png.exif(exif);
    assertEquals(
        local("2026-06-03T14:25:30"),
        Reading.localOf(png.write(folder.resolve("20260608_070607.png"))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-06-04T10:20:30Z", "2026:06:04 10:20:30", "4 Jun 2026 10:20:30 GMT"})
  void aPngsCreationTimeMayBeWrittenInSeveralWays(String text) throws IOException {
    Path file = PngPhoto.painted().text("Creation Time", text).write(folder.resolve("a.png"));
    assertEquals(local("2026-06-04T10:20:30"), Reading.localOf(file));
  }

  @Test
  void aCorrectedClockMovesOnlyItsOwnModel() throws IOException {
    var settings = Reading.settings(ClockCorrections.parse(List.of("tarn t4=+1h30m", "X=-1d")));
    Path tarn =
        photo.original("2026:06:03 23:00:00").model("Tarn T4").write(folder.resolve("t.jpg"));
    Path orrery = photo.model("Orrery 9").write(folder.resolve("o.jpg"));
    assertEquals(
        local("2026-06-04T00:30"), Reading.one(settings, tarn).taken().local().orElseThrow());
    assertEquals(
        local("2026-06-03T23:00"), Reading.one(settings, orrery).taken().local().orElseThrow());
    assertEquals(List.of("x"), Reading.all(settings, 1, folder).unmatchedClocks());
  }
}
