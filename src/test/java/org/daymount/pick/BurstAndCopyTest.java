package org.daymount.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.daymount.evaluate.Alter;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Measurer;
import org.daymount.look.Painted;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.problem.Problem;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class BurstAndCopyTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 3);
  private static final PixelSize LARGE = new PixelSize(4000, 3000);
  private static final PixelSize SMALL = new PixelSize(1600, 1200);

  private final Measurer measurer = new Measurer();
  private final BurstFinder bursts = new BurstFinder();
  private final CopyFinder copies = new CopyFinder();
  private final BufferedImage boat = Painted.scene(400, 300, 1);
  private final BufferedImage garden = Painted.scene(400, 300, 2);

  @Test
  void framesOfOneBurstAreGroupedAndOtherPicturesStayAlone() {
    Random hand = new Random(11);
    AnalysedPhoto first = at("c.jpg", 10, boat);
    AnalysedPhoto second = at("b.jpg", 12, Alter.nextFrame(boat, hand));
    AnalysedPhoto third = at("a.jpg", 14, Alter.nextFrame(boat, hand));
    AnalysedPhoto other = at("d.jpg", 16, garden);
    List<Burst> found = bursts.find(DAY, List.of(other, third, first, second));
    assertEquals(
        List.of(
            new Burst(Optional.of("2026-06-03/1"), List.of(first, second, third)),
            new Burst(Optional.empty(), List.of(other))),
        found);
  }

  @Test
  void idsDoNotDependOnTheOrderThePhotosComeIn() {
    List<AnalysedPhoto> photos = new ArrayList<>();
    Random hand = new Random(12);
    for (int i = 0; i < 4; i++) {
      photos.add(at("boat" + i + ".jpg", i, Alter.nextFrame(boat, hand)));
      photos.add(at("garden" + i + ".jpg", 30 + i, Alter.nextFrame(garden, hand)));
    }
    List<Burst> found = bursts.find(DAY, photos);
    assertEquals(
        List.of(Optional.of("2026-06-03/1"), Optional.of("2026-06-03/2")),
        found.stream().map(Burst::id).toList());
    Collections.shuffle(photos, new Random(13));
    assertEquals(found, bursts.find(DAY, photos));
  }

  @Test
  void tenSecondsAreStillABurstAndElevenAskForMoreLikeness() {
    BufferedImage moved = moved();
    assertEquals(1, bursts.find(DAY, List.of(at("a.jpg", 0, boat), at("b.jpg", 10, moved))).size());
    assertEquals(2, bursts.find(DAY, List.of(at("a.jpg", 0, boat), at("b.jpg", 11, moved))).size());
  }

  @Test
  void framesThatThePhoneMarkedAreOneBurstAndAStillBesideThemIsNone() {
    AnalysedPhoto first = marked("a.jpg", 0, boat);
    AnalysedPhoto second = marked("b.jpg", 1, garden); // whatever it shows
    AnalysedPhoto still = at("c.jpg", 2, moved());
    assertEquals(
        List.of(List.of(first, second), List.of(still)),
        bursts.find(DAY, List.of(first, second, still)).stream().map(Burst::photos).toList());
    AnalysedPhoto unmarked = at("a.jpg", 0, boat);
    assertEquals(1, bursts.find(DAY, List.of(unmarked, still)).size());
  }

  private AnalysedPhoto marked(String name, int second, BufferedImage picture) {
    Taken taken = Taken.at(noon().plusSeconds(second), TakenFrom.ORIGINAL);
    Photo photo =
        PhotoBuilder.named(name).sha256(name).size(LARGE).taken(taken).burst("one").photo();
    return new AnalysedPhoto(photo, measurer.measure(picture));
  }

  @Test
  void aFileTimeProvesNoBurst() {
    Taken guessed = Taken.at(DAY.atTime(12, 0), TakenFrom.FILE_TIME);
    AnalysedPhoto one = looked("a.jpg", "1", LARGE, guessed, boat);
    AnalysedPhoto two = looked("b.jpg", "2", LARGE, guessed, moved());
    assertEquals(2, bursts.find(DAY, List.of(one, two)).size());
  }

  /** Far enough from the boat for the rule of any time, near enough for that of one moment. */
  private BufferedImage moved() {
    var still = measurer.measure(boat).fingerprint();
    Random hand = new Random(14);
    for (int i = 0; i < 200; i++) {
      BufferedImage next = Alter.nextFrame(boat, hand);
      var print = measurer.measure(next).fingerprint();
      if (NearDuplicates.atOnce(still, print) && !NearDuplicates.anyTime(still, print)) {
        return next;
      }
    }
    throw new AssertionError("no frame between the two rules");
  }

  @Test
  void ofTwoEqualFilesTheBetterDatedAndThenTheFirstByNameIsKept() {
    Photo named = photo("IMG_20260603.jpg", "same", LARGE, Taken.at(noon(), TakenFrom.NAME));
    Photo dated = photo("z.jpg", "same", LARGE, Taken.at(noon(), TakenFrom.ORIGINAL));
    Photo again = photo("zz.jpg", "same", LARGE, Taken.at(noon(), TakenFrom.ORIGINAL));
    Photo other = photo("b.jpg", "other", LARGE, Taken.at(noon(), TakenFrom.ORIGINAL));
    assertEquals(
        List.of(
            new Duplicate(named.file(), dated.file(), true),
            new Duplicate(again.file(), dated.file(), true)),
        copies.exact(List.of(named, again, other, dated)));
  }

  @Test
  void aSmallerUndatedCopyPointsToItsOriginal() {
    BufferedImage sent = Alter.saved(Alter.smaller(boat, 0.5), 0.6f);
    AnalysedPhoto original = at("IMG_1.jpg", 0, boat);
    AnalysedPhoto copy = looked("chat.jpg", "2", SMALL, Taken.UNKNOWN, sent);
    AnalysedPhoto other = looked("other.jpg", "3", SMALL, Taken.UNKNOWN, garden);
    List<Duplicate> found = copies.smaller(List.of(copy, other, original));
    assertEquals(
        List.of(new Duplicate(copy.photo().file(), original.photo().file(), false)), found);
    assertEquals(Problem.Kind.SMALLER_COPY, found.get(0).problem().kind());
    assertEquals("is a smaller copy of IMG_1.jpg, which is used", found.get(0).problem().text());
  }

  @Test
  void aSmallerPictureWithItsOwnTimeOrShapeIsNoCopy() {
    AnalysedPhoto original = at("IMG_1.jpg", 0, boat);
    Taken later = Taken.at(noon().plusMinutes(5), TakenFrom.ORIGINAL);
    AnalysedPhoto otherTime = looked("a.jpg", "2", SMALL, later, boat);
    AnalysedPhoto otherShape = looked("b.jpg", "3", new PixelSize(1600, 900), Taken.UNKNOWN, boat);
    assertEquals(List.of(), copies.smaller(List.of(original, otherTime, otherShape)));
  }

  @Test
  void aCopyNamedByTheDayItWasSentIsACopy() {
    AnalysedPhoto original = at("IMG_1.jpg", 0, boat);
    Taken sent = Taken.at(DAY.atStartOfDay(), TakenFrom.NAME);
    AnalysedPhoto copy = looked("IMG-20260603-0012.jpg", "2", SMALL, sent, boat);
    assertEquals(1, copies.smaller(List.of(original, copy)).size());
  }

  @Test
  void aCopyOfACopyPointsToTheLargest() {
    AnalysedPhoto original = at("IMG_1.jpg", 0, boat);
    AnalysedPhoto half = looked("half.jpg", "2", SMALL, Taken.UNKNOWN, boat);
    AnalysedPhoto tiny = looked("tiny.jpg", "3", new PixelSize(400, 300), Taken.UNKNOWN, boat);
    assertEquals(
        List.of(original.photo().file(), original.photo().file()),
        copies.smaller(List.of(tiny, half, original)).stream().map(Duplicate::original).toList());
  }

  private static LocalDateTime noon() {
    return DAY.atTime(12, 0);
  }

  private AnalysedPhoto at(String name, int second, BufferedImage picture) {
    Taken taken = Taken.at(noon().plusSeconds(second), TakenFrom.ORIGINAL);
    return looked(name, name, LARGE, taken, picture);
  }

  private AnalysedPhoto looked(
      String name, String sha, PixelSize size, Taken taken, BufferedImage picture) {
    return new AnalysedPhoto(photo(name, sha, size, taken), measurer.measure(picture));
  }

  private static Photo photo(String name, String sha, PixelSize size, Taken taken) {
    return PhotoBuilder.named(name).sha256(sha).size(size).taken(taken).photo();
  }
}
