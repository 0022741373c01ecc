package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The forms of names are common practice of phones and chats, no source. */
class NameDateTest {
  @ParameterizedTest
  @CsvSource({
    "20260603_142530.jpg, 2026-06-03T14:25:30",
    "IMG_20260603_142530123.jpg, 2026-06-03T14:25:30.123",
    "IMG20260603142530.jpg, 2026-06-03T14:25:30",
    "IMG_20260603_142530_BURST001.jpg, 2026-06-03T14:25:30",
    "2026-06-03 14.25.30.jpg, 2026-06-03T14:25:30",
    "2026-06-03 14.25.30-1.jpg, 2026-06-03T14:25:30",
    "2026-06-03T14-25-30.webp, 2026-06-03T14:25:30",
    "Screenshot_2026-06-03-14-25-30.png, 2026-06-03T14:25:30",
    "Screenshot_20260603-142530.png, 2026-06-03T14:25:30",
    "signal-2026-06-03-142530.jpg, 2026-06-03T14:25:30",
    "signal-2026-06-03-14-25-30-123.jpg, 2026-06-03T14:25:30.123",
    "photo_2026-06-03_14-25-30.jpg, 2026-06-03T14:25:30",
    "Image 2026-06-03 at 14.25.30.jpeg, 2026-06-03T14:25:30",
    "Screenshot 2026-06-03 at 2.25.30 PM.png, 2026-06-03T14:25:30",
    "Screenshot 2026-06-03 at 12.05.00 AM.png, 2026-06-03T00:05:00"
  })
  void aNameWithADateAndAnHourGivesBoth(String name, LocalDateTime expected) {
    NameDate.Found found = NameDate.in(name).orElseThrow();
    assertEquals(new WallTime(expected, true, Optional.empty()), found.time());
    assertEquals(false, found.utc());
  }

  /** Measured on 16 originals: the name is EXIF's time less its offset. */
  @ParameterizedTest
  @CsvSource({
    "PXL_20260603_142530007.jpg, 2026-06-03T14:25:30.007",
    "PXL_20260603_142530007.MP.jpg, 2026-06-03T14:25:30.007",
    "PXL_20260603_142530007~2.jpg, 2026-06-03T14:25:30.007",
    "PXL_20260603_142530007.PORTRAIT-01.COVER.jpg, 2026-06-03T14:25:30.007"
  })
  void aNameThatTellsUtcSaysSo(String name, LocalDateTime expected) {
    NameDate.Found found = NameDate.in(name).orElseThrow();
    assertEquals(expected, found.time().local());
    assertEquals(true, found.utc());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "IMG-20260603-WA0002.jpg",
        "20260603.jpg",
        "20260603 breakfast.jpg",
        "2026-06-03.jpg",
        "the garden 2026-06-03 (2).jpg",
        "2026.06.03 garden.png"
      })
  void aNameWithADayAloneGivesNoonOfThatDay(String name) {
    WallTime found = NameDate.in(name).orElseThrow().time();
    assertEquals(LocalDateTime.parse("2026-06-03T12:00"), found.local());
    assertEquals(false, found.hourKnown());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "IMG_0412.JPG",
        "DSC20260.jpg",
        "1591166726123.jpg",
        "FB_IMG_1591166726123.jpg",
        "20260603_10151234567890123_n.jpg",
        "412026060314253099.jpg",
        "20261303_142530.jpg",
        "20260631_142530.jpg",
        "20260603_256199.jpg",
        "2026-13-03.jpg",
        "12-2026-06-031.jpg",
        "a1b20260603c4.jpg",
        "photo.jpg",
        ""
      })
  void digitsThatAreNoDateGiveNone(String name) {
    assertEquals(Optional.empty(), NameDate.in(name));
  }
}
