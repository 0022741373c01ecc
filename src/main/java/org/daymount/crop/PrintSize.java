package org.daymount.crop;

import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/**
 * How large a number of pixels is printed in a piece.
 *
 * @param size as printed, centred in the piece
 * @param reason what is to be said about its pixels, if anything
 * @param seemliness 1 for a full piece, less the more of it stays white
 */
record PrintSize(
    PaperSize size, Crop.Fit fit, Ppi ppi, Optional<String> reason, double seemliness) {
  /** From a full piece to an empty one; a border that is half of it is worth about 0.6. */
  private static final double FULL_BORDERED = 0.9;

  /**
   * @param size wanted; it shrinks until the pixels come to the least ppi
   */
  static PrintSize in(PaperSize piece, PaperSize size, PixelSize pixels, CropSettings settings) {
    Ppi asked = lower(pixels, size);
    if (asked.isBelow(settings.minimum())) {
      PaperSize smaller = smaller(size, pixels, settings.minimum());
      return of(
          piece,
          smaller,
          pixels,
          Optional.of("printed smaller than its space, where it would look soft (" + asked + ")"));
    }
    return of(
        piece,
        size,
        pixels,
        asked.isBelow(settings.wanted())
            ? Optional.of("sharp enough to print (" + asked + ")")
            : Optional.empty());
  }

  private static PrintSize of(
      PaperSize piece, PaperSize size, PixelSize pixels, Optional<String> reason) {
    boolean full = size.equals(piece);
    double covered = size.squareInches() / piece.squareInches();
    return new PrintSize(
        size,
        full ? Crop.Fit.FILL : Crop.Fit.BORDER,
        lower(pixels, size),
        reason,
        full ? 1 : FULL_BORDERED * Math.sqrt(covered));
  }

  private static Ppi lower(PixelSize pixels, PaperSize size) {
    Ppi across = Ppi.of(pixels.width(), size.width());
    Ppi down = Ppi.of(pixels.height(), size.height());
    return across.isBelow(down) ? across : down;
  }

  /** The same shape, just small enough; rounded down so that the least ppi is reached. */
  private static PaperSize smaller(PaperSize size, PixelSize pixels, Ppi minimum) {
    double scale = lower(pixels, size).value() / minimum.value();
    return new PaperSize(scaled(size.width(), scale), scaled(size.height(), scale));
  }

  private static Length scaled(Length length, double scale) {
    return new Length(Math.max(1, (long) Math.floor(length.nanometres() * scale) - 1));
  }
}
