package org.daymount.ingest;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;

/**
 * What reading needs to know from outside.
 *
 * @param clocks corrections of wrong camera clocks
 * @param today dates more than a day after it are not believed; the day is there for zones ahead
 * @param fileTimes the zone in which a file's own time is read, when nothing better is known
 */
public record IngestSettings(ClockCorrections clocks, LocalDate today, ZoneId fileTimes) {
  public IngestSettings {
    Objects.requireNonNull(clocks);
    Objects.requireNonNull(today);
    Objects.requireNonNull(fileTimes);
  }
}
