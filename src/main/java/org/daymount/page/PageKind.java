package org.daymount.page;

import java.util.List;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * How a page is divided.
 *
 * @param name as in month.json and in sentences: {@code two 4x6}, {@code full}
 * @param page the whole page
 * @param pockets in reading order; none for a whole page that things are glued on
 */
public record PageKind(String name, PaperSize page, List<PaperBox> pockets) {
  public static final String FULL = "full";

  public PageKind {
    pockets = List.copyOf(pockets);
  }

  static PageKind full(PaperSize page) {
    return new PageKind(FULL, page, List.of());
  }

  public boolean isFull() {
    return pockets.isEmpty();
  }

  /** The direction that every pocket of this size has here; empty where there is none or both. */
  public java.util.Optional<Orientation> directionOf(PaperSize size) {
    List<Orientation> ways =
        pockets.stream()
            .map(PaperBox::size)
            .filter(pocket -> PocketFit.isAtHome(size, pocket))
            .map(PaperSize::direction)
            .distinct()
            .toList();
    return ways.size() == 1 ? java.util.Optional.of(ways.get(0)) : java.util.Optional.empty();
  }
}
