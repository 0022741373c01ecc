package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** That such names are UTC was measured on 16 originals (docs/dates.md). */
class NameInstantsTest {
  private static final String IN_UTC = "PXL_20260603_223000000.jpg";

  @TempDir Path folder;

  private void tagged(String name, String time, String offset) throws IOException {
    ExifPhoto.painted().original(time).offset(offset).write(folder.resolve(name));
  }

  private Ingested read(String zone) {
    return Reading.all(
        new IngestSettings(ClockCorrections.NONE, Reading.TODAY, ZoneId.of(zone)), 2, folder);
  }

  private static Taken of(Ingested ingested, String name) {
    return ingested.photos().stream()
        .filter(photo -> photo.file().name().equals(name))
        .findFirst()
        .map(Photo::taken)
        .orElseThrow();
  }

  private static Taken at(String local, String offset) {
    return new Taken(
        Optional.of(LocalDateTime.parse(local)),
        Optional.of(ZoneOffset.of(offset)),
        TakenFrom.NAME);
  }

  /** Half past ten at night in Greenwich is the fourth of June in Oslo already. */
  @Test
  void aNameInUtcTakesTheOffsetOfTheNearestPhoto() throws IOException {
    ExifPhoto.painted().write(folder.resolve(IN_UTC));
    tagged("a.jpg", "2026:06:03 09:00:00", "-05:00");
    tagged("b.jpg", "2026:06:04 01:00:00", "+02:00"); // 23:00 UTC: nearer than 14:00 UTC
    Ingested ingested = read("Asia/Tokyo");
    assertEquals(at("2026-06-04T00:30", "+02:00"), of(ingested, IN_UTC));
    assertEquals(1, ingested.notes().size());
    assertTrue(ingested.notes().get(0).contains("read at UTC+02:00"), ingested.notes().get(0));
  }

  @Test
  void withoutSuchAPhotoTheZoneDecidesAndItIsSaid() throws IOException {
    ExifPhoto.painted().write(folder.resolve(IN_UTC));
    ExifPhoto.painted().write(folder.resolve("PXL_20260115_120000000.jpg"));
    ExifPhoto.painted().original("2026:06:03 09:00:00").write(folder.resolve("no-offset.jpg"));
    Ingested ingested = read("America/New_York");
    assertEquals(at("2026-06-03T18:30", "-04:00"), of(ingested, IN_UTC));
    assertEquals(
        at("2026-01-15T07:00", "-05:00"),
        of(ingested, "PXL_20260115_120000000.jpg"),
        "in winter the zone has another offset");
    assertEquals(2, ingested.notes().size());
    assertTrue(ingested.notes().get(0).contains("--zone"), ingested.notes().get(0));
  }

  @Test
  void thePhotosOwnTimeComesBeforeSuchAName() throws IOException {
    tagged("PXL_20260603_223000001.jpg", "2026:06:04 00:30:00", "+02:00");
    Ingested ingested = read("Asia/Tokyo");
    assertEquals(TakenFrom.ORIGINAL, of(ingested, "PXL_20260603_223000001.jpg").from());
    assertEquals(List.of(), ingested.notes());
  }
}
