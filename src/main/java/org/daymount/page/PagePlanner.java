package org.daymount.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.daymount.album.BasePage;
import org.daymount.album.BasePlace;
import org.daymount.album.Space;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;

/** Gives every day its page and every page its leaf. */
public final class PagePlanner {
  /**
   * @param misfits per day, what does not fit on its page, with the nearest that does
   * @param withoutCards days whose pictures fit, but leave no place for their story cards
   */
  public record Plan(
      AlbumLayout layout, Map<LocalDate, String> misfits, List<LocalDate> withoutCards) {
    public Plan {
      withoutCards = List.copyOf(withoutCards);
    }
  }

  /** A day with the arrangements that will do, and which of its things they hold. */
  private record Fitted(DayContents contents, List<Integer> held, Map<String, Arrangement> byKind) {
    LeafPlanner.Candidate candidate() {
      Map<String, Integer> empty = new LinkedHashMap<>();
      byKind.forEach(
          (kind, arrangement) ->
              empty.put(kind, arrangement.kind().isFull() ? 0 : arrangement.free().size()));
      return new LeafPlanner.Candidate(empty);
    }
  }

  private final PageSettings settings;
  private final PageFitter fitter;
  private final Misfit misfit;

  public PagePlanner(PageSettings settings) {
    this.settings = settings;
    this.fitter = new PageFitter(settings);
    this.misfit = new Misfit(fitter, settings.units());
  }

  /**
   * @param days that have a page, in order
   */
  public Plan plan(List<DayContents> days) {
    Map<LocalDate, String> misfits = new LinkedHashMap<>();
    List<LocalDate> withoutCards =
        days.stream().filter(this::lacksRoomForCards).map(DayContents::day).toList();
    List<Fitted> fitted = days.stream().map(day -> fitted(day, misfits)).toList();
    Map<String, Integer> pockets = new LinkedHashMap<>();
    fitter.kinds().forEach(kind -> pockets.put(kind.name(), kind.pockets().size()));
    boolean firstAlone = settings.start() == PageSettings.Start.LEFT;
    List<AlbumPage> pages = new ArrayList<>();
    List<Leaf> leaves = new ArrayList<>();
    List<LeafPlanner.Candidate> candidates = fitted.stream().map(Fitted::candidate).toList();
    for (LeafPlanner.Choice choice : new LeafPlanner(pockets, firstAlone).plan(candidates)) {
      int number = leaves.size() + 1;
      boolean onBack = firstAlone && choice.first() == 0;
      Fitted first = fitted.get(choice.first());
      pages.add(page(first, choice.kind(), number, onBack ? Leaf.Side.BACK : Leaf.Side.FRONT));
      Optional<LocalDate> second = Optional.empty();
      if (choice.pages() == 2) {
        Fitted other = fitted.get(choice.first() + 1);
        pages.add(page(other, choice.kind(), number, Leaf.Side.BACK));
        second = Optional.of(other.contents().day());
      }
      Optional<LocalDate> day = Optional.of(first.contents().day());
      leaves.add(
          onBack
              ? new Leaf(number, choice.kind(), Optional.empty(), day)
              : new Leaf(number, choice.kind(), day, second));
    }
    withoutCards.forEach(misfits::remove);
    return new Plan(new AlbumLayout(settings, pages, leaves), misfits, withoutCards);
  }

  private boolean lacksRoomForCards(DayContents day) {
    List<PageItem> items = day.items();
    List<PageItem> pictures = items.subList(0, day.spaces().size());
    return day.base().isEmpty()
        && !day.cards().isEmpty()
        && fitter.fits(items).isEmpty()
        && !fitter.fits(pictures).isEmpty();
  }

  private Fitted fitted(DayContents day, Map<LocalDate, String> misfits) {
    if (day.base().isPresent()) {
      return onBase(day, day.base().get());
    }
    List<PageItem> items = day.items();
    List<Integer> held = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      held.add(i);
    }
    List<Arrangement> found = fitter.fits(items, day.form());
    if (found.isEmpty() && day.form().isPresent() && !fitter.fits(items).isEmpty()) {
      misfits.put(
          day.day(), misfit.notOn(day.form().get(), items) + "; it is planned on what holds it");
      found = fitter.fits(items);
    }
    if (found.isEmpty()) {
      misfits.put(day.day(), misfit.whyNot(items));
      held = fitter.mostThatFits(items);
      found = fitter.fits(PageFitter.chosen(items, held));
    }
    return new Fitted(
        day,
        held,
        withStoryRoom(found, PageFitter.chosen(items, held), day.storyByHand()).stream()
            .collect(
                Collectors.toMap(
                    arrangement -> arrangement.kind().name(),
                    Function.identity(),
                    (a, b) -> a,
                    LinkedHashMap::new)));
  }

  /** Everything lies where the ready-made page has its places. */
  private Fitted onBase(DayContents day, BasePage base) {
    List<PaperBox> boxes = new ArrayList<>();
    List<Integer> held = new ArrayList<>();
    for (int i = 0; i < day.spaces().size(); i++) {
      boxes.add(base.photos().get(i).box());
      held.add(i);
    }
    if (!day.cards().isEmpty() && base.story().isPresent()) {
      held.add(day.spaces().size());
      boxes.add(PocketFit.centred(day.cards().get(0), base.story().get()));
    }
    List<PaperBox> free =
        base.places().stream().map(BasePlace::box).filter(box -> !boxes.contains(box)).toList();
    List<Boolean> turned = new ArrayList<>();
    for (int i = 0; i < boxes.size(); i++) {
      turned.add(i < day.spaces().size() && base.photos().get(i).onSide());
    }
    PageKind full = PageKind.full(settings.page());
    return new Fitted(day, held, Map.of(PageKind.FULL, new Arrangement(full, boxes, turned, free)));
  }

  /** On a whole page things move together to leave room for a story; a pocket is there anyway. */
  private static List<Arrangement> withStoryRoom(
      List<Arrangement> found, List<PageItem> items, boolean storyByHand) {
    return found.stream()
        .map(
            arrangement ->
                storyByHand && arrangement.kind().isFull()
                    ? FullFit.fitAboveStory(arrangement.kind(), items).orElse(arrangement)
                    : arrangement)
        .toList();
  }

  private static AlbumPage page(Fitted day, String kind, int leaf, Leaf.Side side) {
    Arrangement arrangement = day.byKind().get(kind);
    List<Place> places = new ArrayList<>();
    Optional<PaperBox> story =
        day.contents().storyByHand() ? storyPlace(day.contents(), arrangement) : Optional.empty();
    arrangement.free().stream()
        .filter(box -> story.stream().noneMatch(box::equals))
        .forEach(box -> places.add(Place.free(box)));
    story.ifPresent(box -> places.add(Place.storyByHand(box)));
    List<Space> spaces = day.contents().spaces();
    for (int i = 0; i < day.held().size(); i++) {
      int item = day.held().get(i);
      PaperBox box = arrangement.boxes().get(i);
      boolean turned = arrangement.turned().get(i);
      if (item >= spaces.size()) {
        places.add(Place.of(Place.What.STORY, box, item - spaces.size(), turned));
        continue;
      }
      Optional<Length> reveal = spaces.get(item).reveal();
      if (reveal.isPresent()) {
        places.add(Place.of(Place.What.MAT, box, item, turned));
      }
      PaperBox inside =
          PaperBox.at(
              box.x().plus(reveal.orElse(Length.ZERO)),
              box.y().plus(reveal.orElse(Length.ZERO)),
              box.size().inset(reveal.orElse(Length.ZERO)));
      places.add(Place.of(Place.What.PHOTO, inside, item, turned));
    }
    return new AlbumPage(
        day.contents().day(),
        kind,
        day.contents().base().map(BasePage::name),
        leaf,
        side,
        arrangement.kind().pockets(),
        places);
  }

  /** The ready-made page's own, else the largest that is left. */
  private static Optional<PaperBox> storyPlace(DayContents day, Arrangement arrangement) {
    return day.base().isPresent()
        ? day.base().get().story()
        : arrangement.free().stream()
            .max(Comparator.comparingDouble(box -> box.size().squareInches()));
  }
}
