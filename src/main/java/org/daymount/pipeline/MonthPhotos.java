package org.daymount.pipeline;

import java.util.Optional;
import org.daymount.month.MonthPhoto;
import org.daymount.problem.Problem;

/** Entries for files of which nothing but the name is known. */
final class MonthPhotos {
  private MonthPhotos() {}

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
