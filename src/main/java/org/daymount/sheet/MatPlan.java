package org.daymount.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;

/**
 * The card that the month's mats are cut from.
 *
 * @param packing the mats on sheets of card, with cuts; mats are labelled {@code mat-1}, {@code
 *     mat-2}, … as they were given
 * @param tooLarge mats that no sheet of card holds; they are bought apart
 */
public record MatPlan(Packing packing, List<PaperSize> tooLarge) {
  /** Card as it is sold for albums, 12 x 12 in (common practice, no source). */
  public static final PaperSize CARD = PaperSize.inches(12, 12);

  public MatPlan {
    tooLarge = List.copyOf(tooLarge);
  }

  /** Mats onto card of any size. */
  public static MatPlan of(List<PaperSize> mats, PaperSize card) {
    Map<String, PaperSize> named = new LinkedHashMap<>();
    mats.forEach(mat -> named.put("mat-" + (named.size() + 1), mat));
    return of(named, card);
  }

  /**
   * @param mats by the names that they get on the plan
   */
  public static MatPlan of(Map<String, PaperSize> mats, PaperSize card) {
    List<Piece> pieces = new ArrayList<>();
    List<PaperSize> tooLarge = new ArrayList<>();
    mats.forEach(
        (name, mat) -> {
          if (mat.fitsEitherWayInto(card)) {
            pieces.add(new Piece(name, mat, pieces.size()));
          } else {
            tooLarge.add(mat);
          }
        });
    Packing packing = new SheetPacker().pack(pieces, new SheetSettings(card, Length.ZERO));
    return new MatPlan(packing, tooLarge);
  }

  /** How many of each size no sheet of card holds, in the order in which they were met. */
  public Map<PaperSize, Integer> tooLargeBySize() {
    Map<PaperSize, Integer> counts = new LinkedHashMap<>();
    tooLarge.forEach(size -> counts.merge(size, 1, Integer::sum));
    return counts;
  }

  /** Size of the card; empty when nothing is cut from any. */
  public Optional<PaperSize> sheetSize() {
    return packing.sheets().stream().map(Sheet::size).findFirst();
  }

  /** Sheets of card to buy. */
  public int cardSheets() {
    return packing.sheets().size();
  }
}
