package org.daymount.album;

import java.util.List;
import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.SizeText;

/**
 * A place for a picture on a page.
 *
 * @param size the space as made, short side first when the direction is free
 * @param direction fixed by the page, or empty when either will do
 * @param reveal the width of mat left showing on each side; empty when there is no mat
 * @param onSide whether the picture lies on its side on the page: always where its direction is
 *     fixed, else where it fits only so
 */
public record Space(
    PaperSize size, Optional<Orientation> direction, Optional<Length> reveal, boolean onSide) {
  /** A space read as the page is. */
  public Space(PaperSize size, Optional<Orientation> direction, Optional<Length> reveal) {
    this(size, direction, reveal, false);
  }

  public Space {
    if (reveal.isPresent()
        && !size.width().min(size.height()).isLongerThan(reveal.get().times(2))) {
      throw new IllegalArgumentException(
          "a reveal of "
              + SizeText.text(reveal.get())
              + " leaves nothing of a "
              + SizeText.text(size)
              + " space");
    }
  }

  public static Space free(PaperSize size) {
    return new Space(size, Optional.empty(), Optional.empty());
  }

  public boolean onMat() {
    return reveal.isPresent();
  }

  /** The space lying the given way. */
  public PaperSize size(Orientation way) {
    return size.towards(way);
  }

  /** What is cut out of a sheet for it: the space less the reveal on each side. */
  public PaperSize pieceSize(Orientation way) {
    PaperSize placed = size.towards(way);
    return reveal.map(placed::inset).orElse(placed);
  }

  /** The ways a picture may lie here; the space's own way first. */
  public List<Orientation> ways() {
    if (size.isSquare()) {
      return List.of(Orientation.SQUARE);
    }
    return direction.map(List::of).orElse(List.of(Orientation.LANDSCAPE, Orientation.PORTRAIT));
  }

  /** As in month.json and in sentences: short side first, {@code 4x6}, {@code 100x150mm}. */
  public String name() {
    return SizeText.text(upright());
  }

  /** Short side first, as sizes are named. */
  public PaperSize upright() {
    return size.towards(Orientation.PORTRAIT);
  }
}
