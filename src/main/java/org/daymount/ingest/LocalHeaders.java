package org.daymount.ingest;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.clip.Clip;
import org.daymount.photo.Photo;

/**
 * Cameras that write their own clock's time into the movie header, where the standard asks for UTC.
 * One is known by the local time in the clip's name; by the pictures that are numbered before and
 * after it on the same card; or by other clips of the same camera that were known by their names.
 */
final class LocalHeaders {
  /** A header may be written when recording ends, some seconds later than the name says. */
  private static final Duration SLACK = Duration.ofMinutes(2);

  /** Offsets are whole quarters of an hour, from -12 to +14 hours (common practice, no source). */
  private static final long QUARTER = 15 * 60;

  private static final int LEAST_OFFSET = -12 * 3600;
  private static final int MOST_OFFSET = 14 * 3600;

  private final CardNumbers numbers;
  private final KnownOffsets offsets;
  private final ZoneId zone;

  /** By the camera; false as well where its clips disagree. */
  private final Map<String, Boolean> cameras = new HashMap<>();

  LocalHeaders(
      List<Photo> photos, List<ClipReader.Found> clips, KnownOffsets offsets, ZoneId zone) {
    this.numbers = CardNumbers.of(photos);
    this.offsets = offsets;
    this.zone = zone;
    for (ClipReader.Found clip : clips) {
      Optional<String> camera = clip.clip().camera();
      boolean local = isToldByName(clip);
      if (camera.isPresent() && (local || shownByName(clip).isPresent())) {
        cameras.merge(camera.get(), local, Boolean::logicalAnd);
      }
    }
  }

  /** Why the header is read as a local time, as the end of a sentence about the clip. */
  Optional<String> why(ClipReader.Found found) {
    if (found.clip().dates().created().isEmpty()) {
      return Optional.empty();
    }
    if (wallClock(found).isPresent()) {
      return isToldByName(found)
          ? Optional.of(
              "is dated by its camera's own clock, as its name is; the standard asks for UTC there")
          : Optional.empty();
    }
    return byNumbers(found).or(() -> byCamera(found));
  }

  private Optional<String> byNumbers(ClipReader.Found found) {
    LocalDateTime local = utc(found);
    Optional<CardNumbers.Between> between = numbers.around(found.file());
    return between
        .filter(b -> b.holds(local, SLACK) && !b.holds(byStandard(found), SLACK))
        .map(
            b ->
                "is dated by its camera's own clock, for so it was taken between "
                    + b.before()
                    + " and "
                    + b.after()
                    + "; the standard asks for UTC there");
  }

  private Optional<String> byCamera(ClipReader.Found found) {
    if (numbers.around(found.file()).filter(b -> b.holds(byStandard(found), SLACK)).isPresent()) {
      return Optional.empty();
    }
    return found
        .clip()
        .camera()
        .filter(camera -> cameras.getOrDefault(camera, false))
        .map(
            camera ->
                "is dated by its camera's own clock, as other clips of the same camera ("
                    + camera
                    + ") are by their names; the standard asks for UTC there");
  }

  private LocalDateTime byStandard(ClipReader.Found found) {
    Instant created = found.clip().dates().created().orElseThrow();
    ZoneOffset offset =
        offsets.nearest(created).orElseGet(() -> zone.getRules().getOffset(created));
    return LocalDateTime.ofInstant(created, offset);
  }

  private static LocalDateTime utc(ClipReader.Found found) {
    return LocalDateTime.ofInstant(found.clip().dates().created().orElseThrow(), ZoneOffset.UTC);
  }

  /** Whether the name's local time is the header's, where that is not the time in UTC as well. */
  private boolean isToldByName(ClipReader.Found found) {
    Clip clip = found.clip();
    Optional<LocalDateTime> named = wallClock(found);
    return named.isPresent()
        && clip.dates().created().isPresent()
        && Duration.between(named.get(), utc(found)).abs().compareTo(SLACK.plus(clip.length())) <= 0
        && !offsets.nearest(clip.dates().created().get()).equals(Optional.of(ZoneOffset.UTC));
  }

  /**
   * The offset between a local time in the clip's name and its header, where that can be one. The
   * header tells when recording began or ended; none where the two are the same time.
   */
  static Optional<ZoneOffset> shownByName(ClipReader.Found found) {
    Optional<LocalDateTime> named = wallClock(found);
    if (named.isEmpty() || found.clip().dates().created().isEmpty()) {
      return Optional.empty();
    }
    Duration began = Duration.between(utc(found), named.get());
    return offset(began).or(() -> offset(began.plus(found.clip().length())));
  }

  private static Optional<ZoneOffset> offset(Duration difference) {
    long seconds = Math.round(difference.toSeconds() / (double) QUARTER) * QUARTER;
    boolean close = difference.minusSeconds(seconds).abs().compareTo(SLACK) <= 0;
    return close && seconds != 0 && seconds >= LEAST_OFFSET && seconds <= MOST_OFFSET
        ? Optional.of(ZoneOffset.ofTotalSeconds((int) seconds))
        : Optional.empty();
  }

  /** The local time in a name; some names tell UTC. */
  private static Optional<LocalDateTime> wallClock(ClipReader.Found found) {
    return NameDate.in(found.file().lastName())
        .filter(name -> !name.utc() && name.time().hourKnown())
        .map(name -> name.time().local());
  }
}
