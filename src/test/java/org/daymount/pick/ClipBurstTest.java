package org.daymount.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.daymount.evaluate.Alter;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Measurer;
import org.daymount.look.Painted;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.testphoto.PhotoBuilder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class ClipBurstTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 3);

  private final Measurer measurer = new Measurer();
  private final BufferedImage boat = Painted.scene(400, 300, 1);
  private final BufferedImage garden = Painted.scene(400, 300, 2);
  private final BufferedImage street = Painted.scene(400, 300, 3);
  private final Random hand = new Random(7);

  private AnalysedPhoto photo(String name, int second, BufferedImage picture) {
    Photo photo =
        PhotoBuilder.named(name)
            .taken(Taken.at(DAY.atTime(10, 0).plusSeconds(second), TakenFrom.ORIGINAL))
            .photo();
    return new AnalysedPhoto(photo, measurer.measure(picture));
  }

  private AnalysedPhoto still(String clip, int start, int at, BufferedImage picture) {
    LocalDateTime when = DAY.atTime(10, 0).plusSeconds(start + at);
    AnalysedPhoto plain = photo(clip, start + at, picture);
    PhotoFile file = plain.photo().file().still(Duration.ofSeconds(at));
    Photo photo = plain.photo();
    return new AnalysedPhoto(
        new Photo(
            file,
            photo.bytes(),
            photo.sha256(),
            photo.format(),
            photo.size(),
            photo.orientation(),
            true,
            Taken.at(when, TakenFrom.CLIP),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        plain.measures());
  }

  @Test
  void stillsOfAClipAreOneMomentHoweverItMoves() {
    List<AnalysedPhoto> clip =
        List.of(
            still("v.mp4", 0, 0, boat),
            still("v.mp4", 0, 20, garden),
            still("v.mp4", 0, 40, street));
    assertEquals(
        List.of(new Burst(Optional.of(DAY + "/1"), clip)), new BurstFinder().find(DAY, clip));
  }

  /** So that a month of photos is not slow for its clips: the others are listed, not looked at. */
  @Test
  void besideOtherPhotosAClipStandsWithItsBestStillAlone() {
    AnalysedPhoto photo = photo("a.jpg", 3600, garden);
    BufferedImage blurred = blurred(boat);
    List<AnalysedPhoto> clip = List.of(still("v.mp4", 0, 0, blurred), still("v.mp4", 0, 4, boat));
    assertEquals(
        List.of(
            new Burst(Optional.of(DAY + "/1"), List.of(clip.get(1)), List.of(clip.get(0))),
            new Burst(Optional.empty(), List.of(photo))),
        new BurstFinder().find(DAY, List.of(clip.get(0), clip.get(1), photo)));
  }

  /** The mean of 9 by 9 pixels, by a filter of the JDK. */
  private static BufferedImage blurred(BufferedImage sharp) {
    float[] mean = new float[81];
    Arrays.fill(mean, 1f / mean.length);
    return new ConvolveOp(new Kernel(9, 9, mean), ConvolveOp.EDGE_NO_OP, null).filter(sharp, null);
  }

  @Test
  void aPhotoOfTheSameMomentGoesBeforeTheClip() {
    AnalysedPhoto photo = photo("a.jpg", 3, boat);
    List<AnalysedPhoto> clip =
        List.of(
            still("v.mp4", 0, 0, Alter.nextFrame(boat, hand)),
            still("v.mp4", 0, 4, Alter.nextFrame(boat, hand)),
            still("v.mp4", 0, 30, garden));
    List<Burst> found =
        new BurstFinder().find(DAY, List.of(clip.get(0), photo, clip.get(1), clip.get(2)));
    assertEquals(List.of(new Burst(Optional.of(DAY + "/1"), List.of(photo), clip)), found);
  }

  @Test
  void aClipNeverMakesOneMomentOfTwoPhotos() {
    AnalysedPhoto first = photo("a.jpg", 0, boat);
    AnalysedPhoto second = photo("b.jpg", 32, garden);
    List<AnalysedPhoto> clip =
        List.of(
            still("v.mp4", 0, 1, Alter.nextFrame(boat, hand)),
            still("v.mp4", 0, 2, Alter.nextFrame(boat, hand)),
            still("v.mp4", 0, 31, Alter.nextFrame(garden, hand)));
    List<AnalysedPhoto> all = List.of(first, second, clip.get(0), clip.get(1), clip.get(2));
    assertEquals(
        List.of(
            new Burst(Optional.of(DAY + "/1"), List.of(first), clip),
            new Burst(Optional.empty(), List.of(second))),
        new BurstFinder().find(DAY, all));
  }
}
