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
 * @param models whether a photo is to name its camera's model although no clock is put right
 */
public record IngestSettings(
    ClockCorrections clocks, LocalDate today, ZoneId fileTimes, boolean models) {
  public IngestSettings {
    Objects.requireNonNull(clocks);
    Objects.requireNonNull(today);
    Objects.requireNonNull(fileTimes);
  }

  public IngestSettings(ClockCorrections clocks, LocalDate today, ZoneId fileTimes) {
    this(clocks, today, fileTimes, false);
  }

  /** What is kept from run to run has no models, so they are read again where this says so. */
  boolean modelsWanted() {
    return models || !clocks.byModel().isEmpty();
  }
}
