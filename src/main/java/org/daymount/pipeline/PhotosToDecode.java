package org.daymount.pipeline;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.daymount.choices.Choices;
import org.daymount.day.Days;
import org.daymount.day.PhotoDay;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;

/**
 * The photos worth decoding: those of the month's days, and the undated, which may be copies. Of a
 * clip with many stills one of four neighbours, the one whose coded picture has most bytes: a
 * blurred one has fewer (common practice, no source). The others are looked at when a person
 * chooses them. Stills come after all photos.
 */
final class PhotosToDecode {
  /** Stills of a clip that are looked at, if it has so many. */
  private static final int LEAST_STILLS = 4;

  /** One of so many is looked at. */
  private static final int FEWER = 4;

  private PhotosToDecode() {}

  static List<Photo> of(Days days) {
    List<Photo> photos = new ArrayList<>();
    for (PhotoDay day : days.days()) {
      photos.addAll(withFewerStills(day.photos()));
    }
    photos.addAll(withFewerStills(days.undated()));
    photos.sort(Comparator.comparing(photo -> photo.file().frame().isPresent())); // stable
    return photos;
  }

  /**
   * Contents that a person's word brings in.
   *
   * @param days with the photos as the person dated them
   * @param chosen for some space
   */
  static Set<String> byPerson(Days days, Choices choices, Set<String> chosen) {
    Set<String> contents = new HashSet<>(chosen);
    of(days).stream()
        .map(Photo::sha256)
        .filter(sum -> choices.takenOf(sum).isPresent())
        .forEach(contents::add);
    return contents;
  }

  private static List<Photo> withFewerStills(List<Photo> photos) {
    Map<Path, List<Photo>> clips = new HashMap<>();
    for (Photo photo : photos) {
      if (photo.file().frame().isPresent()) {
        clips.computeIfAbsent(photo.file().path(), any -> new ArrayList<>()).add(photo);
      }
    }
    Set<PhotoFile> seen = new HashSet<>();
    for (List<Photo> stills : clips.values()) {
      int count = stills.size();
      int most = Math.min(count, Math.max(LEAST_STILLS, (count + FEWER - 1) / FEWER));
      for (int i = 0; i < most; i++) {
        seen.add(fullest(stills.subList(i * count / most, (i + 1) * count / most)).file());
      }
    }
    return photos.stream()
        .filter(photo -> photo.file().frame().isEmpty() || seen.contains(photo.file()))
        .toList();
  }

  /** The first of those with most bytes. */
  private static Photo fullest(List<Photo> stills) {
    Photo fullest = stills.get(0);
    for (Photo still : stills) {
      fullest = still.bytes() > fullest.bytes() ? still : fullest;
    }
    return fullest;
  }
}
