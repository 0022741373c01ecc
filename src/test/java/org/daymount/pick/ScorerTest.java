package org.daymount.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.daymount.album.DayPage;
import org.daymount.album.Space;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.MainLook;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.Subject;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.junit.jupiter.api.Test;

/** What a person would take, by made-up measures of pictures of 4032 x 3024 pixels. */
class ScorerTest {
  private static final MainLook SOUND = new MainLook(0.8, 0.8, 200);
  private static final MainLook BLURRED = new MainLook(0.3, 0.8, 200);
  private static final MainLook BLACK = new MainLook(0.8, 0.3, 60);

  private int scene;

  @Test
  void aSpoiltPictureComesAfterEverySoundOneHoweverDearItsSubject() {
    AnalysedPhoto shakenChild = with(BLURRED, List.of(face(1500, 900, 900)), List.of());
    AnalysedPhoto blackPortrait = with(BLACK, List.of(face(1500, 900, 900)), List.of());
    AnalysedPhoto sink = with(SOUND, List.of(), List.of(thing("sink", 1200, 900, 1500)));
    assertEquals(sink, hero(shakenChild, blackPortrait, sink));
  }

  @Test
  void aSpoiltPictureIsNotTakenForASecondSpaceWhileThereIsASoundOne() {
    AnalysedPhoto child = with(SOUND, List.of(face(1500, 900, 900)), List.of());
    AnalysedPhoto shakenChild = with(BLURRED, List.of(face(1500, 900, 900)), List.of());
    AnalysedPhoto bench = with(SOUND, List.of(), List.of(thing("bench", 1200, 900, 1500)));
    assertEquals(
        Set.of(child, bench),
        heroes(List.of(child, shakenChild, bench), 2).stream()
            .map(pick -> pick.hero().orElseThrow().looked())
            .collect(Collectors.toSet()));
  }

  @Test
  void aDayThatHasOnlyASpoiltPictureShowsItAndSaysSo() {
    AnalysedPhoto shaken = with(BLURRED, List.of(), List.of());
    SpacePick pick = heroes(List.of(shaken), 1).get(0);
    assertTrue(
        pick.hero()
            .orElseThrow()
            .reasons()
            .contains("out of focus or shaken, but the day has nothing better"),
        pick.toString());
  }

  @Test
  void animalsComeBeforeThingsAndDullThingsLast() {
    AnalysedPhoto kitten = with(SOUND, List.of(), List.of(thing("cat", 1300, 900, 1200)));
    AnalysedPhoto vase = with(SOUND, List.of(), List.of(thing("vase", 1300, 900, 1200)));
    AnalysedPhoto toilet = with(SOUND, List.of(), List.of(thing("toilet", 1300, 900, 1200)));
    AnalysedPhoto view = with(SOUND, List.of(), List.of());
    assertEquals(kitten, hero(toilet, vase, kitten));
    assertEquals(view, hero(toilet, view));
  }

  @Test
  void anOnlookersFaceDoesNotBeatThePairInTheMiddle() {
    AnalysedPhoto onlooker = with(SOUND, List.of(face(20, 500, 200)), List.of());
    AnalysedPhoto pair =
        with(SOUND, List.of(face(1300, 1000, 420), face(2200, 1000, 400)), List.of());
    assertEquals(pair, hero(onlooker, pair));
  }

  @Test
  void facesBehindSomeonesBackDoNotBeatAMeal() {
    List<Face> guests = List.of(face(1400, 300, 370), face(3300, 300, 500));
    Subject back = new Subject(new PixelBox(1500, 200, 2000, 2700), "person", 0.35);
    AnalysedPhoto cafe = with(SOUND, guests, List.of(back));
    AnalysedPhoto seen = with(SOUND, guests, List.of());
    AnalysedPhoto pizza = with(SOUND, List.of(), List.of(thing("pizza", 700, 300, 2500)));
    assertEquals(pizza, hero(cafe, pizza));
    assertEquals(seen, hero(seen, pizza));
  }

  @Test
  void aBrightEvenSkyBehindABirdIsNotBadLight() {
    MainLook litBird = new MainLook(0.8, 0.9, 200);
    CloseLook close = new CloseLook(List.of(), List.of(), 0).with(litBird);
    AnalysedPhoto bird = Pictures.of("bird.jpg", Pictures.LANDSCAPE, 99, 0.3).withClose(close);
    assertEquals(0.9, bird.measures().light());
  }

  private AnalysedPhoto hero(AnalysedPhoto... photos) {
    return heroes(List.of(photos), 1).get(0).hero().orElseThrow().looked();
  }

  private static List<SpacePick> heroes(List<AnalysedPhoto> photos, int spaces) {
    LocalDate day = LocalDate.of(2026, 6, 3);
    Space space = Space.free(PaperSize.inches(4, 6));
    DayPage page =
        new DayPage(
            day, DayPage.Kind.PICTURES, Collections.nCopies(spaces, space), Optional.empty());
    return new HeroPicker(Pictures.SETTINGS, UserChoice.NONE)
        .pick(List.of(page), Map.of(day, photos.stream().map(Pictures::alone).toList()))
        .get(0)
        .spaces();
  }

  private AnalysedPhoto with(MainLook look, List<Face> faces, List<Subject> things) {
    scene++;
    return Pictures.of(scene + ".jpg", Pictures.LANDSCAPE, scene, 0.7)
        .withClose(new CloseLook(faces, things, 0).with(look));
  }

  private static Face face(int x, int y, int side) {
    return new Face(new PixelBox(x, y, side, side), 0.95);
  }

  private static Subject thing(String what, int x, int y, int side) {
    return new Subject(new PixelBox(x, y, side, side), what, 0.7);
  }
}
