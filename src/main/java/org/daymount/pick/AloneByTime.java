package org.daymount.pick;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.daymount.day.Days;
import org.daymount.day.PhotoDay;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;

/**
 * Photos that will probably be looked at closely, each alone, told before any of them is read:
 * those of a day of so few moments that all are promising, of which no other was taken at about the
 * same time. A guess: what they show may still make them one of several.
 */
public final class AloneByTime {
  private static final Comparator<Photo> BY_TIME =
      Comparator.comparing(AloneByTime::time).thenComparing(Photo::file);

  private AloneByTime() {}

  /**
   * @param takesPart false for those that are not looked at
   */
  public static Set<PhotoFile> of(Days days, Predicate<Photo> takesPart) {
    Set<PhotoFile> alone = new HashSet<>();
    for (PhotoDay day : days.days()) {
      List<Photo> photos = day.photos().stream().filter(takesPart).sorted(BY_TIME).toList();
      if (moments(photos) <= Bursts.BURSTS_A_DAY) {
        for (int i = 0; i < photos.size(); i++) {
          Photo photo = photos.get(i);
          boolean isFrame = photo.file().frame().isPresent() || photo.burst().isPresent();
          if (!isFrame && !goesOn(photos, i) && !goesOn(photos, i + 1)) {
            alone.add(photo.file());
          }
        }
      }
    }
    return alone;
  }

  private static int moments(List<Photo> photos) {
    int moments = 0;
    for (int i = 0; i < photos.size(); i++) {
      moments += goesOn(photos, i) ? 0 : 1;
    }
    return moments;
  }

  /** Whether a photo was taken at about the same time as the one before. */
  private static boolean goesOn(List<Photo> photos, int at) {
    if (at == 0 || at == photos.size()) {
      return false;
    }
    Duration between = Duration.between(time(photos.get(at - 1)), time(photos.get(at)));
    return between.compareTo(BurstFinder.AT_ONCE) <= 0;
  }

  private static LocalDateTime time(Photo photo) {
    Optional<LocalDateTime> time = photo.taken().local();
    return time.orElse(LocalDateTime.MAX);
  }
}
