package org.daymount.ingest;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.daymount.photo.Photo;

/** Reads test folders the way a run does. */
final class Reading {
  static final LocalDate TODAY = LocalDate.of(2026, 7, 1);
  static final IngestSettings SETTINGS = settings(ClockCorrections.NONE);

  private Reading() {}

  static IngestSettings settings(ClockCorrections clocks) {
    return new IngestSettings(clocks, TODAY, ZoneId.of("UTC"));
  }

  static Ingested all(Path... arguments) {
    return all(SETTINGS, 2, arguments);
  }

  static Ingested all(IngestSettings settings, int jobs, Path... arguments) {
    FolderReader reader = new FolderReader();
    return reader.read(reader.list(List.of(arguments)), settings, jobs, () -> {});
  }

  static Photo one(Path file) {
    return one(SETTINGS, file);
  }

  static Photo one(IngestSettings settings, Path file) {
    Ingested ingested = all(settings, 1, file);
    if (ingested.photos().size() != 1) {
      throw new AssertionError(file + " is not one photo: " + ingested.problems());
    }
    return ingested.photos().get(0);
  }

  static LocalDateTime localOf(Path file) {
    return one(file).taken().local().orElseThrow();
  }
}
