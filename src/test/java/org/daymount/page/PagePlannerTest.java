package org.daymount.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.daymount.album.AlbumFile;
import org.daymount.album.AlbumFileParser;
import org.daymount.album.BasePage;
import org.daymount.album.PageForm;
import org.daymount.album.Space;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

class PagePlannerTest {
  private static final PaperSize PAGE = PaperSize.inches(6, 8);
  private static final PaperSize LARGE = PaperSize.inches(4, 6);
  private static final PaperSize SMALL = PaperSize.inches(3, 4);

  /** Common practice, no source: the divisions of a 6 x 8 page that are sold. */
  @Test
  void aSixByEightPageHasItsFourStraightDivisionsAndTheFullPage() {
    assertEquals(
        List.of("one 6x8", "two 4x6", "one 4x6 and two 3x4", "four 3x4", "full"),
        PageKinds.of(PAGE).stream().map(PageKind::name).collect(Collectors.toList()));
  }

  /** Common practice, no source: six 4x6 lying or standing fill 12 x 12, and twelve 3x4. */
  @Test
  void aTwelveInchPageHasItsOwnDivisions() {
    List<String> names =
        PageKinds.of(PaperSize.inches(12, 12)).stream().map(PageKind::name).toList();
    assertTrue(names.containsAll(List.of("six 4x6", "twelve 3x4", "nine 4x4", "full")), "" + names);
  }

  @Test
  void pocketsNeverOverlapAndNeverLeaveThePage() {
    for (PaperSize page :
        List.of(
            PAGE,
            PaperSize.inches(12, 12),
            PaperSize.inches(8, 8),
            PaperSize.inches(9, 12),
            PaperSize.millimetres(150, 200))) {
      for (PageKind kind : PageKinds.of(page)) {
        assertApart(kind.pockets(), page, kind.name());
      }
    }
  }

  @Test
  void twoUprightLargePicturesDoNotFitSideBySideAndTheLyingOnesAreNamed() {
    PagePlanner.Plan plan = plan(day(1, List.of(LARGE, LARGE), Orientation.PORTRAIT));
    String text = plan.misfits().values().iterator().next();
    assertTrue(text.contains("2 × 4x6 portrait do not fit on a 6x8 in page"), text);
    assertTrue(text.contains("2 × 4x6 landscape (a page of two 4x6)"), text);
  }

  @Test
  void twoUprightLargePicturesLieOnTheirSideIfThePersonSaysSo() {
    Space turned = new Space(LARGE, Optional.of(Orientation.PORTRAIT), Optional.empty(), true);
    PagePlanner.Plan plan = plan(fixed(turned, turned));
    assertEquals(Map.of(), plan.misfits());
    AlbumPage page = plan.layout().pages().get(0);
    assertEquals("two 4x6", page.kind());
    for (Place place : page.places()) {
      assertTrue(place.turned(), place.toString());
      assertEquals(PaperSize.inches(6, 4), place.box().size());
    }
  }

  @Test
  void onAFullPageAPictureSaidToLieOnItsSideDoesSo() {
    Space turned = new Space(SMALL, Optional.of(Orientation.LANDSCAPE), Optional.empty(), true);
    Place place =
        plan(formed(fixed(turned), PageForm.FULL)).layout().pages().get(0).places().get(0);
    assertTrue(place.turned());
    assertEquals(SMALL, place.box().size());
  }

  /**
   * Every way to put things into pockets is tried; the plan fits exactly where one of them does.
   */
  @Test
  void whatFitsPocketsIsFoundWheneverTryingEveryWayFindsIt() {
    List<PageItem> things = new ArrayList<>();
    for (PaperSize size : List.of(LARGE, SMALL)) {
      for (Orientation way : List.of(Orientation.LANDSCAPE, Orientation.PORTRAIT)) {
        for (boolean onSide : List.of(false, true)) {
          things.add(PageItem.of(new Space(size, Optional.of(way), Optional.empty(), onSide)));
        }
      }
      things.add(PageItem.card(size));
    }
    for (PageKind kind : PageKinds.of(PAGE)) {
      for (PageItem first : things) {
        for (PageItem second : things) {
          for (PageItem third : things) {
            List<PageItem> items = List.of(first, second, third);
            assertEquals(
                anyWay(items, kind.pockets()),
                !kind.isFull() && PocketFit.fit(kind, items, true).isPresent(),
                kind.name() + ": " + items);
          }
        }
      }
    }
  }

  private static boolean anyWay(List<PageItem> items, List<PaperBox> pockets) {
    if (items.isEmpty()) {
      return true;
    }
    for (PaperBox pocket : pockets) {
      PageItem item = items.get(0);
      boolean lies = item.side() == PageItem.Side.ON_SIDE;
      PaperSize read = item.size().towards(item.ways().get(0));
      if ((lies ? read.turned() : read).fitsInto(pocket.size())) {
        List<PaperBox> left = new ArrayList<>(pockets);
        left.remove(pocket);
        if (anyWay(items.subList(1, items.size()), left)) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void aCardForWhichThePicturesLeaveNoPlaceIsToldApartFromPicturesThatDoNotFit() {
    LocalDate day = LocalDate.of(2026, 6, 1);
    List<Orientation> lying = List.of(Orientation.LANDSCAPE, Orientation.LANDSCAPE);
    DayContents full =
        new DayContents(day, List.of(Space.free(LARGE), Space.free(LARGE)), lying, List.of(SMALL));
    PagePlanner.Plan plan = plan(full);
    assertEquals(List.of(day), plan.withoutCards());
    assertEquals(Map.of(), plan.misfits());
  }

  @Test
  void whatIsTooMuchNamesTheMostThatFits() {
    PagePlanner.Plan plan =
        plan(day(6, List.of(SMALL, SMALL, SMALL, LARGE), Orientation.LANDSCAPE));
    assertFalse(plan.misfits().isEmpty());
    String text = plan.misfits().values().iterator().next();
    assertTrue(text.contains("nearest that does: 2 × 3x4 portrait and 4x6 landscape"), text);
    assertTrue(text.contains("(a page of one 4x6 and two 3x4)"), text);
  }

  @Test
  void anUprightLargePictureTakesAFullPageAndALyingOneAPocket() {
    assertEquals("full", kind(day(1, List.of(LARGE), Orientation.PORTRAIT)));
    assertEquals("two 4x6", kind(day(1, List.of(LARGE), Orientation.LANDSCAPE)));
  }

  @Test
  void pocketsThatWouldBeLessThanHalfFilledAreNotTaken() {
    assertEquals("full", kind(day(1, List.of(SMALL), Orientation.PORTRAIT)));
    assertEquals(
        "one 4x6 and two 3x4", // one empty pocket; four 3x4 would have two
        kind(day(1, List.of(SMALL, SMALL), Orientation.PORTRAIT)));
  }

  @Test
  void severalSmallPicturesStandBecauseTheirPocketsDo() {
    List<Space> spaces =
        new PageFitter(PAGE).directed(List.of(Space.free(SMALL), Space.free(SMALL)), List.of());
    assertEquals(
        List.of(Optional.of(Orientation.PORTRAIT), Optional.of(Orientation.PORTRAIT)),
        spaces.stream().map(Space::direction).toList());
  }

  @Test
  void aSingleLargePictureLiesAsItWasTakenUnlessAStoryCardNeedsTheRoom() {
    PageFitter fitter = new PageFitter(PAGE);
    List<Space> one = List.of(Space.free(LARGE));
    assertEquals(Optional.empty(), fitter.directed(one, List.of()).get(0).direction());
    assertEquals(
        Optional.of(Orientation.LANDSCAPE),
        fitter.directed(one, List.of(SMALL)).get(0).direction());
  }

  @Test
  void aLyingSmallPictureIsGluedOnAFullPage() {
    assertEquals("full", kind(day(1, List.of(SMALL, SMALL), Orientation.LANDSCAPE)));
  }

  @Test
  void aTenByFifteenCentimetrePrintServesALargePocket() {
    assertEquals(
        "two 4x6", kind(day(1, List.of(PaperSize.millimetres(100, 150)), Orientation.LANDSCAPE)));
  }

  @Test
  void aPictureOnAMatHasTheRevealAllAroundIt() {
    Space mat =
        new Space(
            LARGE, Optional.of(Orientation.LANDSCAPE), Optional.of(Length.inchFraction(1, 8)));
    DayContents day =
        new DayContents(
            LocalDate.of(2026, 6, 1), List.of(mat), List.of(Orientation.LANDSCAPE), List.of());
    List<Place> places = plan(day).layout().pages().get(0).places();
    PaperBox card = box(places, Place.What.MAT);
    PaperBox photo = box(places, Place.What.PHOTO);
    assertEquals(Length.inchFraction(1, 8), photo.x().minus(card.x()));
    assertEquals(Length.inchFraction(1, 8), card.bottom().minus(photo.bottom()));
  }

  @Test
  void aStoryWithoutACardGetsTheLargestPocketLeft() {
    List<Place> places = withStory(List.of(SMALL, SMALL), Orientation.PORTRAIT);
    assertEquals(PaperSize.inches(6, 4), box(places, Place.What.STORY).size());
    assertTrue(places.stream().noneMatch(place -> place.what() == Place.What.FREE));
  }

  @Test
  void onAFullPageThePictureMovesUpForTheStory() {
    List<Place> places = withStory(List.of(LARGE), Orientation.PORTRAIT);
    PaperBox story = box(places, Place.What.STORY);
    PaperBox photo = box(places, Place.What.PHOTO);
    assertApart(List.of(story, photo), PAGE, "picture and story");
    assertTrue(story.y().compareTo(photo.bottom()) > 0, story + " below " + photo);
    assertFalse(Length.inches(1).isLongerThan(story.height()), "too low to write in: " + story);
  }

  @Test
  void aFullPageWithoutRoomForAStoryStaysAsItIs() {
    List<Place> places = withStory(List.of(PaperSize.inches(6, 8)), Orientation.PORTRAIT);
    assertTrue(places.stream().noneMatch(place -> place.what() == Place.What.STORY));
  }

  @Test
  void aPageSaidToBeFullIsFullAndOneOfPocketsHasThem() {
    DayContents lying = day(1, List.of(LARGE), Orientation.LANDSCAPE);
    assertEquals("full", kind(formed(lying, PageForm.FULL)));
    DayContents small = day(1, List.of(SMALL), Orientation.PORTRAIT);
    assertEquals("one 4x6 and two 3x4", kind(formed(small, PageForm.POCKET)));
  }

  @Test
  void whatDoesNotFitTheFormIsSaidAndPlannedOnWhatHoldsIt() {
    List<PaperSize> beside = List.of(LARGE, PaperSize.inches(2, 2));
    PagePlanner.Plan plan = plan(formed(day(1, beside, Orientation.PORTRAIT), PageForm.POCKET));
    assertEquals(
        "4x6 portrait and 2x2 do not fit on a pocket page; it is planned on what holds it",
        plan.misfits().values().iterator().next());
    assertEquals("full", plan.layout().pages().get(0).kind());
  }

  @Test
  void onlyKindsAtHandAreTaken() {
    AlbumFile album =
        new AlbumFile(
            Optional.empty(), List.of(List.of(SMALL, SMALL, SMALL, SMALL)), Map.of(), List.of());
    PageSettings settings =
        new PageSettings(PAGE, PageSettings.Start.RIGHT, DayOfWeek.MONDAY, album);
    DayContents two = day(1, List.of(SMALL, SMALL), Orientation.PORTRAIT);
    assertEquals(
        "four 3x4", new PagePlanner(settings).plan(List.of(two)).layout().pages().get(0).kind());
  }

  @Test
  void aReadyMadePageKeepsItsPlaces() {
    BasePage base =
        AlbumFileParser.parse("base quay\n4x6 portrait on mat at 1, 1/2\nstory 3x1 at 1, 7")
            .base("quay")
            .orElseThrow();
    DayContents day =
        new DayContents(
            LocalDate.of(2026, 6, 3),
            base.spaces(),
            List.of(Orientation.PORTRAIT),
            List.of(),
            Optional.empty(),
            Optional.of(base),
            true);
    AlbumPage page = plan(day).layout().pages().get(0);
    assertEquals(Optional.of("quay"), page.base());
    assertEquals(base.photos().get(0).box(), box(page.places(), Place.What.MAT));
    assertEquals(base.story().orElseThrow(), box(page.places(), Place.What.STORY));
    assertTrue(page.places().stream().noneMatch(place -> place.what() == Place.What.FREE));
  }

  private static DayContents formed(DayContents day, PageForm form) {
    return new DayContents(
        day.day(),
        day.spaces(),
        day.ways(),
        day.cards(),
        Optional.of(form),
        Optional.empty(),
        false);
  }

  private static List<Place> withStory(List<PaperSize> sizes, Orientation way) {
    DayContents day = day(1, sizes, way);
    return plan(new DayContents(
            day.day(),
            day.spaces(),
            day.ways(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            true))
        .layout()
        .pages()
        .get(0)
        .places();
  }

  @Test
  void nothingOnAFullPageOverlapsOrLeavesIt() {
    List<PaperSize> sizes = List.of(SMALL, LARGE, PaperSize.inches(2, 3), PaperSize.inches(2, 2));
    for (int set = 1; set < 1 << 5; set++) {
      List<PaperSize> chosen = new ArrayList<>();
      for (int i = 0; i < 5; i++) {
        if ((set >> i & 1) == 1) {
          chosen.add(sizes.get(i % sizes.size()));
        }
      }
      for (Orientation way : List.of(Orientation.LANDSCAPE, Orientation.PORTRAIT)) {
        AlbumPage page = plan(day(1, chosen, way)).layout().pages().get(0);
        assertApart(page.places().stream().map(Place::box).toList(), PAGE, chosen + " " + way);
      }
    }
  }

  private static PaperBox box(List<Place> places, Place.What what) {
    return places.stream().filter(p -> p.what() == what).findFirst().orElseThrow().box();
  }

  private static void assertApart(List<PaperBox> boxes, PaperSize page, String what) {
    for (PaperBox box : boxes) {
      assertTrue(
          box.x().compareTo(Length.ZERO) >= 0
              && box.y().compareTo(Length.ZERO) >= 0
              && !box.right().isLongerThan(page.width())
              && !box.bottom().isLongerThan(page.height()),
          what + ": " + box);
      for (PaperBox other : boxes) {
        assertTrue(box == other || !box.overlaps(other), what + ": " + box + " " + other);
      }
    }
  }

  private static String kind(DayContents day) {
    return plan(day).layout().pages().get(0).kind();
  }

  private static PagePlanner.Plan plan(DayContents day) {
    return new PagePlanner(PageSettings.STANDARD).plan(List.of(day));
  }

  /** Spaces whose direction is fixed. */
  private static DayContents fixed(Space... spaces) {
    return new DayContents(
        LocalDate.of(2026, 6, 1),
        List.of(spaces),
        List.of(spaces).stream().map(space -> space.direction().orElseThrow()).toList(),
        List.of());
  }

  private static DayContents day(int number, List<PaperSize> sizes, Orientation way) {
    List<Orientation> ways =
        sizes.stream().map(size -> size.isSquare() ? Orientation.SQUARE : way).toList();
    return new DayContents(
        LocalDate.of(2026, 6, number), sizes.stream().map(Space::free).toList(), ways, List.of());
  }
}
