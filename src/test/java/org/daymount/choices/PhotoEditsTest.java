package org.daymount.choices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Map;
import java.util.Optional;
import org.daymount.photo.Taken;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

class PhotoEditsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 12);
  private static final PhotoKey ONE = new PhotoKey("1".repeat(64), "one.jpg");
  private static final PhotoKey OTHER = new PhotoKey("2".repeat(64), "other.jpg");
  private static final PixelSize LYING = new PixelSize(400, 300);

  private static Choices on(SpaceChoice space) {
    return Choices.NONE.withDay(DAY, DayChoice.NONE.withSpace(0, space));
  }

  @Test
  void aPhotoThatIsLeftOutLeavesTheSpacesItWasChosenFor() {
    Choices chosen = new PhotoEdits(Choices.NONE, ONE).chosenFor(DAY, 0);
    Choices two = new PhotoEdits(chosen, OTHER).chosenFor(DAY, 1);
    Choices out = new PhotoEdits(two, ONE).used(Optional.of(false));
    assertEquals(SpaceChoice.NONE, out.space(DAY, 0));
    assertTrue(out.space(DAY, 1).holds(OTHER));
    assertEquals(Optional.of(false), out.used(ONE.sha256()));
  }

  @Test
  void oneThatIsChosenIsLeftOutNoMore() {
    Choices out = new PhotoEdits(Choices.NONE, ONE).used(Optional.of(false));
    Choices back = new PhotoEdits(out, ONE).chosenFor(DAY, 0);
    assertEquals(Optional.empty(), back.used(ONE.sha256()));
    assertEquals(Map.of(), back.photos());
  }

  @Test
  void aDaySaidAndTakenBackLeavesNothing() {
    Choices given =
        new PhotoEdits(Choices.NONE, ONE).given(Optional.of(DAY), Optional.of(LocalTime.of(9, 5)));
    assertEquals(Optional.of(DAY.atTime(9, 5)), given.takenOf(ONE.sha256()).flatMap(Taken::local));
    assertEquals(
        Choices.NONE, new PhotoEdits(given, ONE).given(Optional.empty(), Optional.empty()));
  }

  @Test
  void aCropAndTurnsBelongToOnePhoto() {
    SpaceChoice cropped =
        SpaceChoice.NONE.turned(ONE, 1).cropped(ONE, LYING, new PixelBox(10, 20, 30, 40));
    Choices again = new PhotoEdits(on(cropped), ONE).chosenFor(DAY, 0);
    assertEquals(cropped, again.space(DAY, 0));
    Choices other = new PhotoEdits(on(cropped), OTHER).chosenFor(DAY, 0);
    assertEquals(SpaceChoice.NONE.withPhoto(Optional.of(OTHER)), other.space(DAY, 0));
  }

  /** Worked by hand: shown 400 by 300 after one quarter clockwise, it is 300 by 400 upright. */
  @Test
  void aCropIsKeptInThePixelsOfThePhotoBeforeItWasTurned() {
    SpaceChoice turned = SpaceChoice.NONE.turned(ONE, 1);
    SpaceChoice cropped = turned.cropped(ONE, LYING, new PixelBox(0, 0, 100, 50));
    // the shown picture's upper left corner is the lower left one of the upright photo
    assertEquals(new PixelBox(0, 300, 50, 100), cropped.crop().orElseThrow().window());
    assertEquals(Optional.empty(), cropped.turned(ONE, 1).crop());
    assertEquals(0, cropped.turned(ONE, 3).quarterTurns());
    assertEquals(3, SpaceChoice.NONE.turned(ONE, -1).quarterTurns());
  }

  @Test
  void aCropBeyondThePictureIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> SpaceChoice.NONE.cropped(ONE, LYING, new PixelBox(350, 0, 100, 100)));
  }
}
