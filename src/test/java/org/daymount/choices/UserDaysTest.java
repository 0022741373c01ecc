package org.daymount.choices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.day.DaySettings;
import org.daymount.day.DaySorter;
import org.daymount.day.Days;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.testphoto.PhotoBuilder;
import org.junit.jupiter.api.Test;

class UserDaysTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 6, 1);

  /** One for each way a date is found, and one without. */
  private static final List<Photo> PHOTOS =
      List.of(
          photo("camera.jpg", 'a', FIRST.atTime(10, 0), TakenFrom.ORIGINAL),
          photo("name.jpg", 'b', FIRST.minusMonths(1).atTime(10, 0), TakenFrom.NAME),
          photo("sidecar.jpg", 'c', FIRST.plusDays(2).atTime(10, 0), TakenFrom.SIDECAR),
          photo("file.jpg", 'd', FIRST.plusMonths(4).atTime(10, 0), TakenFrom.FILE_TIME),
          photo("noon.jpg", 'e', FIRST.plusDays(4).atTime(12, 0), TakenFrom.ORIGINAL));

  private static Photo photo(String name, char sum, LocalDateTime taken, TakenFrom from) {
    return PhotoBuilder.named(name)
        .sha256(Character.toString(sum).repeat(64))
        .taken(Taken.at(taken, from))
        .photo();
  }

  private static Choices said(Choices before, String name, LocalDate day, LocalTime time) {
    Photo photo = PHOTOS.stream().filter(p -> p.file().name().equals(name)).findFirst().get();
    return new PhotoEdits(before, new PhotoKey(photo.sha256(), name))
        .given(Optional.of(day), Optional.ofNullable(time));
  }

  private static Days days(Choices choices) {
    DaySettings settings = DaySettings.DEFAULT;
    return UserDays.of(new DaySorter().sort(PHOTOS, settings), PHOTOS, choices, settings);
  }

  private static Map<LocalDate, List<String>> names(Days days) {
    Map<LocalDate, List<String>> names = new TreeMap<>();
    days.days().stream()
        .filter(day -> !day.photos().isEmpty())
        .forEach(
            day -> names.put(day.day(), day.photos().stream().map(p -> p.file().name()).toList()));
    return names;
  }

  @Test
  void whateverSaidThePhotosDateThePersonsWordGoesBefore() {
    Choices choices = Choices.NONE;
    List<String> all = new ArrayList<>();
    for (String name : List.of("camera.jpg", "name.jpg", "sidecar.jpg", "file.jpg")) {
      choices = said(choices, name, FIRST.plusDays(4), LocalTime.of(13 + all.size(), 0));
      all.add(name);
    }
    all.add(0, "noon.jpg"); // in order of time
    Days days = days(choices);
    assertEquals(Map.of(FIRST.plusDays(4), all), names(days));
    assertEquals(List.of(), days.undated());
    assertEquals(List.of(), days.problems());
    days.days().get(4).photos().stream()
        .skip(1)
        .forEach(photo -> assertEquals(TakenFrom.PERSON, photo.taken().from()));
  }

  @Test
  void aNightBelongsToTheEveningBeforeAndADayAloneToItself() {
    Choices night = said(Choices.NONE, "name.jpg", FIRST.plusDays(9), LocalTime.of(3, 59));
    assertEquals(List.of("name.jpg"), names(days(night)).get(FIRST.plusDays(8)));
    Choices day = said(Choices.NONE, "name.jpg", FIRST.plusDays(9), null);
    assertEquals(List.of("name.jpg"), names(days(day)).get(FIRST.plusDays(9)));
  }

  /** The month that is open stays, however many photos leave it. */
  @Test
  void aPhotoMayLeaveTheMonth() {
    Choices choices = Choices.NONE;
    for (String name : List.of("camera.jpg", "sidecar.jpg", "noon.jpg")) {
      choices = said(choices, name, FIRST.minusMonths(3), null);
    }
    Days days = days(choices);
    assertEquals(FIRST, days.days().get(0).day());
    assertEquals(Map.of(), names(days));
    assertEquals(
        "was taken in March 2026; choose that month with --month 2026-03",
        days.problems().get(0).text());
  }

  @Test
  void withoutAWordNothingIsSortedAgain() {
    Days days = new DaySorter().sort(PHOTOS, DaySettings.DEFAULT);
    assertSame(days, UserDays.of(days, PHOTOS, Choices.NONE, DaySettings.DEFAULT));
  }
}
