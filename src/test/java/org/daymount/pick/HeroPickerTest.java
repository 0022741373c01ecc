package org.daymount.pick;

import static org.daymount.pick.Pictures.LANDSCAPE;
import static org.daymount.pick.Pictures.PORTRAIT;
import static org.daymount.pick.Pictures.alone;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.album.DayPage;
import org.daymount.album.Space;
import org.daymount.look.AnalysedPhoto;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

class HeroPickerTest {
  private static final LocalDate THIRD = LocalDate.of(2026, 6, 3);
  private static final LocalDate FOURTH = THIRD.plusDays(1);
  private static final Space FREE = Space.free(PaperSize.inches(4, 6));
  private static final Space TALL = fixed(Orientation.PORTRAIT);
  private static final Space WIDE = fixed(Orientation.LANDSCAPE);
  private static final int FERRY = 1;
  private static final int GARDEN = 2;
  private static final int BOAT = 3;

  private final AnalysedPhoto ferry = Pictures.of("ferry.jpg", LANDSCAPE, FERRY, 0.8);
  private final AnalysedPhoto garden = Pictures.of("garden.jpg", LANDSCAPE, GARDEN, 0.7);

  @Test
  void theBestPictureOfADayIsItsHeroAndTheNextOnesFollow() {
    SpacePick pick = pick(page(THIRD, FREE), garden, ferry).get(0);
    assertEquals(ferry, pick.hero().orElseThrow().looked());
    assertEquals(garden, pick.runnersUp().get(0).looked());
    assertEquals(SpacePick.ChosenBy.TOOL, pick.chosenBy());
  }

  @Test
  void aPictureNearlyTheSameAsTheDayBeforesGivesWayToAnotherAndTheReasonSaysSo() {
    AnalysedPhoto ferryAgain = Pictures.of("ferry-again.jpg", LANDSCAPE, FERRY, 0.8);
    List<DayPick> days =
        new HeroPicker(Pictures.SETTINGS, UserChoice.NONE)
            .pick(
                List.of(page(THIRD, FREE), page(FOURTH, FREE)),
                Map.of(
                    THIRD, List.of(alone(ferry)),
                    FOURTH, List.of(alone(ferryAgain), alone(garden))));
    SpacePick fourth = days.get(1).spaces().get(0);
    assertEquals(garden, fourth.hero().orElseThrow().looked());
    assertTrue(
        fourth
            .reasons()
            .contains(
                "taken before ferry-again.jpg, which is nearly the same as the day before's"
                    + " picture"),
        fourth.reasons().toString());
  }

  @Test
  void theDayWithAnotherPictureGivesWayNotTheOneWithout() {
    AnalysedPhoto ferryAgain = Pictures.of("ferry-again.jpg", LANDSCAPE, FERRY, 0.8);
    List<DayPick> days =
        new HeroPicker(Pictures.SETTINGS, UserChoice.NONE)
            .pick(
                List.of(page(THIRD, FREE), page(FOURTH, FREE)),
                Map.of(
                    THIRD, List.of(alone(ferry), alone(garden)),
                    FOURTH, List.of(alone(ferryAgain))));
    assertEquals(garden, heroes(days.get(0)).get(0));
    assertEquals(ferryAgain, heroes(days.get(1)).get(0));
  }

  @Test
  void theSamePictureTwiceIsBetterThanAnEmptyDay() {
    AnalysedPhoto ferryAgain = Pictures.of("ferry-again.jpg", LANDSCAPE, FERRY, 0.8);
    List<DayPick> days =
        new HeroPicker(Pictures.SETTINGS, UserChoice.NONE)
            .pick(
                List.of(page(THIRD, FREE), page(FOURTH, FREE)),
                Map.of(THIRD, List.of(alone(ferry)), FOURTH, List.of(alone(ferryAgain))));
    assertEquals(List.of(ferry), heroes(days.get(0)));
    assertEquals(List.of(ferryAgain), heroes(days.get(1)));
  }

  @Test
  void aTallSpaceGetsTheTallPictureEvenIfAnotherSpaceWouldHaveLikedItBetter() {
    AnalysedPhoto tall = Pictures.of("tall.jpg", PORTRAIT, BOAT, 0.9);
    List<SpacePick> spaces = pick(page(THIRD, FREE, TALL), ferry, tall);
    assertEquals(ferry, spaces.get(0).hero().orElseThrow().looked());
    assertEquals(tall, spaces.get(1).hero().orElseThrow().looked());
    assertEquals(Orientation.LANDSCAPE, spaces.get(0).direction());
    assertEquals(Orientation.PORTRAIT, spaces.get(1).direction());
  }

  @Test
  void aFixedDirectionIsKeptWhenOnlyPicturesOfTheOtherAreThere() {
    List<SpacePick> spaces = pick(page(THIRD, TALL, WIDE), ferry, garden);
    assertEquals(Orientation.PORTRAIT, spaces.get(0).direction());
    assertEquals(Orientation.LANDSCAPE, spaces.get(1).direction());
    assertEquals(PaperSize.inches(4, 6), spaces.get(0).hero().orElseThrow().crop().piece());
  }

  @Test
  void twoSpacesOfADayShowTwoScenesWhenThereAreTwo() {
    AnalysedPhoto ferryAgain = Pictures.of("ferry-again.jpg", LANDSCAPE, FERRY, 0.79);
    List<SpacePick> spaces = pick(page(THIRD, FREE, FREE), ferry, ferryAgain, garden);
    List<AnalysedPhoto> heroes = spaces.stream().map(s -> s.hero().orElseThrow().looked()).toList();
    assertTrue(heroes.contains(garden), heroes.toString());
    assertTrue(heroes.contains(ferry), heroes.toString());
  }

  @Test
  void whatAPersonChoseStaysAndIsNotUsedTwice() {
    UserChoice choice =
        (day, space) ->
            space == 1
                ? Optional.of(
                    new UserChoice.Chosen(
                        Optional.of(ferry), Optional.empty(), Optional.empty(), ""))
                : Optional.empty();
    List<SpacePick> spaces =
        new HeroPicker(Pictures.SETTINGS, choice)
            .pick(
                List.of(page(THIRD, FREE, FREE)),
                Map.of(THIRD, List.of(alone(ferry), alone(garden))))
            .get(0)
            .spaces();
    assertEquals(garden, spaces.get(0).hero().orElseThrow().looked());
    assertEquals(ferry, spaces.get(1).hero().orElseThrow().looked());
    assertEquals(SpacePick.ChosenBy.PERSON, spaces.get(1).chosenBy());
    assertEquals("you chose it", spaces.get(1).reasons().get(0));
  }

  @Test
  void aDayWithoutPicturesSaysSo() {
    assertEquals(List.of("no picture was taken this day"), missing(page(THIRD, FREE)));
  }

  @Test
  void aDayWithTooFewPicturesSaysHowManyThereAre() {
    List<SpacePick> spaces = pick(page(THIRD, FREE, FREE), ferry);
    assertEquals(1, spaces.stream().filter(s -> s.hero().isPresent()).count());
    SpacePick empty = spaces.stream().filter(s -> s.hero().isEmpty()).findFirst().orElseThrow();
    assertEquals(List.of("only one picture for 2 spaces (a burst counts once)"), empty.reasons());
  }

  @Test
  void aDayWhosePicturesAreTooSmallSaysSo() {
    AnalysedPhoto small = Pictures.of("small.jpg", new PixelSize(160, 120), BOAT, 0.9);
    assertEquals(
        List.of("the day's picture is too small to print well (below 200 ppi)"),
        missing(page(THIRD, FREE), small));
  }

  @Test
  void theOrderThePicturesComeInDoesNotMatter() {
    AnalysedPhoto tall = Pictures.of("tall.jpg", PORTRAIT, BOAT, 0.9);
    DayPage page = page(THIRD, FREE, TALL);
    List<AnalysedPhoto> one = heroes(pick(page, ferry, tall, garden));
    List<AnalysedPhoto> other = heroes(pick(page, garden, tall, ferry));
    assertEquals(one, other);
  }

  private List<String> missing(DayPage page, AnalysedPhoto... photos) {
    SpacePick pick = pick(page, photos).get(0);
    assertTrue(pick.hero().isEmpty());
    return pick.reasons();
  }

  private static List<SpacePick> pick(DayPage page, AnalysedPhoto... photos) {
    List<Candidate> contenders = Arrays.stream(photos).map(Pictures::alone).toList();
    return new HeroPicker(Pictures.SETTINGS, UserChoice.NONE)
        .pick(List.of(page), Map.of(page.day(), contenders))
        .get(0)
        .spaces();
  }

  private static List<AnalysedPhoto> heroes(DayPick day) {
    return heroes(day.spaces());
  }

  private static List<AnalysedPhoto> heroes(List<SpacePick> spaces) {
    return spaces.stream().map(s -> s.hero().orElseThrow().looked()).toList();
  }

  private static DayPage page(LocalDate day, Space... spaces) {
    return new DayPage(day, DayPage.Kind.PICTURES, List.of(spaces), Optional.empty());
  }

  private static Space fixed(Orientation direction) {
    return new Space(PaperSize.inches(4, 6), Optional.of(direction), Optional.empty());
  }
}
