package org.daymount.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.album.BasePage;
import org.daymount.album.PageForm;
import org.daymount.album.Space;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/**
 * What one day's page is to hold.
 *
 * @param ways for each space, the way its picture lies
 * @param cards sizes of the day's story cards
 * @param form of the page, when it was said
 * @param base the ready-made page that all of it lies on
 * @param storyByHand whether there is a story that no card carries: a free place is kept for it
 */
public record DayContents(
    LocalDate day,
    List<Space> spaces,
    List<Orientation> ways,
    List<PaperSize> cards,
    Optional<PageForm> form,
    Optional<BasePage> base,
    boolean storyByHand) {
  /** Without a story to write by hand. */
  public DayContents(
      LocalDate day, List<Space> spaces, List<Orientation> ways, List<PaperSize> cards) {
    this(day, spaces, ways, cards, Optional.empty(), Optional.empty(), false);
  }

  public DayContents {
    spaces = List.copyOf(spaces);
    ways = List.copyOf(ways);
    cards = List.copyOf(cards);
    if (spaces.size() != ways.size()) {
      throw new IllegalArgumentException(day + ": " + spaces.size() + " spaces, " + ways.size());
    }
  }

  /** The spaces, then the cards. */
  List<PageItem> items() {
    List<PageItem> items = new ArrayList<>();
    for (int i = 0; i < spaces.size(); i++) {
      items.add(PageItem.of(spaces.get(i), ways.get(i)));
    }
    cards.forEach(card -> items.add(PageItem.card(card)));
    return items;
  }
}
