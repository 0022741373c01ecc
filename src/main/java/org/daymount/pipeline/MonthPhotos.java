package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.Optional;
import org.daymount.day.DaySettings;
import org.daymount.month.MonthPhoto;
import org.daymount.photo.Photo;
import org.daymount.problem.Problem;

/** What the entries of all commands have in common. */
final class MonthPhotos {
  private MonthPhotos() {}

  /** The day a photo's own time tells; empty when it has none that can be trusted. */
  static Optional<LocalDate> day(Photo photo, DaySettings settings) {
    return photo
        .taken()
        .local()
        .filter(local -> photo.taken().from().isTrusted())
        .map(local -> settings.dayStarts().dayOf(photo.taken()));
  }

  /** A file of which nothing but the name is known. */
  static MonthPhoto unreadable(Problem problem) {
    return new MonthPhoto(
        problem.file(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.of(problem.text()));
  }
}
