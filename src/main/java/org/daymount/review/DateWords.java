package org.daymount.review;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.daymount.photo.Taken;

/**
 * When a photo was taken, for the page.
 *
 * @param when in words; not there when the day is unknown or a guess
 * @param day what it is or may be
 * @param clock hour and minute, where they are known
 * @param said what the person said in the review, in words
 * @param own what the photo itself says, or the table of dates, as a sentence
 * @param camera whether its camera wrote that
 */
record DateWords(
    Optional<String> when,
    Optional<LocalDate> day,
    Optional<String> clock,
    Optional<String> said,
    String own,
    boolean camera) {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  /**
   * @param found the photo's own date
   * @param said by the person in the review
   */
  static DateWords of(Taken found, Optional<Taken> said) {
    Taken now = said.orElse(found);
    return new DateWords(
        Optional.of(now).filter(taken -> taken.from().isTrusted()).map(DateWords::words),
        now.local().map(LocalDateTime::toLocalDate),
        now.local().filter(any -> now.hourKnown()).map(TIME::format),
        said.map(DateWords::words),
        own(found),
        found.from().isCameras());
  }

  /** Hours and minutes, where the hour is known and the day is no guess. */
  static Optional<String> time(Taken taken) {
    return taken
        .local()
        .filter(local -> taken.hourKnown() && taken.from().isTrusted())
        .map(TIME::format);
  }

  private static String own(Taken taken) {
    String who =
        switch (taken.from()) {
          case PERSON -> "your table of dates";
          case ORIGINAL, DIGITIZED -> "its camera";
          case XMP, PNG, GPS -> "the picture itself";
          case CLIP -> "the clip itself";
          case SIDECAR -> "the XMP file beside it";
          case NAME -> "its name";
          case FILE_TIME -> "only the file’s own time";
          case NONE -> "nothing";
        };
    return taken.local().isEmpty()
        ? who + " says when it was taken"
        : who + " says " + words(taken);
  }

  private static String words(Taken taken) {
    return DAY.format(taken.local().orElseThrow())
        + (taken.hourKnown() ? ", " + TIME.format(taken.local().get()) : "");
  }
}
