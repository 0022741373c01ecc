package org.daymount.album;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a person changed on one day.
 *
 * @param spaces by the space's place on the page, from 0
 * @param pageOf the day whose page this day uses, when pages were swapped
 * @param pageReplaced the page, in the words of {@link SpaceWords#text(DayPage)}, when a space's
 *     size or direction was first changed, so that a later edit of the note is noticed
 */
public record DayChoice(
    Map<Integer, SpaceChoice> spaces,
    Optional<StoryChoice> story,
    Optional<LocalDate> pageOf,
    Optional<String> pageReplaced,
    OtherFields other) {
  public static final DayChoice NONE =
      new DayChoice(
          Map.of(), Optional.empty(), Optional.empty(), Optional.empty(), OtherFields.NONE);

  public DayChoice {
    spaces = Collections.unmodifiableMap(new TreeMap<>(spaces));
    if (spaces.keySet().stream().anyMatch(place -> place < 0)) {
      throw new IllegalArgumentException("spaces are counted from 0, was " + spaces.keySet());
    }
  }

  public SpaceChoice space(int place) {
    return spaces.getOrDefault(place, SpaceChoice.NONE);
  }

  public DayChoice withSpace(int place, SpaceChoice changed) {
    Map<Integer, SpaceChoice> copy = new TreeMap<>(spaces);
    if (changed.equals(SpaceChoice.NONE)) {
      copy.remove(place);
    } else {
      copy.put(place, changed);
    }
    return withSpaces(copy);
  }

  DayChoice withSpaces(Map<Integer, SpaceChoice> changed) {
    return new DayChoice(changed, story, pageOf, pageReplaced, other);
  }

  public DayChoice withStory(Optional<StoryChoice> changed) {
    return new DayChoice(spaces, changed, pageOf, pageReplaced, other);
  }

  DayChoice withPageOf(Optional<LocalDate> changed) {
    return new DayChoice(spaces, story, changed, pageReplaced, other);
  }

  public DayChoice withPageReplaced(Optional<String> changed) {
    return new DayChoice(spaces, story, pageOf, changed, other);
  }

  boolean changesPage() {
    return spaces.values().stream().anyMatch(SpaceChoice::changesPage);
  }
}
