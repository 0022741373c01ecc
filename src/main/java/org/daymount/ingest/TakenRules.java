package org.daymount.ingest;

import java.time.DateTimeException;
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
 * When a photo was taken, by the first of these that holds a date: a person's table,
 * DateTimeOriginal, DateTimeDigitized, XMP, a PNG's "Creation Time", an XMP file beside it, the
 * file's name, a PNG's tIME, GPS, the file's own time. A name that tells UTC gives a time with the
 * offset of UTC, which {@link NameInstants} turns into a wall clock's. tIME comes after the name
 * because it says in UTC when the file was last changed. GPS counts only where the file names its
 * offset from UTC, for UTC alone does not tell the day.
 */
final class TakenRules {
  private final IngestSettings settings;

  TakenRules(IngestSettings settings) {
    this.settings = settings;
  }

  /**
   * @param fileTime the file's own time, already in the zone of the settings
   */
  Taken judge(Tags tags, PhotoFile file, LocalDateTime fileTime) {
    return first(settings.dates().of(file), TakenFrom.PERSON)
        .orElseGet(() -> judgeUntold(tags, file, fileTime));
  }

  private Taken judgeUntold(Tags tags, PhotoFile file, LocalDateTime fileTime) {
    return first(tags.original().wallTime(), TakenFrom.ORIGINAL)
        .or(() -> first(tags.digitized().wallTime(), TakenFrom.DIGITIZED))
        .or(() -> xmp(tags))
        .or(() -> first(tags.pngCreation().flatMap(TakenRules::creation), TakenFrom.PNG))
        .map(taken -> corrected(taken, tags))
        .or(() -> sidecar(file))
        .or(() -> name(file).map(t -> corrected(t, tags)))
        .or(() -> first(tags.pngModified().map(WallTime::at), TakenFrom.PNG))
        .or(() -> first(gps(tags), TakenFrom.GPS))
        .or(() -> first(Optional.of(WallTime.at(fileTime)), TakenFrom.FILE_TIME))
        .orElse(Taken.UNKNOWN);
  }

  private Optional<Taken> first(Optional<WallTime> time, TakenFrom from) {
    return time.flatMap(t -> settings.believed(t, from));
  }

  private Optional<Taken> xmp(Tags tags) {
    return tags.xmp().stream()
        .map(text -> first(WallTime.parse(text), TakenFrom.XMP))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<Taken> sidecar(PhotoFile file) {
    return Sidecar.dates(file.path()).stream()
        .map(text -> first(WallTime.parse(text), TakenFrom.SIDECAR))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<Taken> name(PhotoFile file) {
    return NameDate.in(file.lastName())
        .map(
            found ->
                found.utc() ? found.time().withOffset(Optional.of(ZoneOffset.UTC)) : found.time())
        .flatMap(time -> first(Optional.of(time), TakenFrom.NAME));
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
