package org.daymount.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * Items glued on a whole page, side by side and one below the other: every way to join them in rows
 * and columns is looked at (the guillotine arrangements), what comes first in the day above or to
 * the left. What room is left is shared out between them.
 */
final class FullFit {
  /** Beyond it, joins are only looked at in the order of the items. */
  private static final int MOST_FREELY = 7;

  /** Between things that could stand further apart. */
  private static final Length WIDEST_GAP = Length.inchFraction(1, 2);

  /** Items joined; of one item, the item. */
  private record Block(
      PaperSize size, int item, PageItem.Shape shape, boolean inColumn, List<Block> parts) {
    static Block of(int item, PageItem.Shape shape) {
      return new Block(shape.size(), item, shape, false, List.of());
    }

    static Block join(Block first, Block second, boolean inColumn) {
      Length width =
          inColumn
              ? first.size.width().max(second.size.width())
              : first.size.width().plus(second.size.width());
      Length height =
          inColumn
              ? first.size.height().plus(second.size.height())
              : first.size.height().max(second.size.height());
      List<Block> parts = new ArrayList<>();
      for (Block part : List.of(first, second)) {
        if (!part.parts.isEmpty() && part.inColumn == inColumn) {
          parts.addAll(part.parts);
        } else {
          parts.add(part);
        }
      }
      return new Block(new PaperSize(width, height), -1, null, inColumn, parts);
    }
  }

  private final PageKind kind;
  private final List<PageItem> items;
  private final PaperBox[] at;
  private final Boolean[] turned;

  private FullFit(PageKind kind, List<PageItem> items) {
    this.kind = kind;
    this.items = items;
    this.at = new PaperBox[items.size()];
    this.turned = new Boolean[items.size()];
  }

  /** Room for a story that is written by hand: this tall at least, and at most. */
  private static final Length STORY_LEAST = Length.inches(1);

  private static final Length STORY_MOST = Length.inchFraction(5, 2);
  private static final Length STORY_MARGIN = Length.inchFraction(1, 2);
  private static final Length STORY_GAP = Length.inchFraction(1, 4);

  /**
   * All items in the upper part of the page, and below them a free place for the story.
   *
   * @return empty where no such place is left
   */
  static Optional<Arrangement> fitAboveStory(PageKind kind, List<PageItem> items) {
    Length across = kind.page().width().minus(STORY_MARGIN.times(2));
    if (items.isEmpty()) {
      PaperSize whole = kind.page().inset(STORY_MARGIN);
      PaperBox box = PaperBox.at(STORY_MARGIN, STORY_MARGIN, whole);
      return Optional.of(new Arrangement(kind, List.of(), List.of(), List.of(box)));
    }
    FullFit fit = new FullFit(kind, items);
    return fit.blocks().stream()
        .min(Comparator.comparing(block -> block.size().height()))
        .filter(
            block ->
                !STORY_LEAST
                    .plus(STORY_GAP.times(3))
                    .isLongerThan(kind.page().height().minus(block.size().height())))
        .map(
            block -> {
              Length left = kind.page().height().minus(block.size().height());
              Length tall = left.minus(STORY_GAP.times(3)).min(STORY_MOST);
              Length top = kind.page().height().minus(STORY_GAP).minus(tall);
              PaperSize room = new PaperSize(kind.page().width(), top);
              fit.place(block, PaperBox.at(Length.ZERO, Length.ZERO, room));
              PaperBox story = new PaperBox(STORY_MARGIN, top, across, tall);
              return new Arrangement(
                  kind, List.of(fit.at), Arrays.asList(fit.turned), List.of(story));
            });
  }

  static Optional<Arrangement> fit(PageKind kind, List<PageItem> items) {
    if (items.isEmpty()) {
      return Optional.of(new Arrangement(kind, List.of(), List.of(), List.of()));
    }
    FullFit fit = new FullFit(kind, items);
    return fit.blocks().stream().min(Comparator.comparingDouble(fit::imbalance)).map(fit::placed);
  }

  /** All smallest joins of all the items that the page holds. */
  private List<Block> blocks() {
    int n = items.size();
    if (n > MOST_FREELY) {
      return inOrder();
    }
    List<List<Block>> of = new ArrayList<>();
    of.add(List.of());
    for (int set = 1; set < 1 << n; set++) {
      List<Block> found = new ArrayList<>();
      if (Integer.bitCount(set) == 1) {
        single(Integer.numberOfTrailingZeros(set), found);
      }
      int lowest = Integer.lowestOneBit(set);
      for (int first = set - 1 & set; first > 0; first = first - 1 & set) {
        if ((first & lowest) != 0) {
          join(of.get(first), of.get(set & ~first), found);
        }
      }
      of.add(found);
    }
    return of.get((1 << n) - 1);
  }

  /** Joins of neighbours only. */
  private List<Block> inOrder() {
    int n = items.size();
    List<List<List<Block>>> of = new ArrayList<>();
    for (int from = 0; from < n; from++) {
      of.add(new ArrayList<>());
    }
    for (int length = 1; length <= n; length++) {
      for (int from = 0; from + length <= n; from++) {
        List<Block> found = new ArrayList<>();
        if (length == 1) {
          single(from, found);
        }
        for (int part = 1; part < length; part++) {
          join(of.get(from).get(part - 1), of.get(from + part).get(length - part - 1), found);
        }
        of.get(from).add(found);
      }
    }
    return of.get(0).get(n - 1);
  }

  private void single(int item, List<Block> found) {
    items.get(item).shapes().forEach(shape -> add(Block.of(item, shape), found));
  }

  private void join(List<Block> firsts, List<Block> seconds, List<Block> found) {
    for (Block first : firsts) {
      for (Block second : seconds) {
        add(Block.join(first, second, true), found);
        add(Block.join(first, second, false), found);
      }
    }
  }

  /** Keeps those that no other is smaller than both ways. */
  private void add(Block block, List<Block> found) {
    if (!block.size().fitsInto(kind.page())
        || found.stream().anyMatch(other -> other.size().fitsInto(block.size()))) {
      return;
    }
    found.removeIf(other -> block.size().fitsInto(other.size()));
    found.add(block);
  }

  /** How unequal the margins are. */
  private double imbalance(Block block) {
    double across = kind.page().width().minus(block.size().width()).inInches();
    double down = kind.page().height().minus(block.size().height()).inInches();
    return Math.abs(across - down);
  }

  private Arrangement placed(Block block) {
    place(block, PaperBox.at(Length.ZERO, Length.ZERO, kind.page()));
    return new Arrangement(kind, List.of(at), Arrays.asList(turned), List.of());
  }

  private void place(Block block, PaperBox room) {
    if (block.parts().isEmpty()) {
      at[block.item()] = PocketFit.centred(block.size(), room);
      turned[block.item()] = block.shape().turned();
      return;
    }
    Length slack =
        block.inColumn()
            ? room.height().minus(sum(block, true))
            : room.width().minus(sum(block, false));
    int parts = block.parts().size();
    Length gap = new Length(slack.nanometres() / (parts + 1)).min(WIDEST_GAP);
    Length at =
        (block.inColumn() ? room.y() : room.x()).plus(slack.minus(gap.times(parts - 1)).half());
    for (Block part : block.parts()) {
      Length length = block.inColumn() ? part.size().height() : part.size().width();
      place(
          part,
          block.inColumn()
              ? new PaperBox(room.x(), at, room.width(), length)
              : new PaperBox(at, room.y(), length, room.height()));
      at = at.plus(length).plus(gap);
    }
  }

  private static Length sum(Block block, boolean heights) {
    Length sum = Length.ZERO;
    for (Block part : block.parts()) {
      sum = sum.plus(heights ? part.size().height() : part.size().width());
    }
    return sum;
  }
}
