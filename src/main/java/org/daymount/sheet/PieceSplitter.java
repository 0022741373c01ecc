package org.daymount.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * Divides a piece that is larger than the sheet into parts that meet exactly: 6 x 8 in on 4 x 6 in
 * sheets becomes two parts of 6 x 4 in.
 *
 * <p>The parts are the fewest that straight joins allow: equal parts in rows and columns, or, if
 * that saves a part, unequal ones. A piece that fits the sheet, upright or turned, stays whole.
 */
public final class PieceSplitter {
  private static final int MOST_PARTS = 40; // beyond it only rows and columns are looked at

  /**
   * A part of a piece.
   *
   * @param piece what is cut out of a sheet. The label of a whole piece stays; parts are numbered
   *     {@code 07a-1}, {@code 07a-2}, … from left to right and top to bottom
   * @param within its place in the whole, from the whole's top left corner
   */
  public record Part(Piece piece, PaperBox within) {}

  /**
   * @param sheet upright or lying
   * @return one part if the piece fits
   */
  public List<Part> split(Piece piece, PaperSize sheet) {
    if (piece.size().fitsEitherWayInto(sheet)) {
      return List.of(new Part(piece, whole(piece.size())));
    }
    List<PaperBox> boxes = new ArrayList<>(boxes(piece.size(), sheet));
    boxes.sort(Comparator.comparing(PaperBox::y).thenComparing(PaperBox::x));
    List<Part> parts = new ArrayList<>();
    for (PaperBox box : boxes) {
      String label = piece.label() + "-" + (parts.size() + 1);
      parts.add(new Part(new Piece(label, box.size(), piece.order()), box));
    }
    return List.copyOf(parts);
  }

  private static List<PaperBox> boxes(PaperSize piece, PaperSize sheet) {
    List<PaperBox> equal = rowsAndColumns(piece, sheet);
    double atLeast = piece.squareInches() / sheet.squareInches();
    if (equal.size() > MOST_PARTS || equal.size() - 1 < atLeast - 1e-9) {
      return equal;
    }
    List<PaperBox> unequal = new Joins(sheet).fewest(whole(piece));
    return unequal.size() < equal.size() ? unequal : equal;
  }

  private static List<PaperBox> rowsAndColumns(PaperSize piece, PaperSize sheet) {
    Grid upright = Grid.of(piece, sheet);
    Grid turned = Grid.of(piece, sheet.turned());
    return (turned.parts() < upright.parts() ? turned : upright).boxes(piece);
  }

  private static PaperBox whole(PaperSize size) {
    return PaperBox.at(Length.ZERO, Length.ZERO, size);
  }

  private record Grid(long columns, long rows) {
    static Grid of(PaperSize piece, PaperSize cell) {
      return new Grid(
          CuttingStockSolver.ceilingOf(piece.width().nanometres(), cell.width().nanometres()),
          CuttingStockSolver.ceilingOf(piece.height().nanometres(), cell.height().nanometres()));
    }

    long parts() {
      return columns * rows;
    }

    List<PaperBox> boxes(PaperSize piece) {
      List<PaperBox> boxes = new ArrayList<>();
      for (long row = 0; row < rows; row++) {
        Length top = share(piece.height(), row, rows);
        Length bottom = share(piece.height(), row + 1, rows);
        for (long column = 0; column < columns; column++) {
          Length left = share(piece.width(), column, columns);
          Length right = share(piece.width(), column + 1, columns);
          boxes.add(new PaperBox(left, top, right.minus(left), bottom.minus(top)));
        }
      }
      return boxes;
    }

    /** Whole nanometres, so that parts meet; a part is never longer than its share rounded up. */
    private static Length share(Length whole, long number, long of) {
      return new Length(Math.multiplyExact(whole.nanometres(), number) / of);
    }
  }

  /**
   * The fewest parts by joins that run straight through, each part as large as the sheet can be.
   */
  private static final class Joins {
    private final PaperSize sheet;
    private final Map<PaperSize, List<PaperBox>> known = new HashMap<>();

    Joins(PaperSize sheet) {
      this.sheet = sheet;
    }

    List<PaperBox> fewest(PaperBox part) {
      List<PaperBox> atCorner = known.get(part.size());
      if (atCorner == null) {
        atCorner = search(part.size());
        known.put(part.size(), atCorner);
      }
      return atCorner.stream().map(box -> moved(box, part.x(), part.y())).toList();
    }

    private List<PaperBox> search(PaperSize size) {
      if (size.fitsEitherWayInto(sheet)) {
        return List.of(whole(size));
      }
      List<PaperBox> best = List.of();
      for (Length at : positions(size.width())) {
        best =
            fewer(
                best,
                new PaperBox(Length.ZERO, Length.ZERO, at, size.height()),
                new PaperBox(at, Length.ZERO, size.width().minus(at), size.height()));
      }
      for (Length at : positions(size.height())) {
        best =
            fewer(
                best,
                new PaperBox(Length.ZERO, Length.ZERO, size.width(), at),
                new PaperBox(Length.ZERO, at, size.width(), size.height().minus(at)));
      }
      return best;
    }

    private List<PaperBox> fewer(List<PaperBox> best, PaperBox first, PaperBox second) {
      List<PaperBox> both = new ArrayList<>(fewest(first));
      both.addAll(fewest(second));
      return best.isEmpty() || both.size() < best.size() ? both : best;
    }

    /** Sums of sheet sides; a join elsewhere would only leave a part smaller than it could be. */
    private TreeSet<Length> positions(Length limit) {
      TreeSet<Length> sums = new TreeSet<>();
      for (Length across = Length.ZERO;
          limit.isLongerThan(across);
          across = across.plus(sheet.width())) {
        for (Length sum = across; limit.isLongerThan(sum); sum = sum.plus(sheet.height())) {
          sums.add(sum);
        }
      }
      sums.remove(Length.ZERO);
      return sums;
    }

    private static PaperBox moved(PaperBox box, Length right, Length down) {
      return new PaperBox(box.x().plus(right), box.y().plus(down), box.width(), box.height());
    }
  }
}
