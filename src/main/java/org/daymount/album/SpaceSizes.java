package org.daymount.album;

import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.SizeText;

/**
 * How small and how large a space can be, wherever it is asked for. Common practice, no source:
 * half an inch is the least that can be cut by hand, and no album page or photo paper is longer
 * than 24 in on a side.
 */
public final class SpaceSizes {
  private static final Length SMALLEST_SIDE = Length.inchFraction(1, 2);
  private static final Length LARGEST_SIDE = Length.inches(24);

  private SpaceSizes() {}

  /** Whether a space can have this size. */
  public static boolean isPossible(PaperSize size) {
    return !isTooSmall(size) && !isTooLarge(size);
  }

  /**
   * The size itself.
   *
   * @throws IllegalArgumentException when no space can have it; the message is for a person
   */
  public static PaperSize checked(PaperSize size) {
    if (isTooSmall(size)) {
      throw new IllegalArgumentException(
          "'"
              + SizeText.text(size)
              + "' is smaller than can be cut; a space has at least 1/2 in (1.3 cm) a side");
    }
    if (isTooLarge(size)) {
      throw new IllegalArgumentException(
          "'"
              + SizeText.text(size)
              + "' is larger than any page; a space has at most 24 in (61 cm) a side");
    }
    return size;
  }

  private static boolean isTooSmall(PaperSize size) {
    return SMALLEST_SIDE.isLongerThan(size.width().min(size.height()));
  }

  private static boolean isTooLarge(PaperSize size) {
    return size.width().isLongerThan(LARGEST_SIDE) || size.height().isLongerThan(LARGEST_SIDE);
  }
}
