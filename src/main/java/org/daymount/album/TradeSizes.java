package org.daymount.album;

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
   * whole print, neither joined from two nor with slivers cut off.
   */
  public static DayPage servedBy(PaperSize print, DayPage page) {
    return page.mapped(space -> servedBy(print, space));
  }

  private static Space servedBy(PaperSize print, Space space) {
    PaperSize served = asPrinted(space.size());
    boolean isThatPrint =
        served.towards(Orientation.PORTRAIT).equals(print.towards(Orientation.PORTRAIT));
    return isThatPrint
        ? new Space(served, space.direction(), space.reveal(), space.onSide())
        : space;
  }
}
