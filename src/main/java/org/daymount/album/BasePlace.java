package org.daymount.album;

import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * A place of a ready-made page.
 *
 * @param box inches from the page's top left corner; for a photo on a mat the mat
 * @param reveal the width of mat left showing on each side; empty when there is no mat
 * @param onSide whether the photo lies on its side in the box
 */
public record BasePlace(What what, PaperBox box, Optional<Length> reveal, boolean onSide) {
  /** What a place is for. */
  public enum What {
    PHOTO,
    STORY,
    FREE
  }

  public BasePlace {
    if ((reveal.isPresent() || onSide) && what != What.PHOTO) {
      throw new IllegalArgumentException("only a photo lies on a mat, or on its side");
    }
  }

  /** The space that a photo's place is; the page has settled how it lies. */
  public Space space() {
    PaperSize size = box.size();
    Orientation way = (onSide ? size.turned() : size).direction();
    return new Space(
        size.towards(Orientation.PORTRAIT),
        way == Orientation.SQUARE ? Optional.empty() : Optional.of(way),
        reveal,
        onSide);
  }
}
