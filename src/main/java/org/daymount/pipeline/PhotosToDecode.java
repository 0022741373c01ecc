package org.daymount.pipeline;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.daymount.choices.Choices;
import org.daymount.day.Days;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;

/**
 * The photos worth decoding: those of the month's days, and the undated, which may be copies. Of
 * clips all stills, as long as the clips take at most a fifth of the photos' time; where there are
 * more, one of two, three or four neighbours, the one whose coded picture has most bytes: a blurred
 * one has fewer (common practice, no source). The others are looked at when a person chooses them.
 * Stills come after all photos.
 */
final class PhotosToDecode {
  /** Stills of a clip that are looked at, if it has so many. */
  private static final int LEAST_STILLS = 4;

  /** However many clips there are, one of so many neighbours is looked at. */
  private static final int FEWEST = 4;

  private static final double TIME_FOR_CLIPS = 0.2; // of the photos'

  /** What a clip takes, its close look above all, in the time of a photo (docs/clips.md). */
  private static final double TIME_OF_A_CLIP = 0.85;

  /** What one of its stills takes, in the time of a photo. */
  private static final double TIME_OF_A_STILL = 0.12;

  private PhotosToDecode() {}

  static List<Photo> of(Days days) {
    List<Photo> all = new ArrayList<>();
    days.days().forEach(day -> all.addAll(day.photos()));
    all.addAll(days.undated());
    all.sort(Comparator.comparing(photo -> photo.file().frame().isPresent())); // stable
    Set<PhotoFile> seen = stillsSeen(all);
    return all.stream()
        .filter(photo -> photo.file().frame().isEmpty() || seen.contains(photo.file()))
        .toList();
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

  private static Set<PhotoFile> stillsSeen(List<Photo> photos) {
    Map<Path, List<Photo>> clips = new HashMap<>();
    int others = 0;
    for (Photo photo : photos) {
      if (photo.file().frame().isPresent()) {
        clips.computeIfAbsent(photo.file().path(), any -> new ArrayList<>()).add(photo);
      } else {
        others++;
      }
    }
    int fewer = oneOf(clips.values(), others);
    Set<PhotoFile> seen = new HashSet<>();
    for (List<Photo> stills : clips.values()) {
      int count = stills.size();
      int most = most(count, fewer);
      for (int i = 0; i < most; i++) {
        seen.add(fullest(stills.subList(i * count / most, (i + 1) * count / most)).file());
      }
    }
    return seen;
  }

  /** Of how many neighbouring stills one is looked at, in all clips alike. */
  private static int oneOf(Collection<List<Photo>> clips, int photos) {
    double affordable = (TIME_FOR_CLIPS * photos - TIME_OF_A_CLIP * clips.size()) / TIME_OF_A_STILL;
    for (int fewer = 1; fewer < FEWEST; fewer++) {
      int each = fewer;
      if (clips.stream().mapToInt(stills -> most(stills.size(), each)).sum() <= affordable) {
        return fewer;
      }
    }
    return FEWEST;
  }

  private static int most(int stills, int oneOf) {
    return Math.min(stills, Math.max(LEAST_STILLS, (stills + oneOf - 1) / oneOf));
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
