package org.daymount.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.daymount.day.Days;
import org.daymount.day.PhotoDay;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.testphoto.PhotoBuilder;
import org.junit.jupiter.api.Test;

/** The limits are the picking's own: 10 seconds, 8 bursts a day. */
class AloneByTimeTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 3);

  @Test
  void aPhotoIsAloneWhenNoneWasTakenWithinTenSeconds() {
    assertEquals(
        Set.of("c", "d"), alone(List.of(at("a", 0), at("b", 10), at("c", 21), at("d", 900))));
  }

  @Test
  void theMiddleOfThreeHasNeighboursOnBothSides() {
    assertEquals(Set.of(), alone(List.of(at("b", 9), at("c", 18), at("a", 0))));
  }

  @Test
  void onADayOfManyMomentsNobodyKnowsWhichWillBeLookedAt() {
    List<Photo> photos = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      photos.add(at("p" + i, 60 * i));
    }
    assertEquals(8, alone(photos).size());
    photos.add(at("p8", 60 * 8 - 55)); // at the moment of another
    assertEquals(7, alone(photos).size());
    photos.add(at("p9", 60 * 9));
    assertEquals(Set.of(), alone(photos));
  }

  @Test
  void aFrameThatThePhoneMarkedIsNotAlone() {
    Photo marked = builder("a", 0).burst("one").photo();
    assertEquals(Set.of("b"), alone(List.of(marked, at("b", 60))));
  }

  @Test
  void whatTakesNoPartDoesNotCount() {
    Days days = days(List.of(at("a", 0), at("copy", 0)));
    assertEquals(
        Set.of("a"), names(AloneByTime.of(days, photo -> !photo.file().name().equals("copy"))));
  }

  private static Set<String> alone(List<Photo> photos) {
    return names(AloneByTime.of(days(photos), photo -> true));
  }

  private static Set<String> names(Set<org.daymount.photo.PhotoFile> files) {
    Set<String> names = new TreeSet<>();
    files.forEach(file -> names.add(file.name()));
    return names;
  }

  private static Days days(List<Photo> photos) {
    return new Days(
        Optional.empty(),
        List.of(new PhotoDay(DAY, photos)),
        new TreeMap<>(),
        List.of(),
        List.of(),
        List.of());
  }

  private static Photo at(String name, int second) {
    return builder(name, second).photo();
  }

  private static PhotoBuilder builder(String name, int second) {
    LocalDateTime time = DAY.atTime(12, 0).plusSeconds(second);
    return PhotoBuilder.at(Path.of("june"), name).taken(Taken.at(time, TakenFrom.ORIGINAL));
  }
}
