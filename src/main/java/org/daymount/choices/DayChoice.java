package org.daymount.choices;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.album.DayPage;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;

/**
 * What a person changed on one day.
 *
 * @param spaces by the space's place on the page, from 0
 * @param pageOf the day whose page this day uses, when pages were swapped
 * @param page what the page holds instead of what the note says; a space's own size and direction
 *     go before it
 * @param pageReplaced the page, in the words of {@link PageSpecParser#text(DayPage)}, when it was
 *     first changed, so that a later edit of the note is noticed
 */
public record DayChoice(
    Map<Integer, SpaceChoice> spaces,
    Optional<StoryChoice> story,
    Optional<LocalDate> pageOf,
    Optional<PageSpec> page,
    Optional<String> pageReplaced,
    UnknownFields other) {
  public static final DayChoice NONE =
      new DayChoice(
          Map.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          UnknownFields.NONE);

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
    return new DayChoice(changed, story, pageOf, page, pageReplaced, other);
  }

  public DayChoice withStory(Optional<StoryChoice> changed) {
    return new DayChoice(spaces, changed, pageOf, page, pageReplaced, other);
  }

  public DayChoice withPage(Optional<PageSpec> changed) {
    return new DayChoice(spaces, story, pageOf, changed, pageReplaced, other);
  }

  public DayChoice withPageReplaced(Optional<String> changed) {
    return new DayChoice(spaces, story, pageOf, page, changed, other);
  }

  /** Whether the page itself was changed, not only what lies on it. */
  public boolean changesPage() {
    return page.isPresent() || spaces.values().stream().anyMatch(SpaceChoice::changesPage);
  }

  /** The page as the note has it; what lies on it stays. */
  public DayChoice withoutPageChanges() {
    DayChoice changed = withPage(Optional.empty()).withPageReplaced(Optional.empty());
    return changed.withoutSpaceShapes();
  }

  /** Without sizes and directions of their own: the page's words say them now. */
  public DayChoice withoutSpaceShapes() {
    DayChoice changed = this;
    for (Map.Entry<Integer, SpaceChoice> space : spaces.entrySet()) {
      changed =
          changed.withSpace(
              space.getKey(),
              space.getValue().withSize(Optional.empty()).withDirection(Optional.empty()));
    }
    return changed;
  }

  /** Of a page that loses a space: what lay in those behind it moves up. */
  public DayChoice withSpaceTaken(int place) {
    Map<Integer, SpaceChoice> left = new TreeMap<>();
    spaces.forEach(
        (at, space) -> {
          if (at != place) {
            left.put(at > place ? at - 1 : at, space);
          }
        });
    return withSpaces(left);
  }
}
