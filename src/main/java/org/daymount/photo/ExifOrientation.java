package org.daymount.photo;

import java.util.Arrays;
import org.daymount.unit.PixelSize;

/**
 * The eight values of the EXIF ExifOrientation tag (CIPA DC-008, 4.6.4 A, tag 274): where row 0 and
 * column 0 of the stored picture are when it is seen upright.
 */
public enum ExifOrientation {
  TOP_LEFT(1, false),
  TOP_RIGHT(2, false),
  BOTTOM_RIGHT(3, false),
  BOTTOM_LEFT(4, false),
  LEFT_TOP(5, true),
  RIGHT_TOP(6, true),
  RIGHT_BOTTOM(7, true),
  LEFT_BOTTOM(8, true);

  private final int exif;
  private final boolean swapsSides;

  ExifOrientation(int exif, boolean swapsSides) {
    this.exif = exif;
    this.swapsSides = swapsSides;
  }

  /** The tag's value; anything outside 1 to 8 is reserved and means upright. */
  public static ExifOrientation ofExif(int value) {
    return value >= 1 && value <= 8 ? values()[value - 1] : TOP_LEFT;
  }

  public int exif() {
    return exif;
  }

  /** Whether width and height change places on the way from stored to upright. */
  public boolean swapsSides() {
    return swapsSides;
  }

  public PixelSize upright(PixelSize stored) {
    return swapsSides ? stored.turned() : stored;
  }

  /** The size as stored of a picture that is {@code upright} when seen. */
  public PixelSize stored(PixelSize upright) {
    return upright(upright);
  }

  /** What two turns one after the other come to: first this one, then the next. */
  public ExifOrientation then(ExifOrientation next) {
    int[] first = axes();
    int[] second = next.axes();
    int[] both = {
      second[0] * first[0] + second[1] * first[2], second[0] * first[1] + second[1] * first[3],
      second[2] * first[0] + second[3] * first[2], second[2] * first[1] + second[3] * first[3]
    };
    for (ExifOrientation candidate : values()) {
      if (Arrays.equals(candidate.axes(), both)) {
        return candidate;
      }
    }
    throw new IllegalStateException("the eight are closed under turning");
  }

  /** Which way the stored axes point once upright: a, b, c, d of x' = ax + by, y' = cx + dy. */
  private int[] axes() {
    return switch (this) {
      case TOP_LEFT -> new int[] {1, 0, 0, 1};
      case TOP_RIGHT -> new int[] {-1, 0, 0, 1};
      case BOTTOM_RIGHT -> new int[] {-1, 0, 0, -1};
      case BOTTOM_LEFT -> new int[] {1, 0, 0, -1};
      case LEFT_TOP -> new int[] {0, 1, 1, 0};
      case RIGHT_TOP -> new int[] {0, -1, 1, 0};
      case RIGHT_BOTTOM -> new int[] {0, -1, -1, 0};
      case LEFT_BOTTOM -> new int[] {0, 1, -1, 0};
    };
  }

  /** Where row and column 0 are once the upright picture is turned clockwise as well. */
  public ExifOrientation turned(int quarterTurns) {
    ExifOrientation turned = this;
    for (int i = 0; i < (quarterTurns & 3); i++) {
      turned = turned.then(RIGHT_TOP);
    }
    return turned;
  }

  /** How many clockwise quarter turns lead from another orientation to this; 0 when none do. */
  public int quarterTurnsFrom(ExifOrientation other) {
    for (int turns = 1; turns < 4; turns++) {
      if (other.turned(turns) == this) {
        return turns;
      }
    }
    return 0;
  }

  /** The orientation that undoes this one: only the two quarter turns are not their own inverse. */
  public ExifOrientation back() {
    return switch (this) {
      case RIGHT_TOP -> LEFT_BOTTOM;
      case LEFT_BOTTOM -> RIGHT_TOP;
      default -> this;
    };
  }
}
