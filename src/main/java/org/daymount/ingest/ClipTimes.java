package org.daymount.ingest;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daymount.clip.ClipDates;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.problem.Problem;

/**
 * When a clip was taken, by the first of these that holds a date: QuickTime's creation date, the
 * user data's, both with their offset; the movie header, which is UTC (ISO/IEC 14496-12, 8.2.2),
 * with the offset of the photo nearest in time, or as local time where the clip's name says that
 * its camera writes that; the name; the movie header in this computer's zone; the file's own time.
 */
final class ClipTimes {
  private static final int FIRST_YEAR = 1990;

  /** A header may be written when recording ends, some seconds later than the name says. */
  private static final Duration SLACK = Duration.ofMinutes(2);

  /**
   * @param remark what should be known of how it was found; empty when nothing was doubtful
   */
  record Judged(Taken taken, Optional<Problem> remark) {}

  private record Dated(Instant at, ZoneOffset offset) {}

  private final IngestSettings settings;
  private final List<Dated> photos;

  /**
   * @param photos that were read beside the clips
   */
  ClipTimes(IngestSettings settings, List<Photo> photos) {
    this.settings = settings;
    this.photos =
        photos.stream()
            .map(Photo::taken)
            .filter(taken -> taken.local().isPresent() && taken.offset().isPresent())
            .map(
                taken ->
                    new Dated(
                        taken.local().get().toInstant(taken.offset().get()), taken.offset().get()))
            .toList();
  }

  Judged judge(ClipReader.Found found) {
    ClipDates dates = found.clip().dates();
    return text(dates.quickTime())
        .or(() -> text(dates.userData()))
        .map(taken -> new Judged(taken, Optional.empty()))
        .or(() -> header(found))
        .or(() -> name(found.file()).map(taken -> new Judged(taken, Optional.empty())))
        .or(() -> inZone(found))
        .orElseGet(() -> new Judged(fileTime(found), Optional.empty()));
  }

  /** A time without an offset is a wall clock's; a day alone is told worse than by the header. */
  private Optional<Taken> text(Optional<String> text) {
    return text.flatMap(WallTime::parse)
        .filter(WallTime::hourKnown)
        .filter(time -> isBelievable(time.local()))
        .map(time -> new Taken(Optional.of(time.local()), time.offset(), TakenFrom.CLIP));
  }

  private Optional<Judged> header(ClipReader.Found found) {
    Optional<Instant> created = found.clip().dates().created();
    if (created.isEmpty()) {
      return Optional.empty();
    }
    LocalDateTime utc = LocalDateTime.ofInstant(created.get(), ZoneOffset.UTC);
    Optional<LocalDateTime> named = wallClock(found.file());
    Optional<ZoneOffset> offset = nearest(created.get());
    Duration slack = SLACK.plus(found.clip().length());
    if (named.isPresent() && isNear(named.get(), utc, slack) && !offset.equals(UTC_KNOWN)) {
      return believable(utc, Optional.empty())
          .map(
              taken ->
                  new Judged(
                      taken,
                      remark(
                          found,
                          "is dated by its camera's own clock, as its name is; the standard asks for"
                              + " UTC there")));
    }
    return offset.flatMap(
        o ->
            believable(utc.plusSeconds(o.getTotalSeconds()), offset)
                .map(taken -> new Judged(taken, Optional.empty())));
  }

  private static final Optional<ZoneOffset> UTC_KNOWN = Optional.of(ZoneOffset.UTC);

  private static boolean isNear(LocalDateTime a, LocalDateTime b, Duration slack) {
    return Duration.between(a, b).abs().compareTo(slack) <= 0;
  }

  /** The local time in a name; names that begin with PXL_ tell UTC. */
  private static Optional<LocalDateTime> wallClock(PhotoFile file) {
    return file.lastName().startsWith("PXL_")
        ? Optional.empty()
        : NameDate.in(file.lastName()).filter(WallTime::hourKnown).map(WallTime::local);
  }

  private Optional<ZoneOffset> nearest(Instant at) {
    return photos.stream()
        .min(Comparator.comparing(photo -> Duration.between(photo.at(), at).abs()))
        .map(Dated::offset);
  }

  private Optional<Taken> name(PhotoFile file) {
    if (file.lastName().startsWith("PXL_")) {
      return Optional.empty();
    }
    return NameDate.in(file.lastName())
        .filter(time -> isBelievable(time.local()))
        .map(
            time ->
                new Taken(
                    Optional.of(time.local()), time.offset(), TakenFrom.NAME, time.hourKnown()));
  }

  private Optional<Judged> inZone(ClipReader.Found found) {
    return found
        .clip()
        .dates()
        .created()
        .flatMap(
            at -> {
              ZoneOffset offset = settings.fileTimes().getRules().getOffset(at);
              return believable(LocalDateTime.ofInstant(at, offset), Optional.of(offset));
            })
        .map(
            taken ->
                new Judged(
                    taken,
                    remark(
                        found,
                        "tells its time in UTC, and no photo tells its offset; it is read in this"
                            + " computer's zone ("
                            + taken.offset().orElseThrow()
                            + ")")));
  }

  private Taken fileTime(ClipReader.Found found) {
    return isBelievable(found.fileTime())
        ? Taken.at(found.fileTime(), TakenFrom.FILE_TIME)
        : Taken.UNKNOWN;
  }

  private Optional<Taken> believable(LocalDateTime local, Optional<ZoneOffset> offset) {
    return Optional.of(local)
        .filter(this::isBelievable)
        .map(time -> new Taken(Optional.of(time), offset, TakenFrom.CLIP));
  }

  private boolean isBelievable(LocalDateTime local) {
    LocalDate day = local.toLocalDate();
    return day.getYear() >= FIRST_YEAR && !day.isAfter(settings.today().plusDays(1));
  }

  private static Optional<Problem> remark(ClipReader.Found found, String text) {
    return Optional.of(new Problem(found.file(), Problem.Kind.CLIP_TIME, text));
  }
}
