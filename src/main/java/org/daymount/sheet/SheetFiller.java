package org.daymount.sheet;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.daymount.sheet.Cut.Axis;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/** Puts given pieces into a pattern's slots and lays the sheet so that most of them are upright. */
final class SheetFiller {
  private final SheetSettings settings;

  SheetFiller(SheetSettings settings) {
    this.settings = settings;
  }

  /**
   * @param tree a way to cut the sheet in its own direction
   * @param pieces by kind, in the order they are wanted; no more than there are slots
   */
  Sheet fill(GuillotineTree tree, List<List<Piece>> pieces) {
    PaperSize asIs = settings.sheet();
    PaperSize usable = settings.usable();
    FilledTree plain = filled(tree, false, pieces).uprightWithin(usable);
    if (asIs.isSquare()) {
      return laid(plain, asIs);
    }
    FilledTree onItsSide = filled(tree, true, pieces).uprightWithin(usable.turned());
    return onItsSide.turnedPieces() < plain.turnedPieces()
        ? laid(onItsSide, asIs.turned())
        : laid(plain, asIs);
  }

  private Sheet laid(FilledTree tree, PaperSize sheet) {
    return new SheetLayout(settings.rim(), settings.roomyRim()).lay(SharedTrims.in(tree), sheet);
  }

  private static FilledTree filled(
      GuillotineTree tree, boolean onItsSide, List<List<Piece>> pieces) {
    List<GuillotineTree.Slot> slots = new ArrayList<>();
    collect(tree, slots);
    List<Optional<FilledTree>> contents = new ArrayList<>();
    slots.forEach(slot -> contents.add(Optional.empty()));
    List<List<Piece>> left = new ArrayList<>();
    pieces.forEach(kind -> left.add(new ArrayList<>(kind)));
    for (boolean onlyUpright : new boolean[] {true, false}) {
      for (int i = 0; i < slots.size(); i++) {
        if (contents.get(i).isEmpty()) {
          boolean standing = slots.get(i).turned() == onItsSide;
          contents.set(i, take(left.get(slots.get(i).kind()), standing, onlyUpright));
        }
      }
    }
    if (left.stream().anyMatch(kind -> !kind.isEmpty())) {
      throw new IllegalArgumentException("the sheet has too few places for " + left);
    }
    return join(tree, onItsSide, contents.iterator()).orElseThrow();
  }

  /** The first piece that is wanted, or that lies in the slot as it is. */
  private static Optional<FilledTree> take(
      List<Piece> pieces, boolean standing, boolean onlyUpright) {
    Orientation lying = standing ? Orientation.PORTRAIT : Orientation.LANDSCAPE;
    for (Piece piece : pieces) {
      boolean turned = piece.size().direction() == lying.other();
      if (!turned || !onlyUpright) {
        pieces.remove(piece);
        return Optional.of(new FilledTree.Leaf(piece, turned));
      }
    }
    return Optional.empty();
  }

  private static void collect(GuillotineTree tree, List<GuillotineTree.Slot> into) {
    if (tree instanceof GuillotineTree.Split split) {
      collect(split.first(), into);
      collect(split.second(), into);
    } else {
      into.add((GuillotineTree.Slot) tree);
    }
  }

  private static Optional<FilledTree> join(
      GuillotineTree tree, boolean onItsSide, Iterator<Optional<FilledTree>> contents) {
    if (!(tree instanceof GuillotineTree.Split split)) {
      return contents.next();
    }
    Optional<FilledTree> first = join(split.first(), onItsSide, contents);
    Optional<FilledTree> second = join(split.second(), onItsSide, contents);
    if (first.isEmpty() || second.isEmpty()) {
      return first.or(() -> second); // nothing on one side: no cut
    }
    boolean across = (split.axis() == Axis.X) != onItsSide;
    return Optional.of(new FilledTree.Join(across ? Axis.X : Axis.Y, first.get(), second.get()));
  }
}
