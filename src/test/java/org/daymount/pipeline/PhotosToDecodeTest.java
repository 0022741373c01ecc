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
}
