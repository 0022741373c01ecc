package org.daymount.pipeline;

import java.nio.file.Path;
import java.util.ArrayList;
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
 * clip with many stills every second one, spread evenly; the others are looked at when a person
 * chooses them.
 */
final class Wanted {
  /** Stills of a clip that are looked at, if it has so many. */
  private static final int LEAST_STILLS = 6;

  private Wanted() {}

  static List<Photo> of(Days days) {
    List<Photo> photos = new ArrayList<>();
    for (PhotoDay day : days.days()) {
      photos.addAll(withFewerStills(day.photos()));
    }
    photos.addAll(withFewerStills(days.undated()));
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
      int most = Math.max(LEAST_STILLS, (stills.size() + 1) / 2);
      for (int i = 0; i < Math.min(most, stills.size()); i++) {
        int at = stills.size() <= most ? i : i * (stills.size() - 1) / (most - 1);
        seen.add(stills.get(at).file());
      }
    }
    return photos.stream()
        .filter(photo -> photo.file().frame().isEmpty() || seen.contains(photo.file()))
        .toList();
  }
}
