package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.daymount.album.Choices;
import org.daymount.album.CropChoice;
import org.daymount.album.PhotoKey;
import org.daymount.album.SpaceChoice;
import org.daymount.look.Looked;
import org.daymount.pick.PersonsChoice;

/** Meets the choices with the photos that are there now: by content, whatever a file is called. */
final class ChosenByPerson implements PersonsChoice {
  private final Choices choices;
  private final Map<String, Looked> byContent = new HashMap<>();

  ChosenByPerson(Choices choices, Collection<Looked> looked) {
    this.choices = choices;
    looked.forEach(one -> byContent.put(one.photo().sha256(), one));
  }

  @Override
  public Optional<Chosen> of(LocalDate day, int space) {
    SpaceChoice choice = choices.space(day, space);
    if (choice.photo().isEmpty()) {
      return Optional.empty();
    }
    PhotoKey key = choice.photo().get();
    Optional<Looked> looked = Optional.ofNullable(byContent.get(key.sha256()));
    String why =
        looked.isPresent()
            ? ""
            : "the picture you chose, "
                + key.file()
                + ", is not among the photos any more; put it back or choose another";
    return Optional.of(
        new Chosen(
            looked,
            choice
                .crop()
                .filter(crop -> crop.sha256().equals(key.sha256()))
                .map(CropChoice::window),
            choice.direction(),
            why));
  }
}
