package org.daymount.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.day.Days;
import org.daymount.day.PhotoDay;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.testphoto.PhotoBuilder;
import org.junit.jupiter.api.Test;

class WantedTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 3);

  private static Photo still(String clip, int second) {
    Photo photo = PhotoBuilder.named(clip).photo();
    return new Photo(
        new PhotoFile(photo.file().folder(), clip).still(Duration.ofSeconds(second)),
        photo.bytes(),
        photo.sha256(),
        photo.format(),
        photo.size(),
        photo.orientation(),
        true,
        photo.taken(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static List<String> looked(Photo... photos) {
    Days days =
        new Days(
            Optional.empty(),
            List.of(new PhotoDay(DAY, List.of(photos))),
            new TreeMap<>(),
            List.of(),
            List.of(),
            List.of());
    return Wanted.of(days).stream().map(photo -> photo.file().name()).toList();
  }

  @Test
  void ofALongClipEverySecondStillIsLookedAtTheEndsAmongThem() {
    List<Photo> photos = new ArrayList<>(List.of(PhotoBuilder.named("a.jpg").photo()));
    for (int second = 0; second < 20; second++) {
      photos.add(still("v.mp4", second));
    }
    List<String> looked = looked(photos.toArray(Photo[]::new));
    assertEquals(11, looked.size());
    assertEquals("a.jpg", looked.get(0));
    assertEquals("v.mp4 at 0:00", looked.get(1));
    assertEquals("v.mp4 at 0:19", looked.get(10));
  }

  @Test
  void ofAShortClipSixOrAllAre() {
    List<Photo> seven = new ArrayList<>();
    for (int second = 0; second < 7; second++) {
      seven.add(still("v.mp4", second));
    }
    assertEquals(6, looked(seven.toArray(Photo[]::new)).size());
    assertEquals(5, looked(seven.subList(0, 5).toArray(Photo[]::new)).size());
  }
}
