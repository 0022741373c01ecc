package org.daymount.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.daymount.sheet.Cut.Axis;

/**
 * First fit, largest pieces first: quick for any number of sizes, but with no proof. Each piece
 * goes to the first part left over that holds it, and the rest of that part is cut in two.
 */
final class FirstFit {
  private final CuttingInstance wanted;
  private final List<Room> sheets = new ArrayList<>();

  private FirstFit(CuttingInstance wanted) {
    this.wanted = wanted;
  }

  /** One pattern for each sheet, in order; together they give the demand exactly. */
  static List<Pattern> pack(CuttingInstance wanted) {
    FirstFit packing = new FirstFit(wanted);
    List<Integer> largestFirst =
        IntStream.range(0, wanted.kinds().size())
            .boxed()
            .sorted(Comparator.comparingLong((Integer kind) -> -wanted.kinds().get(kind).area()))
            .toList();
    for (int kind : largestFirst) {
      packing.place(kind, wanted.demand()[kind]);
    }
    return packing.sheets.stream()
        .map(sheet -> new Pattern(sheet.counts(wanted.kinds().size()), sheet.tree().orElseThrow()))
        .toList();
  }

  private void place(int kind, int howMany) {
    int from = 0; // a sheet that held none of a kind will hold none of the next of that kind
    for (int n = 0; n < howMany; n++) {
      while (from < sheets.size() && !sheets.get(from).place(kind, wanted.kinds().get(kind))) {
        from++;
      }
      if (from == sheets.size()) {
        Room sheet = new Room(wanted.width(), wanted.height());
        if (!sheet.place(kind, wanted.kinds().get(kind))) {
          throw new IllegalArgumentException("kind " + kind + " does not fit the sheet");
        }
        sheets.add(sheet);
      }
    }
  }

  /** A part of a sheet: free, or with a piece in its corner and two rests. */
  private static final class Room {
    private final long width;
    private final long height;
    private Optional<GuillotineTree.Slot> piece = Optional.empty();
    private Axis firstCut;
    private Room beside;
    private Room below;

    Room(long width, long height) {
      this.width = width;
      this.height = height;
    }

    boolean place(int index, PieceKind kind) {
      if (piece.isPresent()) {
        return beside.place(index, kind) || below.place(index, kind);
      }
      for (PieceKind.Lying way : kind.ways()) {
        if (way.fits(width, height)) {
          put(index, way);
          return true;
        }
      }
      return false;
    }

    private void put(int index, PieceKind.Lying way) {
      piece = Optional.of(new GuillotineTree.Slot(index, way.turned()));
      long right = width - way.width();
      long bottom = height - way.height();
      // The longer rest stays whole.
      firstCut = right > bottom ? Axis.X : Axis.Y;
      beside = new Room(right, firstCut == Axis.X ? height : way.height());
      below = new Room(firstCut == Axis.X ? way.width() : width, bottom);
    }

    Optional<GuillotineTree> tree() {
      if (piece.isEmpty()) {
        return Optional.empty();
      }
      Optional<GuillotineTree> corner = Optional.of(piece.get());
      return firstCut == Axis.X
          ? join(Axis.X, join(Axis.Y, corner, below.tree()), beside.tree())
          : join(Axis.Y, join(Axis.X, corner, beside.tree()), below.tree());
    }

    private static Optional<GuillotineTree> join(
        Axis axis, Optional<GuillotineTree> first, Optional<GuillotineTree> second) {
      if (first.isEmpty() || second.isEmpty()) {
        return first.or(() -> second);
      }
      return Optional.of(new GuillotineTree.Split(axis, first.get(), second.get()));
    }

    int[] counts(int kinds) {
      int[] counts = new int[kinds];
      count(counts);
      return counts;
    }

    private void count(int[] counts) {
      piece.ifPresent(
          slot -> {
            counts[slot.kind()]++;
            beside.count(counts);
            below.count(counts);
          });
    }
  }
}
