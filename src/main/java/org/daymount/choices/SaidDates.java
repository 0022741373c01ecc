package org.daymount.choices;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.problem.Warning;

/** The dates that a person gave photos in the review, held against what can be and what was. */
final class SaidDates {
  private static final int MOST_NAMED = 5;

  private final Predicate<LocalDate> believable;
  private final List<Warning> remarks;

  /**
   * @param remarks takes what is found
   */
  SaidDates(Predicate<LocalDate> believable, List<Warning> remarks) {
    this.believable = believable;
    this.remarks = remarks;
  }

  /** The same without days on which no photo can have been taken. */
  Map<String, PhotoChoice> followed(Map<String, PhotoChoice> said) {
    Map<String, PhotoChoice> followed = new TreeMap<>(said);
    followed.replaceAll(
        (sum, choice) -> {
          if (choice.day().filter(day -> !believable.test(day)).isEmpty()) {
            return choice;
          }
          remarks.add(
              Warning.general(
                  Warning.Kind.DATES,
                  "choices.json says "
                      + choice.day().get()
                      + " of "
                      + choice.photo().file()
                      + ", which cannot be; it is not followed, put it right in the review"));
          return choice.withTaken(Optional.empty(), Optional.empty());
        });
    return followed;
  }

  /** One sentence about the files whose cameras, or whose line in the table, say another day. */
  void remarkOnOthers(Map<String, PhotoChoice> said, Collection<Photo> photos) {
    Set<Path> seen = new HashSet<>();
    List<String> others =
        photos.stream()
            .sorted((one, two) -> one.file().compareTo(two.file()))
            .filter(photo -> isSaidElsewhere(photo, said) && seen.add(photo.file().path()))
            .map(
                photo ->
                    photo.file().lastName()
                        + " ("
                        + said.get(photo.sha256()).day().get()
                        + " for "
                        + day(photo.taken())
                        + ")")
            .toList();
    if (!others.isEmpty()) {
      remarks.add(
          Warning.general(
              Warning.Kind.DAY_KNOWN,
              "you gave another day than the camera or your table of dates, and it is used: "
                  + String.join(", ", others.subList(0, Math.min(MOST_NAMED, others.size())))
                  + (others.size() > MOST_NAMED
                      ? " and " + (others.size() - MOST_NAMED) + " more"
                      : "")));
    }
  }

  private static boolean isSaidElsewhere(Photo photo, Map<String, PhotoChoice> said) {
    TakenFrom from = photo.taken().from();
    return (from.isCameras() || from == TakenFrom.PERSON)
        && Optional.ofNullable(said.get(photo.sha256()))
            .flatMap(PhotoChoice::day)
            .filter(day -> !day.equals(day(photo.taken())))
            .isPresent();
  }

  private static LocalDate day(Taken taken) {
    return taken.local().orElseThrow().toLocalDate();
  }
}
