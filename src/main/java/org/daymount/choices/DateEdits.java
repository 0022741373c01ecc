package org.daymount.choices;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;

/** When a person says that a picture was taken, for all pictures of its file. */
public final class DateEdits {
  private DateEdits() {}

  /**
   * Of a still the whole clip is dated, as it follows from the still's place in it.
   *
   * @param ofSameFile the picture meant, and a clip's other stills
   * @param said with local time; empty: what the pictures themselves say holds again
   */
  public static Choices given(
      Choices choices, Photo meant, List<Photo> ofSameFile, Optional<Taken> said) {
    Choices changed = choices;
    for (Photo photo : ofSameFile) {
      Optional<LocalDateTime> at =
          said.map(taken -> taken.local().orElseThrow())
              .map(local -> said.get().hourKnown() ? local.plus(between(meant, photo)) : local);
      changed =
          new PhotoEdits(changed, PhotoKey.of(photo))
              .given(
                  at.map(LocalDateTime::toLocalDate),
                  at.map(LocalDateTime::toLocalTime).filter(time -> said.get().hourKnown()));
    }
    return changed;
  }

  /** From one still of a clip to another. */
  private static Duration between(Photo one, Photo other) {
    return one.file()
        .frame()
        .flatMap(from -> other.file().frame().map(to -> to.at().minus(from.at())))
        .orElse(Duration.ZERO);
  }
}
