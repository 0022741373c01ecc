package org.daymount.pick;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.daymount.choices.Choices;
import org.daymount.choices.CropChoice;
import org.daymount.choices.PhotoKey;
import org.daymount.choices.SpaceChoice;
import org.daymount.look.AnalysedPhoto;
import org.daymount.photo.Photo;

/** Meets the choices with the photos that are there now: by content, whatever a file is called. */
public final class UserChoices implements UserChoice {
  private final Choices choices;
  private final Map<String, AnalysedPhoto> byContent = new HashMap<>();
  private final Set<String> there;

  /**
   * @param there every photo that was found, decoded or not
   */
  public UserChoices(Choices choices, Collection<AnalysedPhoto> looked, Collection<Photo> there) {
    this.choices = choices;
    looked.forEach(one -> byContent.put(one.photo().sha256(), one));
    this.there = there.stream().map(Photo::sha256).collect(Collectors.toSet());
  }

  @Override
  public Optional<Chosen> of(LocalDate day, int space) {
    SpaceChoice choice = choices.space(day, space);
    return choice.photo().map(key -> chosen(key, choice));
  }

  private Chosen chosen(PhotoKey key, SpaceChoice choice) {
    Optional<AnalysedPhoto> looked = Optional.ofNullable(byContent.get(key.sha256()));
    int turns = choice.quarterTurns();
    return new Chosen(
        looked.map(one -> one.turned(turns)),
        looked.flatMap(
            one ->
                choice
                    .crop()
                    .filter(crop -> crop.sha256().equals(key.sha256()))
                    .map(CropChoice::window)
                    .map(window -> window.within(one.photo().size()))
                    .map(window -> window.turned(one.photo().size(), turns))),
        choice.direction(),
        looked.isPresent() ? "" : why(key));
  }

  private String why(PhotoKey key) {
    return "the picture you chose, "
        + key.file()
        + (there.contains(key.sha256())
            ? ", can no longer be read; copy it again or choose another"
            : ", is not among the photos any more; put it back or choose another");
  }

  /** Contents that were chosen for some space, with the days they were chosen for. */
  public static Map<String, Set<LocalDate>> daysByContent(Choices choices) {
    Map<String, Set<LocalDate>> days = new HashMap<>();
    choices
        .days()
        .forEach(
            (day, choice) ->
                choice
                    .spaces()
                    .values()
                    .forEach(
                        space ->
                            space
                                .photo()
                                .ifPresent(
                                    key ->
                                        days.computeIfAbsent(key.sha256(), any -> new HashSet<>())
                                            .add(day))));
    return days;
  }

  /** Without those that a person put on another day: a picture is proposed once. */
  public static Map<LocalDate, List<Candidate>> leftFor(
      Map<LocalDate, List<Candidate>> contenders, Choices choices) {
    Map<String, Set<LocalDate>> chosen = daysByContent(choices);
    Map<LocalDate, List<Candidate>> left = new HashMap<>();
    contenders.forEach(
        (day, list) ->
            left.put(
                day,
                list.stream()
                    .filter(contender -> contender.frames().noneMatch(f -> away(f, day, chosen)))
                    .toList()));
    return left;
  }

  private static boolean away(
      AnalysedPhoto frame, LocalDate day, Map<String, Set<LocalDate>> chosen) {
    Set<LocalDate> days = chosen.getOrDefault(frame.photo().sha256(), Set.of());
    return !days.isEmpty() && !days.contains(day);
  }
}
