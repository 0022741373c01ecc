package org.daymount.problem;

import java.time.LocalDate;
import java.util.Optional;
import org.daymount.photo.PhotoFile;

/**
 * Something a person should know about a file, a day or the whole month.
 *
 * @param text the fact and the next step
 */
public record Warning(
    WarningKind kind, Optional<PhotoFile> file, Optional<LocalDate> day, String text) {

  /** Of days and their pages, or of the month as a whole; of files see {@link Problem.Kind}. */
  public enum Kind implements WarningKind {
    ALBUM,
    BASE,
    CHOICES_MONTH,
    CLOCK,
    CROP_ALONE,
    CROP_DROPPED,
    DATES,
    DAY_KNOWN,
    MISSING_PICTURE,
    NO_DETECTORS,
    NO_SUCH_DIRECTION,
    NO_SUCH_SPACE,
    NOTE,
    NOTE_ENDS,
    NOTE_MONTH,
    OUTSIDE_DAYS,
    PACKING,
    PAGE,
    PAGE_CONFLICT,
    PAGE_FULL,
    PHOTO_CHANGED,
    PHOTO_MISSING,
    PHOTO_RENAMED,
    REVEAL,
    SMALL_PRINT,
    STORY,
    STORY_CONFLICT,
    SWAP,
    UNKNOWN_CHOICE
  }

  /** Of the month as a whole. */
  public static Warning general(Kind kind, String text) {
    return new Warning(kind, Optional.empty(), Optional.empty(), text);
  }

  public static Warning on(LocalDate day, Kind kind, String text) {
    return new Warning(kind, Optional.empty(), Optional.of(day), text);
  }

  /** About one file, in the problem's own words. */
  public static Warning of(Problem problem) {
    return new Warning(
        problem.kind(), Optional.of(problem.file()), Optional.empty(), problem.text());
  }
}
