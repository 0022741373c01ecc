package org.daymount.crop;

import java.util.List;
import java.util.Locale;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.Ppi;

/**
 * The part of a photo that is printed, and how it lies in its piece.
 *
 * @param window upright pixels of the whole photo
 * @param piece the size cut out of the sheet, lying as it will on the page
 * @param picture the printed size of {@code window}: the whole piece for a fill, smaller (and
 *     centred, white around it) for a border fit
 * @param ppi of the window over {@code picture}
 * @param quality 0 to 1: how much of the subject is kept, and how well it sits
 * @param reasons in words a person would use; empty when there is nothing to say
 */
public record Crop(
    PixelBox window,
    PaperSize piece,
    PaperSize picture,
    Fit fit,
    Ppi ppi,
    double quality,
    List<String> reasons) {
  /** Whether the picture runs to the piece's edges or lies inside with white around it. */
  public enum Fit {
    FILL,
    BORDER;

    /** The word used in month.json. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Crop {
    reasons = List.copyOf(reasons);
    if (!picture.fitsInto(piece)) {
      throw new IllegalArgumentException(
          "a picture of " + picture + " does not fit a piece of " + piece);
    }
  }
}
