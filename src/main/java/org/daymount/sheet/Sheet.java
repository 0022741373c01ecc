package org.daymount.sheet;

import java.util.List;
import org.daymount.unit.PaperSize;

/**
 * One print with the pieces on it.
 *
 * @param size lying as it will be printed
 * @param cuts in the order they are made; each runs through the whole of the part it cuts
 */
public record Sheet(PaperSize size, List<PlacedPiece> pieces, List<Cut> cuts) {
  public Sheet {
    pieces = List.copyOf(pieces);
    cuts = List.copyOf(cuts);
  }
}
