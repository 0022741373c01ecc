package org.daymount.choices;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.Problem;

/** A person's word on single photos: use it, or leave it out. It goes before the tool's reasons. */
public final class UserOverrides {
  /** Reasons for not proposing a picture; none against printing it. */
  private static final Set<Problem.Kind> ONLY_A_REASON =
      EnumSet.of(
          Problem.Kind.NO_DATE,
          Problem.Kind.SCREENSHOT,
          Problem.Kind.COPY,
          Problem.Kind.SMALLER_COPY,
          Problem.Kind.OTHER_MONTH,
          Problem.Kind.OTHER_DAYS,
          Problem.Kind.NOT_WANTED);

  private static final Set<Problem.Kind> LIFTED =
      EnumSet.of(Problem.Kind.SCREENSHOT, Problem.Kind.SMALLER_COPY);

  private UserOverrides() {}

  /** Whether a picture that can be decoded takes part in the picking. */
  public static boolean takesPart(Photo photo, boolean isCopy, Choices choices) {
    return choices.used(photo.sha256()).orElse(!isCopy && photo.screenshot().isEmpty());
  }

  /** What is said of each photo once the person was heard. */
  public static Map<PhotoFile, Problem> on(
      Map<PhotoFile, Problem> problems,
      List<Photo> photos,
      Choices choices,
      Set<PhotoFile> printed) {
    Map<PhotoFile, Problem> changed = new TreeMap<>(problems);
    for (Photo photo : photos) {
      PhotoFile file = photo.file();
      Optional<Problem.Kind> kind = Optional.ofNullable(changed.get(file)).map(Problem::kind);
      Optional<Boolean> word = choices.used(photo.sha256());
      if (printed.contains(file)) {
        kind.filter(ONLY_A_REASON::contains).ifPresent(any -> changed.remove(file));
      } else if (word.equals(Optional.of(true))) {
        kind.filter(LIFTED::contains).ifPresent(any -> changed.remove(file));
      } else if (word.equals(Optional.of(false)) && kind.filter(k -> !soft(k)).isEmpty()) {
        changed.put(file, new Problem(file, Problem.Kind.NOT_WANTED, "you left it out"));
      }
    }
    return changed;
  }

  private static boolean soft(Problem.Kind kind) {
    return ONLY_A_REASON.contains(kind)
        || kind == Problem.Kind.DAMAGED
        || kind == Problem.Kind.SIDECAR_IGNORED
        || kind == Problem.Kind.COLOUR_PROFILE_IGNORED;
  }
}
