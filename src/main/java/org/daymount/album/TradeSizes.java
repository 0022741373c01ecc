package org.daymount.album;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/**
 * Sizes that the trade sells under two names: a print sold as 10x15 cm is the 4x6 in one, 13x18 cm
 * the 5x7 in one (common practice, no source).
 */
public final class TradeSizes {
  private static final Map<PaperSize, PaperSize> SOLD_AS =
      Map.of(
          PaperSize.millimetres(90, 130), PaperSize.inches(3.5, 5),
          PaperSize.millimetres(100, 150), PaperSize.inches(4, 6),
          PaperSize.millimetres(130, 180), PaperSize.inches(5, 7));

  private TradeSizes() {}

  /** The print that one gets when ordering this size, lying as given; most sizes are themselves. */
  public static PaperSize asPrinted(PaperSize size) {
    return Optional.ofNullable(SOLD_AS.get(size.towards(Orientation.PORTRAIT)))
        .map(print -> print.towards(size.direction()))
        .orElse(size);
  }

  /**
   * The page for prints of one size: a space that the trade serves by that very print takes the
   * whole print, neither joined from two nor with slivers cut off. One for which there are pockets
   * under the trade's other name fits them: 13x18 cm goes into a pocket of 5x7 in.
   *
   * @param pockets of the pages at hand; a ready-made page's places stay as they are
   */
  public static DayPage servedBy(PaperSize print, Collection<PaperSize> pockets, DayPage page) {
    List<PaperSize> sizes = new ArrayList<>(List.of(print));
    if (page.base().isEmpty()) {
      sizes.addAll(pockets);
    }
    return page.mapped(space -> servedBy(sizes, space));
  }

  private static Space servedBy(List<PaperSize> sizes, Space space) {
    PaperSize served = asPrinted(space.size());
    boolean isThere =
        sizes.stream()
            .map(size -> size.towards(Orientation.PORTRAIT))
            .anyMatch(served.towards(Orientation.PORTRAIT)::equals);
    return isThere ? new Space(served, space.direction(), space.reveal(), space.onSide()) : space;
  }
}
