package org.daymount.sheet;

import java.util.ArrayList;
import java.util.List;
import org.daymount.sheet.Cut.Axis;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * Gives every piece its place and lists the cuts in the order they are made. Waste is trimmed off a
 * part before the part is cut up, so that one cut serves all pieces along that edge.
 */
final class SheetLayout {
  private final Length labTrim;
  private final Length roomy;
  private final List<PlacedPiece> pieces = new ArrayList<>();
  private final List<Cut> cuts = new ArrayList<>();

  /**
   * @param roomy kept free around all pieces together, if there is as much waste
   */
  SheetLayout(Length labTrim, Length roomy) {
    this.labTrim = labTrim;
    this.roomy = roomy;
  }

  Sheet lay(FilledTree tree, PaperSize sheet) {
    PaperBox whole = PaperBox.at(Length.ZERO, Length.ZERO, sheet);
    lay(tree, whole, Margins.of(roomy), Margins.of(labTrim));
    return new Sheet(sheet, pieces, cuts);
  }

  private void lay(FilledTree tree, PaperBox room, Margins wanted) {
    lay(tree, room, wanted, wanted);
  }

  /**
   * @param needed by what lies inside
   */
  private void lay(FilledTree tree, PaperBox room, Margins wanted, Margins needed) {
    PaperSize extent = tree.extent();
    Length wasteAcross = room.width().minus(extent.width());
    Length wasteDown = room.height().minus(extent.height());
    Length left = nearShare(wasteAcross, wanted.left(), wanted.right());
    Length top = nearShare(wasteDown, wanted.top(), wanted.bottom());
    PaperBox box = PaperBox.at(room.x().plus(left), room.y().plus(top), extent);
    trim(room, box);
    Margins still = needed.lessBy(left, top, wasteAcross.minus(left), wasteDown.minus(top));
    if (tree instanceof FilledTree.Join join) {
      if (join.axis() == Axis.X) {
        layBeside(join, box, still);
      } else {
        layBelow(join, box, still);
      }
    } else if (tree instanceof FilledTree.Leaf leaf) {
      pieces.add(new PlacedPiece(leaf.piece(), box, leaf.turned()));
    }
  }

  private void trim(PaperBox room, PaperBox box) {
    if (box.x().isLongerThan(room.x())) {
      cuts.add(new Cut(Axis.X, box.x(), room.y(), room.bottom()));
    }
    if (room.right().isLongerThan(box.right())) {
      cuts.add(new Cut(Axis.X, box.right(), room.y(), room.bottom()));
    }
    if (box.y().isLongerThan(room.y())) {
      cuts.add(new Cut(Axis.Y, box.y(), box.x(), box.right()));
    }
    if (room.bottom().isLongerThan(box.bottom())) {
      cuts.add(new Cut(Axis.Y, box.bottom(), box.x(), box.right()));
    }
  }

  private void layBeside(FilledTree.Join join, PaperBox box, Margins wanted) {
    Length width = join.first().extent().width();
    Length at = box.x().plus(width);
    cuts.add(new Cut(Axis.X, at, box.y(), box.bottom()));
    lay(join.first(), new PaperBox(box.x(), box.y(), width, box.height()), wanted.noRight());
    lay(
        join.second(),
        new PaperBox(at, box.y(), box.width().minus(width), box.height()),
        wanted.noLeft());
  }

  private void layBelow(FilledTree.Join join, PaperBox box, Margins wanted) {
    Length height = join.first().extent().height();
    Length at = box.y().plus(height);
    cuts.add(new Cut(Axis.Y, at, box.x(), box.right()));
    lay(join.first(), new PaperBox(box.x(), box.y(), box.width(), height), wanted.noBottom());
    lay(
        join.second(),
        new PaperBox(box.x(), at, box.width(), box.height().minus(height)),
        wanted.noTop());
  }

  /** How much waste goes to the near edge: what is wanted there, or a fair share if it is short. */
  private static Length nearShare(Length waste, Length near, Length far) {
    Length both = near.plus(far);
    if (!both.isLongerThan(waste)) {
      return near;
    }
    return new Length(
        Math.multiplyExact(waste.nanometres(), near.nanometres()) / both.nanometres());
  }

  /** Distances still wanted between a part's pieces and its edges; zero at inner edges. */
  private record Margins(Length left, Length top, Length right, Length bottom) {
    static Margins of(Length all) {
      return new Margins(all, all, all, all);
    }

    Margins lessBy(Length byLeft, Length byTop, Length byRight, Length byBottom) {
      return new Margins(
          rest(left, byLeft), rest(top, byTop), rest(right, byRight), rest(bottom, byBottom));
    }

    Margins noLeft() {
      return new Margins(Length.ZERO, top, right, bottom);
    }

    Margins noTop() {
      return new Margins(left, Length.ZERO, right, bottom);
    }

    Margins noRight() {
      return new Margins(left, top, Length.ZERO, bottom);
    }

    Margins noBottom() {
      return new Margins(left, top, right, Length.ZERO);
    }

    private static Length rest(Length wanted, Length given) {
      return wanted.minus(given).max(Length.ZERO);
    }
  }
}
