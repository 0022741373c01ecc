package org.daymount.page;

import java.util.Optional;
import org.daymount.unit.PaperBox;

/**
 * A rectangle of a page.
 *
 * @param box inches on the page, from its top left corner
 * @param index which of the day's spaces (photo, mat) or cards (story), from 0; none for a free
 *     place, and for a story that no card carries: it is written or glued there by hand
 * @param turned whether what lies there lies on its side, a quarter turn clockwise
 */
public record Place(What what, PaperBox box, Optional<Integer> index, boolean turned) {
  /** What a place is for; the order is the order of drawing. */
  public enum What {
    FREE,
    MAT,
    PHOTO,
    STORY
  }

  static Place of(What what, PaperBox box, int index, boolean turned) {
    return new Place(what, box, Optional.of(index), turned);
  }

  static Place storyByHand(PaperBox box) {
    return new Place(What.STORY, box, Optional.empty(), false);
  }

  public static Place free(PaperBox box) {
    return new Place(What.FREE, box, Optional.empty(), false);
  }
}
