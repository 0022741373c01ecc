package org.daymount.ingest;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.daymount.clip.ClipDates;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.problem.Problem;

/**
 * When a clip was taken, by the first of these that holds a date: a person's table; QuickTime's
 * creation date, the user data's, both with their offset; the movie header, which is UTC (ISO/IEC
 * 14496-12, 8.2.2), with the offset that the clip's name shows, else of the photo nearest in time,
 * or as local time where {@link LocalHeaders} knows that its camera writes that; the name; the
 * movie header in the zone of --zone or this computer's; the file's own time.
 */
final class ClipTimes {
  /**
   * @param remark what should be known of how it was found; empty when nothing was doubtful
   */
  record Judged(Taken taken, Optional<Problem> remark) {}

  private final IngestSettings settings;
  private final KnownOffsets offsets;
  private final LocalHeaders locals;

  /**
   * @param photos that were read beside the clips
   * @param clips all of them
   */
  ClipTimes(IngestSettings settings, List<Photo> photos, List<ClipReader.Found> clips) {
    this.settings = settings;
    this.offsets = KnownOffsets.of(photos);
    this.locals = new LocalHeaders(photos, clips, offsets, settings.zone());
  }

  Judged judge(ClipReader.Found found) {
    ClipDates dates = found.clip().dates();
    return told(found.file())
        .or(() -> text(dates.quickTime()))
        .or(() -> text(dates.userData()))
        .map(taken -> new Judged(taken, Optional.empty()))
        .or(() -> header(found))
        .or(() -> name(found.file()).map(taken -> new Judged(taken, Optional.empty())))
        .or(() -> inZone(found))
        .orElseGet(() -> new Judged(fileTime(found), Optional.empty()));
  }

  /** What a person's table of dates says of the clip. */
  private Optional<Taken> told(PhotoFile file) {
    return settings.dates().of(file).flatMap(time -> settings.believed(time, TakenFrom.PERSON));
  }

  /** A time without an offset is a wall clock's; a day alone is told worse than by the header. */
  private Optional<Taken> text(Optional<String> text) {
    return text.flatMap(WallTime::parse)
        .filter(WallTime::hourKnown)
        .flatMap(time -> settings.believed(time, TakenFrom.CLIP));
  }

  private Optional<Judged> header(ClipReader.Found found) {
    Optional<Instant> created = created(found);
    if (created.isEmpty()) {
      return Optional.empty();
    }
    LocalDateTime utc = LocalDateTime.ofInstant(created.get(), ZoneOffset.UTC);
    Optional<String> why = locals.why(found);
    if (why.isPresent()) {
      return believable(utc, Optional.empty())
          .map(taken -> new Judged(taken, remark(found, why.get())));
    }
    Optional<ZoneOffset> offset =
        LocalHeaders.shownByName(found).or(() -> offsets.nearest(created.get()));
    return offset.flatMap(
        o ->
            believable(utc.plusSeconds(o.getTotalSeconds()), offset)
                .map(taken -> new Judged(taken, Optional.empty())));
  }

  /** By the movie header, else by a name that tells UTC. */
  private static Optional<Instant> created(ClipReader.Found found) {
    return found
        .clip()
        .dates()
        .created()
        .or(
            () ->
                NameDate.in(found.file().lastName())
                    .filter(NameDate.Found::utc)
                    .map(name -> name.time().local().toInstant(ZoneOffset.UTC)));
  }

  private Optional<Taken> name(PhotoFile file) {
    return NameDate.in(file.lastName())
        .filter(found -> !found.utc())
        .flatMap(found -> settings.believed(found.time(), TakenFrom.NAME));
  }

  private Optional<Judged> inZone(ClipReader.Found found) {
    return created(found)
        .flatMap(
            at -> {
              ZoneOffset offset = settings.zone().getRules().getOffset(at);
              return believable(LocalDateTime.ofInstant(at, offset), Optional.of(offset));
            })
        .map(
            taken ->
                new Judged(
                    taken,
                    remark(
                        found,
                        "tells its time in UTC, and no photo tells its offset; it is read in this"
                            + " computer's zone, or that of --zone ("
                            + taken.offset().orElseThrow()
                            + ")")));
  }

  private Taken fileTime(ClipReader.Found found) {
    return settings
        .believed(WallTime.at(found.fileTime()), TakenFrom.FILE_TIME)
        .orElse(Taken.UNKNOWN);
  }

  private Optional<Taken> believable(LocalDateTime local, Optional<ZoneOffset> offset) {
    return settings.believed(new WallTime(local, true, offset), TakenFrom.CLIP);
  }

  private static Optional<Problem> remark(ClipReader.Found found, String text) {
    return Optional.of(new Problem(found.file(), Problem.Kind.CLIP_TIME, text));
  }
}
