package org.daymount.sheet;

import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;

/** A sheet's cuts with a piece in every part that is kept. */
sealed interface FilledTree {
  /** The smallest paper that it fits on. */
  PaperSize extent();

  /** How many pieces lie turned. */
  int turnedPieces();

  /** The same pieces, each upright that has the room to be. */
  FilledTree uprightWithin(PaperSize room);

  /** A piece, {@code turned} as in {@link PlacedPiece}. */
  record Leaf(Piece piece, boolean turned) implements FilledTree {
    @Override
    public PaperSize extent() {
      return turned ? piece.size().turned() : piece.size();
    }

    @Override
    public int turnedPieces() {
      return turned ? 1 : 0;
    }

    @Override
    public FilledTree uprightWithin(PaperSize room) {
      return turned && piece.size().fitsInto(room) ? new Leaf(piece, false) : this;
    }
  }

  /** Two parts beside ({@code X}) or below ({@code Y}) each other. */
  record Join(Cut.Axis axis, FilledTree first, FilledTree second) implements FilledTree {
    @Override
    public PaperSize extent() {
      PaperSize one = first.extent();
      PaperSize other = second.extent();
      return axis == Cut.Axis.X
          ? new PaperSize(one.width().plus(other.width()), one.height().max(other.height()))
          : new PaperSize(one.width().max(other.width()), one.height().plus(other.height()));
    }

    @Override
    public int turnedPieces() {
      return first.turnedPieces() + second.turnedPieces();
    }

    @Override
    public FilledTree uprightWithin(PaperSize room) {
      FilledTree newFirst = first.uprightWithin(roomBeside(second, room));
      return new Join(axis, newFirst, second.uprightWithin(roomBeside(newFirst, room)));
    }

    private PaperSize roomBeside(FilledTree neighbour, PaperSize room) {
      PaperSize taken = neighbour.extent();
      Length width = axis == Cut.Axis.X ? room.width().minus(taken.width()) : room.width();
      Length height = axis == Cut.Axis.Y ? room.height().minus(taken.height()) : room.height();
      return new PaperSize(width, height);
    }
  }
}
