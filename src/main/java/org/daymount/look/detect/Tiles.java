package org.daymount.look.detect;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Looks at a picture as a whole and then at overlapping square parts of it, so that a detector with
 * a small window finds small faces too: two parts along the short side, with a quarter in common.
 */
final class Tiles {
  private static final int ALONG_SHORT_SIDE = 2;
  private static final double COMMON = 0.25;

  /** A spot this close to an inner border, as a part of the tile, is cut by it. */
  private static final double BORDER = 0.02;

  private static final double SAME_OVERLAP = 0.35;
  private static final double SAME_NESTING = 0.65;

  private Tiles() {}

  /**
   * @param whole what the detector saw in the picture as a whole
   * @param worthALook places of the picture; a part that touches none of them is passed over
   */
  static List<Detection> wholeAndParts(
      Pixels picture,
      List<Detection> whole,
      List<Detection> worthALook,
      Function<Pixels, List<Detection>> detector) {
    List<Detection> spots = new ArrayList<>(whole);
    int shortSide = Math.min(picture.width(), picture.height());
    double exactSide = shortSide / (ALONG_SHORT_SIDE - (ALONG_SHORT_SIDE - 1) * COMMON);
    int side = Math.max(1, (int) Math.round(exactSide));
    for (int top : starts(picture.height(), side)) {
      for (int left : starts(picture.width(), side)) {
        Detection tile = new Detection(left, top, side, side, 1);
        if (worthALook.stream().noneMatch(place -> place.sharedArea(tile) > 0)) {
          continue;
        }
        for (Detection spot : detector.apply(picture.square(left, top, side))) {
          Detection there = spot.moved(left, top);
          if (!isCut(there, picture, left, top, side)) {
            spots.add(there);
          }
        }
      }
    }
    return NonMaximumSuppression.surest(spots, SAME_OVERLAP, SAME_NESTING);
  }

  /** Evenly spread beginnings of tiles along one side, from one end to the other. */
  private static int[] starts(int length, int side) {
    double step = (1 - COMMON) * side;
    int count = 1 + Math.max(0, (int) Math.ceil((length - side) / step - 0.01));
    int[] starts = new int[count];
    for (int i = 1; i < count; i++) {
      starts[i] = (int) Math.round((length - side) * i / (double) (count - 1));
    }
    return starts;
  }

  private static boolean isCut(Detection spot, Pixels picture, int left, int top, int side) {
    double border = BORDER * side;
    return (left > 0 && spot.x() < left + border)
        || (top > 0 && spot.y() < top + border)
        || (left + side < picture.width() && spot.right() > left + side - border)
        || (top + side < picture.height() && spot.bottom() > top + side - border);
  }
}
