package org.daymount.page;

import java.util.List;
import org.daymount.unit.PaperBox;

/**
 * Where each of a page's items lies.
 *
 * @param boxes one for each item, in their order
 * @param turned for each item, whether it lies on its side
 * @param free pockets or places left over
 */
record Arrangement(PageKind kind, List<PaperBox> boxes, List<Boolean> turned, List<PaperBox> free) {
  Arrangement {
    boxes = List.copyOf(boxes);
    turned = List.copyOf(turned);
    free = List.copyOf(free);
  }

  /** Whether at least half of the pockets, by their size, hold something. */
  boolean isHalfFilled() {
    double all = area(kind.pockets());
    return all - area(free) >= all / 2 - 1e-9;
  }

  private static double area(List<PaperBox> boxes) {
    return boxes.stream().mapToDouble(box -> box.size().squareInches()).sum();
  }
}
