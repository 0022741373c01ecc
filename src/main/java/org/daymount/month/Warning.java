package org.daymount.month;

import java.time.LocalDate;
import java.util.Optional;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.Problem;

/**
 * Something a person should know about a file, a day or the whole month.
 *
 * @param code one or two words with a hyphen, stable: {@code cut-off}, {@code missing-picture}
 */
public record Warning(String code, Optional<PhotoFile> file, Optional<LocalDate> day, String text) {

  /** About one file, in the problem's own words. */
  /** Of the month as a whole. */
  public static Warning general(String code, String text) {
    return new Warning(code, Optional.empty(), Optional.empty(), text);
  }

  public static Warning of(Problem problem) {
    return new Warning(
        problem.kind().code(), Optional.of(problem.file()), Optional.empty(), problem.text());
  }
}
