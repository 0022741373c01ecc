package org.daymount.crop;

import org.daymount.unit.Length;
import org.daymount.unit.Ppi;

/**
 * @param wanted what a print should have; a picture that has less is said to
 * @param minimum what a print must have; a picture that has less is printed smaller
 * @param safeEdge how far faces stay from the piece's edge, which trimming or a mat may take; also
 *     the white left around a border fit
 * @param joins where pieces larger than a sheet are put together
 */
public record CropSettings(Ppi wanted, Ppi minimum, Length safeEdge, Seams joins) {
  /** Common practice in framing and print finishing, no source. */
  public static final Length SAFE_EDGE = Length.inchFraction(1, 8);

  public CropSettings {
    if (wanted.isBelow(minimum)) {
      throw new IllegalArgumentException("wanted " + wanted + " is below the least, " + minimum);
    }
    if (safeEdge.compareTo(Length.ZERO) < 0) {
      throw new IllegalArgumentException("a safe edge cannot be below zero, was " + safeEdge);
    }
  }

  public CropSettings(Ppi wanted, Ppi minimum, Length safeEdge) {
    this(wanted, minimum, safeEdge, Seams.NONE);
  }

  public static CropSettings of(Ppi wanted, Ppi minimum) {
    return new CropSettings(wanted, minimum, SAFE_EDGE);
  }

  /**
   * What so few pixels per inch look like on paper. Below half of the least, single pixels can be
   * seen (common practice, no source).
   */
  public static String softness(Ppi ppi, Ppi least) {
    String word = ppi.value() < least.value() / 2 ? "too small to print well" : "soft in print";
    return word + " (" + ppi + ", below " + least + ")";
  }

  public CropSettings with(Seams otherJoins) {
    return new CropSettings(wanted, minimum, safeEdge, otherJoins);
  }
}
