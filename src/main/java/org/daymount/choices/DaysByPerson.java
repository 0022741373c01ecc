package org.daymount.choices;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.day.Days;
import org.daymount.day.PhotoDay;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;

/** Photos without a date of their own go to the day a person gave them, after that day's others. */
public final class DaysByPerson {
  private DaysByPerson() {}

  /** A photo as a person dated it, to the day; itself where it has a date of its own. */
  public static Photo dated(Photo photo, Choices choices) {
    return photo.taken().from().isTrusted()
        ? photo
        : choices
            .dayOf(photo.sha256())
            .map(
                day ->
                    new Taken(
                        Optional.of(day.atTime(LocalTime.NOON)),
                        Optional.empty(),
                        TakenFrom.PERSON,
                        false))
            .map(photo::at)
            .orElse(photo);
  }

  public static Days of(Days days, Choices choices) {
    Map<LocalDate, List<Photo>> given = new HashMap<>();
    List<Photo> undated = new ArrayList<>();
    for (Photo photo : days.undated()) {
      Optional<LocalDate> day =
          choices
              .dayOf(photo.sha256())
              .filter(date -> days.days().stream().anyMatch(d -> d.day().equals(date)));
      if (day.isPresent()) {
        given.computeIfAbsent(day.get(), any -> new ArrayList<>()).add(photo);
      } else {
        undated.add(photo);
      }
    }
    if (given.isEmpty()) {
      return days;
    }
    List<PhotoDay> changed = new ArrayList<>();
    for (PhotoDay day : days.days()) {
      List<Photo> photos = new ArrayList<>(day.photos());
      photos.addAll(given.getOrDefault(day.day(), List.of()));
      changed.add(new PhotoDay(day.day(), photos));
    }
    return new Days(
        days.month(),
        changed,
        days.otherMonths(),
        days.otherDays(),
        undated,
        days.problems().stream()
            .filter(
                problem ->
                    given.values().stream()
                        .flatMap(List::stream)
                        .noneMatch(photo -> photo.file().equals(problem.file())))
            .toList());
  }
}
