package org.daymount.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daymount.album.PageForm;
import org.daymount.album.Space;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * Which kinds of page hold a day's spaces and story cards: pockets where they would be at least
 * half filled, else a whole page that things are glued on. Fit is geometry, cards included.
 */
public final class PageFitter {
  /** Beyond it, of things that do not fit together the last are left away first. */
  private static final int MOST_SUBSETS = 10;

  private final PaperSize page;
  private final List<PageKind> kinds;

  public PageFitter(PaperSize page) {
    this(page, List.of());
  }

  public PageFitter(PageSettings settings) {
    this(settings.page(), settings.album().have());
  }

  /**
   * @param have pockets of the kinds at hand, none for the whole page; an empty list: all there are
   */
  private PageFitter(PaperSize page, List<List<PaperSize>> have) {
    this.page = page;
    this.kinds = have.isEmpty() ? PageKinds.of(page) : atHand(page, have);
  }

  private static List<PageKind> atHand(PaperSize page, List<List<PaperSize>> have) {
    List<PageKind> kinds = new ArrayList<>();
    for (PageKind kind : PageKinds.of(page)) {
      boolean isThere =
          have.stream()
              .anyMatch(
                  pockets ->
                      kind.isFull() && pockets.isEmpty()
                          || !pockets.isEmpty()
                              && PageKinds.withPockets(page, pockets)
                                  .filter(kind::equals)
                                  .isPresent());
      if (isThere || kind.isFull()) {
        kinds.add(kind); // a plain page to glue on is always at hand
      }
    }
    return kinds;
  }

  PaperSize page() {
    return page;
  }

  List<PageKind> kinds() {
    return kinds;
  }

  /** Of the kinds at hand, each size once. */
  public List<PaperSize> pockets() {
    return kinds.stream()
        .flatMap(kind -> kind.pockets().stream())
        .map(PaperBox::size)
        .distinct()
        .toList();
  }

  /**
   * The spaces with the directions that the page gives them. Several spaces divide the page: where
   * pockets hold them, the pockets say how they lie. A single one is left to its picture, unless it
   * fits only one way.
   */
  public List<Space> directed(List<Space> spaces, List<PaperSize> cards) {
    List<PageItem> items = new ArrayList<>();
    spaces.forEach(space -> items.add(PageItem.of(space)));
    cards.forEach(card -> items.add(PageItem.card(card)));
    if (fits(items).isEmpty()) {
      return lyingAs(mostThatFits(items), items, spaces);
    }
    if (spaces.size() > 1) {
      Optional<Arrangement> pockets =
          fits(items).stream()
              .filter(found -> !found.kind().isFull())
              .min(Comparator.comparingInt(found -> found.free().size()));
      if (pockets.isPresent()) {
        return lyingAs(all(items), items, spaces);
      }
    }
    List<Space> directed = new ArrayList<>();
    for (int i = 0; i < spaces.size(); i++) {
      Space space = spaces.get(i);
      List<Orientation> possible = new ArrayList<>();
      for (Orientation way : space.ways()) {
        List<PageItem> so = new ArrayList<>(items);
        so.set(i, items.get(i).lying(way));
        if (!fits(so).isEmpty()) {
          possible.add(way);
        }
      }
      boolean oneWay = space.ways().size() > 1 && possible.size() == 1;
      directed.add(oneWay ? lying(space, possible.get(0)) : space);
      if (oneWay) {
        items.set(i, items.get(i).lying(possible.get(0)));
      }
    }
    return directed;
  }

  /** The spaces that are held as they would lie; the others as they are. */
  private List<Space> lyingAs(List<Integer> held, List<PageItem> items, List<Space> spaces) {
    List<Space> lying = new ArrayList<>(spaces);
    List<Arrangement> found = fits(chosen(items, held));
    if (!held.isEmpty() && !found.isEmpty()) {
      List<PaperBox> boxes =
          found.stream()
              .min(Comparator.comparingInt(each -> each.free().size()))
              .orElseThrow()
              .boxes();
      for (int i = 0; i < held.size(); i++) {
        int space = held.get(i);
        if (space < spaces.size()) {
          lying.set(space, lying(spaces.get(space), boxes.get(i).size().direction()));
        }
      }
    }
    return lying;
  }

  static List<Integer> all(List<PageItem> items) {
    List<Integer> indexes = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      indexes.add(i);
    }
    return indexes;
  }

  private static Space lying(Space space, Orientation way) {
    // one that may lie on its side is left to its picture
    return space.direction().isPresent() || way == Orientation.SQUARE || space.onSide()
        ? space
        : new Space(space.size(), Optional.of(way), space.reveal());
  }

  /** The same on a page whose form was said; of pockets any that hold all, however empty. */
  List<Arrangement> fits(List<PageItem> items, Optional<PageForm> form) {
    if (form.filter(PageForm.FULL::equals).isPresent()) {
      return FullFit.fit(PageKind.full(page), items).stream().toList();
    }
    if (form.filter(PageForm.POCKET::equals).isPresent()) {
      List<Arrangement> found = inPockets(items, false);
      return found.isEmpty() ? inPockets(items, true) : found;
    }
    return fits(items);
  }

  private List<Arrangement> inPockets(List<PageItem> items, boolean looseToo) {
    return kinds.stream()
        .filter(kind -> !kind.isFull())
        .flatMap(kind -> PocketFit.fit(kind, items, looseToo).stream())
        .toList();
  }

  /** One arrangement for each kind that will do; none when nothing holds all of it. */
  List<Arrangement> fits(List<PageItem> items) {
    if (items.isEmpty()) {
      return kinds.stream()
          .map(kind -> new Arrangement(kind, List.of(), List.of(), kind.pockets()))
          .toList();
    }
    List<Arrangement> pockets =
        inPockets(items, false).stream().filter(Arrangement::isHalfFilled).toList();
    return pockets.isEmpty() ? FullFit.fit(PageKind.full(page), items).stream().toList() : pockets;
  }

  /** Indexes of as much as fits together: most pictures by their size, then most cards. */
  List<Integer> mostThatFits(List<PageItem> items) {
    int n = items.size();
    if (n > MOST_SUBSETS) {
      List<Integer> kept = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        kept.add(i);
        if (fits(chosen(items, kept)).isEmpty()) {
          kept.remove(kept.size() - 1);
        }
      }
      return kept;
    }
    List<Integer> best = List.of();
    double most = -1;
    for (int set = 0; set < 1 << n; set++) {
      List<Integer> kept = new ArrayList<>();
      double worth = 0;
      for (int i = 0; i < n; i++) {
        if ((set >> i & 1) == 1) {
          kept.add(i);
          double size = items.get(i).size().squareInches();
          worth += items.get(i).isCard() ? size / 1000 : size;
        }
      }
      if (worth > most && !fits(chosen(items, kept)).isEmpty()) {
        most = worth;
        best = kept;
      }
    }
    return best;
  }

  static List<PageItem> chosen(List<PageItem> items, List<Integer> indexes) {
    return indexes.stream().map(items::get).toList();
  }
}
