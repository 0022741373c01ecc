package org.daymount.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.daymount.cache.Cache;
import org.daymount.image.Pictures;
import org.daymount.photo.Photo;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

class PhotoAnalyserTest {
  private static final int PHOTOS = 12;

  @Test
  void photosComeBackInTheirOrderWhateverTheNumberOfJobs() {
    List<Photo> photos = photos();
    PhotoAnalyser looker = new PhotoAnalyser((photo, edge) -> scene(photo));
    AtomicInteger done = new AtomicInteger();
    Analysis alone = looker.first(photos, 1, done::incrementAndGet);
    Analysis together = looker.first(photos, 4, done::incrementAndGet);
    assertEquals(alone, together);
    assertEquals(photos, alone.looked().stream().map(AnalysedPhoto::photo).toList());
    assertEquals(2 * PHOTOS, done.get());
  }

  @Test
  void aPhotoThatCannotBeDecodedIsAProblemAndTheOthersAreLookedAt() {
    PhotoAnalyser looker =
        new PhotoAnalyser(
            (photo, edge) -> {
              if (photo.bytes() == 3) {
                throw new UnusablePicture(Problem.Kind.CUT_OFF, "is cut off; copy it again");
              }
              if (photo.bytes() == 5) {
                throw new ArrayIndexOutOfBoundsException("in a decoder");
              }
              return scene(photo);
            });
    Analysis result = looker.first(photos(), 3, () -> {});
    assertEquals(PHOTOS - 2, result.looked().size());
    assertEquals(
        List.of(Problem.Kind.CUT_OFF, Problem.Kind.UNREADABLE),
        result.problems().stream().map(Problem::kind).toList());
    assertEquals("p03.jpg", result.problems().get(0).file().name());
  }

  @Test
  void noMorePicturesAreHeldThanThereAreJobs() {
    AtomicInteger held = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    PhotoAnalyser looker =
        new PhotoAnalyser(
            (photo, edge) -> {
              most.accumulateAndGet(held.incrementAndGet(), Math::max);
              var picture = scene(photo);
              held.decrementAndGet();
              return picture;
            });
    looker.first(photos(), 2, () -> {});
    assertTrue(most.get() <= 2, "held " + most.get());
  }

  @Test
  void aFaultOfTheMachineIsNotTakenForABadPhoto() {
    PhotoAnalyser looker =
        new PhotoAnalyser(
            (photo, edge) -> {
              throw new LinkageError("a broken installation");
            });
    List<Photo> photos = photos();
    assertThrows(LinkageError.class, () -> looker.first(photos, 2, () -> {}));
  }

  @Test
  void onlyPhotosThatAreNewAreDecoded() {
    LookCache memory = new LookCache(Cache.empty("test"));
    AtomicInteger decoded = new AtomicInteger();
    PhotoAnalyser looker =
        new PhotoAnalyser(
            (photo, edge) -> {
              decoded.incrementAndGet();
              return scene(photo);
            },
            memory);
    List<Photo> photos = photos();
    Analysis before = looker.first(photos.subList(0, PHOTOS - 2), 2, () -> {});
    Analysis all = looker.first(photos, 2, () -> {});
    assertEquals(PHOTOS, decoded.get());
    assertEquals(before.looked(), all.looked().subList(0, PHOTOS - 2));
    Analysis fresh = new PhotoAnalyser((photo, edge) -> scene(photo)).first(photos, 2, () -> {});
    assertEquals(fresh, all);
  }

  private static Pictures.Examined scene(Photo photo) {
    return new Pictures.Examined(Painted.scene(90, 60, photo.bytes()), Optional.empty());
  }

  private static List<Photo> photos() {
    return IntStream.range(0, PHOTOS)
        .mapToObj(
            i ->
                PhotoBuilder.named(String.format("p%02d.jpg", i))
                    .bytes(i)
                    .sha256("sha" + i)
                    .size(new PixelSize(90, 60))
                    .photo())
        .toList();
  }
}
