package org.daymount.ingest;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;
import java.util.Optional;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;

/**
 * What reading needs to know from outside.
 *
 * @param clocks corrections of wrong camera clocks
 * @param today dates more than a day after it are not believed; the day is there for zones ahead
 * @param zone in which a file's own time is read, and a name that tells UTC, when nothing better is
 *     known
 * @param dates what a person said of single files
 * @param models whether a photo is to name its camera's model although no clock is put right
 */
public record IngestSettings(
    ClockCorrections clocks, LocalDate today, ZoneId zone, DateTable dates, boolean models) {
  /** Before digital cameras carried a clock worth believing; tags below it are resets and zeros. */
  private static final int FIRST_YEAR = 1990;

  public IngestSettings {
    Objects.requireNonNull(clocks);
    Objects.requireNonNull(today);
    Objects.requireNonNull(zone);
    Objects.requireNonNull(dates);
  }

  public IngestSettings(ClockCorrections clocks, LocalDate today, ZoneId zone) {
    this(clocks, today, zone, DateTable.EMPTY, false);
  }

  /** The time, unless no camera that was on time can have told it. */
  Optional<Taken> believed(WallTime time, TakenFrom from) {
    return isBelievable(time.local().toLocalDate())
        ? Optional.of(new Taken(Optional.of(time.local()), time.offset(), from, time.hourKnown()))
        : Optional.empty();
  }

  /** Whether a photo may have been taken that day. */
  public boolean isBelievable(LocalDate day) {
    return day.getYear() >= FIRST_YEAR && !day.isAfter(today.plusDays(1));
  }

  /**
   * What a person says of a photo outside of the table of dates, with the checks of that table.
   *
   * @param date like 2026-06-03
   * @param time like 14:25; blank where it is not known
   * @throws IllegalArgumentException with a sentence for the person
   */
  public Taken said(String date, String time) {
    WallTime read =
        DateTable.written(date, time)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "'" + (date + " " + time).strip() + "' is no date" + DateTable.LIKE));
    return believed(read, TakenFrom.PERSON)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    read.local().toLocalDate()
                        + " cannot be: a picture is taken from "
                        + FIRST_YEAR
                        + " to tomorrow"));
  }

  /** What is kept from run to run has no models, so they are read again where this says so. */
  boolean modelsWanted() {
    return models || !clocks.byModel().isEmpty();
  }
}
