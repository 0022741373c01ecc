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

class PhotosToDecodeTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 3);

  private static Photo still(String clip, int second, long bytes) {
    Photo photo = PhotoBuilder.named(clip).photo();
    return new Photo(
        new PhotoFile(photo.file().folder(), clip).still(Duration.ofSeconds(second)),
        bytes,
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
    return PhotosToDecode.of(days).stream().map(photo -> photo.file().name()).toList();
  }

  /** Stills of a second each; every fourth has more bytes than those before and after it. */
  private static List<Photo> clip(int stills, int fullest) {
    List<Photo> photos = new ArrayList<>();
    for (int second = 0; second < stills; second++) {
      photos.add(still("v.mp4", second, second % 4 == fullest ? 200 : 100));
    }
    return photos;
  }

  @Test
  void ofALongClipTheFullestOfFourNeighboursAreLookedAt() {
    List<Photo> photos = new ArrayList<>(List.of(PhotoBuilder.named("a.jpg").photo()));
    photos.addAll(clip(20, 2));
    assertEquals(
        List.of(
            "a.jpg",
            "v.mp4 at 0:02",
            "v.mp4 at 0:06",
            "v.mp4 at 0:10",
            "v.mp4 at 0:14",
            "v.mp4 at 0:18"),
        looked(photos.toArray(Photo[]::new)));
  }

  @Test
  void ofAShortClipFourOrAllAre() {
    assertEquals(
        List.of("v.mp4 at 0:00", "v.mp4 at 0:01", "v.mp4 at 0:03", "v.mp4 at 0:05"),
        looked(clip(7, 3).toArray(Photo[]::new)),
        "as many from each part, the first where they are alike");
    assertEquals(3, looked(clip(3, 0).toArray(Photo[]::new)).size());
  }

  private static List<Photo> month(int photos, int clips, int stillsEach) {
    List<Photo> all = new ArrayList<>();
    for (int i = 0; i < photos; i++) {
      all.add(PhotoBuilder.named(i + ".jpg").photo());
    }
    for (int i = 0; i < clips; i++) {
      for (int second = 0; second < stillsEach; second++) {
        all.add(still(i + ".mp4", second, 100 + second));
      }
    }
    return all;
  }

  @Test
  void everyStillIsLookedAtWhileClipsTakeAtMostAFifthOfThePhotosTime() {
    // a clip .85 and a still .12 of a photo's time: 4 x .85 + 160 x .12 = 22.6, of 24
    assertEquals(120 + 4 * 40, looked(month(120, 4, 40).toArray(Photo[]::new)).size());
    // 12 x .85 + 180 x .12 = 31.8, but with every second 21.0
    assertEquals(120 + 12 * 8, looked(month(120, 12, 15).toArray(Photo[]::new)).size());
    // 13 x .85 + 104 x .12 = 23.5 with every second of 15, 24.5 with 14 clips of them
    assertEquals(120 + 13 * 8, looked(month(120, 13, 15).toArray(Photo[]::new)).size());
    assertEquals(120 + 14 * 5, looked(month(120, 14, 15).toArray(Photo[]::new)).size());
    assertEquals(120 + 30 * 4, looked(month(120, 30, 15).toArray(Photo[]::new)).size());
  }
}
