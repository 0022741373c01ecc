package org.daymount.ingest;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;

/**
 * When a photo was taken, by the first of these that holds a date: DateTimeOriginal,
 * DateTimeDigitized, XMP, a PNG's "Creation Time", the file's name, a PNG's tIME, GPS, the file's
 * own time. tIME comes after the name because it says in UTC when the file was last changed. GPS
 * counts only where the file names its offset from UTC, for UTC alone does not tell the day.
 */
final class TakenRules {
  /** Before digital cameras carried a clock worth believing; tags below it are resets and zeros. */
  private static final int FIRST_YEAR = 1990;

  private final IngestSettings settings;

  TakenRules(IngestSettings settings) {
    this.settings = settings;
  }

  /**
   * @param fileTime the file's own time, already in the zone of the settings
   */
  Taken judge(Tags tags, PhotoFile file, LocalDateTime fileTime) {
    return first(tags.original().wallTime(), TakenFrom.ORIGINAL)
        .or(() -> first(tags.digitized().wallTime(), TakenFrom.DIGITIZED))
        .or(() -> xmp(tags))
        .or(() -> first(tags.pngCreation().flatMap(TakenRules::creation), TakenFrom.PNG))
        .map(taken -> corrected(taken, tags))
        .or(() -> first(NameDate.in(file.lastName()), TakenFrom.NAME).map(t -> corrected(t, tags)))
        .or(() -> first(tags.pngModified().map(WallTime::at), TakenFrom.PNG))
        .or(() -> first(gps(tags), TakenFrom.GPS))
        .or(() -> first(Optional.of(WallTime.at(fileTime)), TakenFrom.FILE_TIME))
        .orElse(Taken.UNKNOWN);
  }

  private Optional<Taken> first(Optional<WallTime> time, TakenFrom from) {
    return time.filter(t -> isBelievable(t.local().toLocalDate()))
        .map(t -> new Taken(Optional.of(t.local()), t.offset(), from, t.hourKnown()));
  }

  private boolean isBelievable(LocalDate day) {
    return day.getYear() >= FIRST_YEAR && !day.isAfter(settings.today().plusDays(1));
  }

  private Optional<Taken> xmp(Tags tags) {
    return tags.xmp().stream()
        .map(text -> first(WallTime.parse(text), TakenFrom.XMP))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** RFC 3339, or RFC 1123 5.2.14 as the PNG standard (11.3.3.1) recommends. */
  private static Optional<WallTime> creation(String text) {
    return WallTime.parse(text).or(() -> mailDate(text));
  }

  private static Optional<WallTime> mailDate(String text) {
    try {
      var parsed =
          DateTimeFormatter.RFC_1123_DATE_TIME
              .withLocale(Locale.ROOT)
              .parse(text.strip(), OffsetDateTime::from);
      return Optional.of(
          new WallTime(parsed.toLocalDateTime(), true, Optional.of(parsed.getOffset())));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<WallTime> gps(Tags tags) {
    Optional<ZoneOffset> offset =
        tags.offsets().stream().map(WallTime::offset).flatMap(Optional::stream).findFirst();
    return tags.gpsUtc()
        .flatMap(
            utc ->
                offset.map(
                    o -> new WallTime(utc.plusSeconds(o.getTotalSeconds()), true, Optional.of(o))));
  }

  private Taken corrected(Taken taken, Tags tags) {
    if (!taken.hourKnown()) {
      return taken;
    }
    return tags.model()
        .flatMap(settings.clocks()::correctionFor)
        .map(
            by ->
                new Taken(taken.local().map(local -> local.plus(by)), taken.offset(), taken.from()))
        .orElse(taken);
  }
}
