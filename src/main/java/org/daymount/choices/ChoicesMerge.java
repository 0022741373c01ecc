package org.daymount.choices;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.daymount.photo.Photo;
import org.daymount.problem.Warning;

/**
 * Brings choices up to the photos that are there now. A renamed or moved photo is found by its
 * content. A photo edited in place (same name, other content) is still the one chosen, but its crop
 * is dropped. A photo that is gone keeps its place in the choices, and its space is missing.
 *
 * @param choices for use in this run, every photo by its present content and file; not for saving,
 *     since a photo that is away today may be back tomorrow
 * @param missing contents chosen for a space that no file has now
 */
public record ChoicesMerge(Choices choices, Set<String> missing, List<Warning> remarks) {
  public ChoicesMerge {
    missing = Set.copyOf(missing);
    remarks = List.copyOf(remarks);
  }

  /**
   * @param believable whether a photo may have been taken that day; what else is said of its date
   *     is not followed, and named
   */
  public static ChoicesMerge of(
      Choices choices, Collection<Photo> photos, Predicate<LocalDate> believable) {
    PhotoFinder finder = new PhotoFinder(photos);
    List<Warning> remarks = new ArrayList<>();
    Set<String> missing = new TreeSet<>();
    Map<LocalDate, DayChoice> days = new TreeMap<>();
    choices
        .days()
        .forEach((date, day) -> days.put(date, merge(date, day, finder, missing, remarks)));
    SaidDates said = new SaidDates(believable, remarks);
    Map<String, PhotoChoice> merged = said.followed(merge(choices.photos(), finder, remarks));
    said.remarkOnOthers(merged, photos);
    return new ChoicesMerge(new Choices(days, merged, choices.other()), missing, remarks);
  }

  private static DayChoice merge(
      LocalDate date,
      DayChoice day,
      PhotoFinder finder,
      Set<String> missing,
      List<Warning> remarks) {
    Map<Integer, SpaceChoice> spaces = new HashMap<>();
    day.spaces()
        .forEach(
            (place, space) -> {
              Optional<PhotoKey> key = space.photo();
              if (key.isEmpty()) {
                spaces.put(place, space);
                return;
              }
              PhotoFinder.Found found = finder.find(key.get());
              if (found.match() == PhotoFinder.Match.MISSING) {
                missing.add(key.get().sha256());
              }
              remark(date, key.get(), found).ifPresent(remarks::add);
              cropRemark(date, place, space, found).ifPresent(remarks::add);
              spaces.put(place, onto(space, found));
            });
    return day.withSpaces(spaces);
  }

  private static SpaceChoice onto(SpaceChoice space, PhotoFinder.Found found) {
    if (found.photo().isEmpty()) {
      return space;
    }
    String sum = found.photo().get().sha256();
    return space
        .withPhoto(Optional.of(PhotoKey.of(found.photo().get())))
        .withCrop(
            space.crop().filter(crop -> crop.sha256().equals(sum) && fits(crop, found.photo())));
  }

  private static boolean fits(CropChoice crop, Optional<Photo> photo) {
    return photo.filter(p -> p.size().whole().contains(crop.window())).isPresent();
  }

  /** Why a crop is dropped, where the picture itself is the one that was chosen. */
  private static Optional<Warning> cropRemark(
      LocalDate date, int place, SpaceChoice space, PhotoFinder.Found found) {
    if (space.crop().isEmpty()
        || found.match() == PhotoFinder.Match.CHANGED
        || found.match() == PhotoFinder.Match.MISSING) {
      return Optional.empty();
    }
    CropChoice crop = space.crop().get();
    Photo photo = found.photo().orElseThrow();
    String of = "the crop of " + photo.file() + " in space " + (place + 1);
    if (!crop.sha256().equals(photo.sha256())) {
      return Optional.of(
          Warning.on(
              date,
              Warning.Kind.CROP_DROPPED,
              of
                  + " was drawn on another picture, so it is not used; draw it again in the review"));
    }
    return fits(crop, found.photo())
        ? Optional.empty()
        : Optional.of(
            Warning.on(
                date,
                Warning.Kind.CROP_DROPPED,
                of
                    + " reaches beyond the picture ("
                    + photo.size()
                    + "), so it is not used; draw it again in the review"));
  }

  private static Optional<Warning> remark(LocalDate date, PhotoKey key, PhotoFinder.Found found) {
    return switch (found.match()) {
      case SAME -> Optional.empty();
      case RENAMED ->
          Optional.of(
              Warning.on(
                  date,
                  Warning.Kind.PHOTO_RENAMED,
                  "the chosen " + key.file() + " is now " + found.photo().get().file()));
      case CHANGED ->
          Optional.of(
              Warning.on(
                  date,
                  Warning.Kind.PHOTO_CHANGED,
                  "the chosen "
                      + key.file()
                      + " was changed since; it is used as it is now, and a crop drawn on it is"
                      + " dropped. Look at it in the review"));
      case MISSING ->
          Optional.of(
              Warning.on(
                  date,
                  Warning.Kind.PHOTO_MISSING,
                  "the chosen "
                      + key.file()
                      + " is not there any more; put it back, or choose another in the review"));
    };
  }

  private static Map<String, PhotoChoice> merge(
      Map<String, PhotoChoice> chosen, PhotoFinder finder, List<Warning> remarks) {
    Map<String, PhotoChoice> merged = new TreeMap<>();
    // What was said of a content goes before what was said of a file that has it now.
    chosen.values().stream()
        .sorted((one, two) -> one.photo().compareTo(two.photo()))
        .forEach(
            choice -> {
              PhotoFinder.Found found = finder.find(choice.photo());
              if (found.match() != PhotoFinder.Match.CHANGED) {
                PhotoKey now = found.photo().map(PhotoKey::of).orElse(choice.photo());
                photoRemark(choice, found).ifPresent(remarks::add);
                merged.put(now.sha256(), as(choice, now));
              }
            });
    chosen.values().stream()
        .sorted((one, two) -> one.photo().compareTo(two.photo()))
        .forEach(
            choice -> {
              PhotoFinder.Found found = finder.find(choice.photo());
              if (found.match() == PhotoFinder.Match.CHANGED) {
                PhotoKey now = PhotoKey.of(found.photo().get());
                if (merged.putIfAbsent(now.sha256(), as(choice, now)) == null) {
                  remarks.add(
                      Warning.general(
                          Warning.Kind.PHOTO_CHANGED,
                          now.file()
                              + " was changed since the review spoke of it; what was said still"
                              + " holds"));
                }
              }
            });
    return merged;
  }

  private static Optional<Warning> photoRemark(PhotoChoice choice, PhotoFinder.Found found) {
    return found.photo().isPresent()
        ? Optional.empty()
        : Optional.of(
            Warning.general(
                Warning.Kind.PHOTO_MISSING,
                choice.photo().file()
                    + ", of which choices.json speaks, is not among the photos; what was said of it"
                    + " is kept"));
  }

  private static PhotoChoice as(PhotoChoice choice, PhotoKey now) {
    return new PhotoChoice(now, choice.used(), choice.day(), choice.time(), choice.other());
  }
}
