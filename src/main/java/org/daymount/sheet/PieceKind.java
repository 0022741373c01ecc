package org.daymount.sheet;

import java.util.List;
import org.daymount.unit.PaperSize;

/**
 * Pieces of one size, as the searches see them.
 *
 * @param width in whole nanometres (or any other whole unit, the same for all)
 * @param height in the same unit
 * @param mayTurn whether a quarter turn is allowed
 */
record PieceKind(long width, long height, boolean mayTurn) {
  PieceKind {
    if (width <= 0 || height <= 0) {
      throw new IllegalArgumentException("a piece needs a size, was " + width + " x " + height);
    }
  }

  /** The kind of a piece on paper: upright and lying pieces of one size are the same kind. */
  static PieceKind of(PaperSize size) {
    long width = size.width().nanometres();
    long height = size.height().nanometres();
    return new PieceKind(Math.min(width, height), Math.max(width, height), true);
  }

  /** The ways it can lie; the first is as given. */
  List<Lying> ways() {
    Lying given = new Lying(width, height, false);
    return mayTurn && width != height
        ? List.of(given, new Lying(height, width, true))
        : List.of(given);
  }

  long area() {
    return Math.multiplyExact(width, height);
  }

  /** One way to lie. */
  record Lying(long width, long height, boolean turned) {
    boolean fits(long roomWidth, long roomHeight) {
      return width <= roomWidth && height <= roomHeight;
    }
  }
}
