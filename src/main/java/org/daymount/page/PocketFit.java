package org.daymount.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/** Items into pockets, each into one of its own; of all ways the one that wastes least. */
final class PocketFit {
  /** A pocket is made a little larger than its name (common practice, no source). */
  private static final Length EASE = Length.inchFraction(1, 16);

  /** Of the pocket's size; anything smaller slides about in it. */
  private static final double AT_HOME = 0.75;

  private final PageKind kind;
  private final List<PageItem> items;
  private final boolean looseToo;
  private final PaperBox[] at;
  private final boolean[] turned;
  private double least = Double.MAX_VALUE;
  private Optional<Arrangement> best = Optional.empty();

  private PocketFit(PageKind kind, List<PageItem> items, boolean looseToo) {
    this.kind = kind;
    this.items = items;
    this.looseToo = looseToo;
    this.at = new PaperBox[items.size()];
    this.turned = new boolean[items.size()];
  }

  /**
   * @param looseToo whether things that are much smaller than their pocket will do
   */
  static Optional<Arrangement> fit(PageKind kind, List<PageItem> items, boolean looseToo) {
    if (items.size() > kind.pockets().size()) {
      return Optional.empty();
    }
    PocketFit fit = new PocketFit(kind, items, looseToo);
    fit.place(0, 0, 0);
    return fit.best;
  }

  /** Whether a pocket of one size is meant for things of the other, either way up. */
  static boolean isAtHome(PaperSize size, PaperSize pocket) {
    return (fits(size, pocket) || fits(size.turned(), pocket))
        && size.squareInches() >= AT_HOME * pocket.squareInches();
  }

  private static boolean fits(PaperSize size, PaperSize pocket) {
    return size.fitsInto(new PaperSize(pocket.width().plus(EASE), pocket.height().plus(EASE)));
  }

  private void place(int item, long taken, double waste) {
    if (waste >= least) {
      return;
    }
    if (item == items.size()) {
      least = waste;
      best = Optional.of(found(taken));
      return;
    }
    List<PaperSize> tried = new ArrayList<>();
    for (int p = 0; p < kind.pockets().size(); p++) {
      PaperBox pocket = kind.pockets().get(p);
      if ((taken >> p & 1) == 1 || tried.contains(pocket.size())) {
        continue; // pockets of one size are taken in reading order
      }
      tried.add(pocket.size());
      for (PageItem.Shape shape : items.get(item).shapes()) {
        if (fits(shape.size(), pocket.size())
            && (looseToo || isAtHome(shape.size(), pocket.size()))) {
          at[item] = centred(shape.size(), pocket);
          turned[item] = shape.turned();
          double lost = pocket.size().squareInches() - shape.size().squareInches();
          place(item + 1, taken | 1L << p, waste + lost + (shape.turned() ? 1e-3 : 0));
        }
      }
    }
  }

  private Arrangement found(long taken) {
    List<PaperBox> free = new ArrayList<>();
    for (int p = 0; p < kind.pockets().size(); p++) {
      if ((taken >> p & 1) == 0) {
        free.add(kind.pockets().get(p));
      }
    }
    List<Boolean> sides = new ArrayList<>();
    for (boolean side : turned) {
      sides.add(side);
    }
    return new Arrangement(kind, List.of(at.clone()), sides, free);
  }

  static PaperBox centred(PaperSize size, PaperBox room) {
    return PaperBox.at(
        room.x().plus(room.width().minus(size.width()).half()),
        room.y().plus(room.height().minus(size.height()).half()),
        size);
  }
}
