package org.daymount.ingest;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.TakenFrom;

/**
 * The numbers that cameras give their files: four signs and a number of four digits, counted on
 * through the pictures and clips of a folder (CIPA DC-009, DCF file names; from memory).
 */
final class CardNumbers {
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_]{4}(\\d{4})");

  /** Neighbours further off than this may be of another day, or another camera. */
  private static final int NEAR = 20;

  private final Map<Path, TreeMap<Integer, Photo>> folders = new HashMap<>();

  private CardNumbers() {}

  /** A clip's neighbours: photos of the camera's own time. */
  record Between(String before, LocalDateTime from, String after, LocalDateTime to) {
    boolean holds(LocalDateTime time, Duration slack) {
      return !time.isBefore(from.minus(slack)) && !time.isAfter(to.plus(slack));
    }
  }

  /** A folder in which numbers do not follow the time, as of two cameras, is left out. */
  static CardNumbers of(List<Photo> photos) {
    CardNumbers numbers = new CardNumbers();
    Set<Path> mixed = new HashSet<>();
    for (Photo photo : photos) {
      boolean camerasTime =
          photo.taken().from() == TakenFrom.ORIGINAL || photo.taken().from() == TakenFrom.DIGITIZED;
      Optional<Integer> number = number(photo.file());
      if (camerasTime && number.isPresent()) {
        Path folder = photo.file().path().resolveSibling("");
        Photo same =
            numbers
                .folders
                .computeIfAbsent(folder, any -> new TreeMap<>())
                .put(number.get(), photo);
        if (same != null && !time(same).equals(time(photo))) {
          mixed.add(folder);
        }
      }
    }
    numbers.folders.forEach(
        (folder, byNumber) -> {
          LocalDateTime last = LocalDateTime.MIN;
          for (Photo photo : byNumber.values()) {
            if (time(photo).isBefore(last)) {
              mixed.add(folder);
            }
            last = time(photo);
          }
        });
    numbers.folders.keySet().removeAll(mixed);
    return numbers;
  }

  /** The nearest numbers on both sides; empty where one side has none near. */
  Optional<Between> around(PhotoFile clip) {
    TreeMap<Integer, Photo> folder = folders.get(clip.path().resolveSibling(""));
    Optional<Integer> number = number(clip);
    if (folder == null || number.isEmpty()) {
      return Optional.empty();
    }
    Map.Entry<Integer, Photo> before = folder.lowerEntry(number.get());
    Map.Entry<Integer, Photo> after = folder.higherEntry(number.get());
    if (before == null
        || after == null
        || after.getKey() - number.get() > NEAR
        || number.get() - before.getKey() > NEAR) {
      return Optional.empty();
    }
    return Optional.of(
        new Between(
            before.getValue().file().lastName(),
            time(before.getValue()),
            after.getValue().file().lastName(),
            time(after.getValue())));
  }

  private static LocalDateTime time(Photo photo) {
    return photo.taken().local().orElseThrow();
  }

  private static Optional<Integer> number(PhotoFile file) {
    Matcher name = NAME.matcher(FileKind.base(file.lastName()));
    return name.matches() ? Optional.of(Integer.parseInt(name.group(1))) : Optional.empty();
  }
}
