package org.daymount.crop;

import java.util.List;
import org.daymount.look.Measures;
import org.daymount.look.SaliencyMap;
import org.daymount.unit.PixelSize;

/**
 * How much of what a picture is about each window of a slide keeps: one third the subject map, two
 * thirds what the detectors' boxes cover. Where boxes overlap the weightier counts, not their sum:
 * a crowd seen twice is not worth twice as much.
 */
final class SaliencyProfile {
  private static final double BOXES_TO_MAP = 2;
  private static final int CELLS = 96; // along and across the slide; a cell is under 1/60 in

  private final SlidingWindow slide;
  private final double[] upTo; // interest of the cells along the slide, summed; ends at 1
  private final double middle;

  SaliencyProfile(Measures measures, PixelSize picture, SlidingWindow slide) {
    this.slide = slide;
    double[] map = summed(ofMap(measures.map(), slide));
    double[] boxes = summed(ofBoxes(WeightedBox.all(measures, picture), slide));
    this.upTo = new double[CELLS + 1];
    double boxWeight = boxes[CELLS] > 0 ? BOXES_TO_MAP / (1 + BOXES_TO_MAP) : 0;
    for (int cell = 0; cell <= CELLS; cell++) {
      upTo[cell] = (1 - boxWeight) * map[cell] / map[CELLS];
      if (boxWeight > 0) {
        upTo[cell] += boxWeight * boxes[cell] / boxes[CELLS];
      }
    }
    this.middle = firstWithHalfBefore();
  }

  private static double[] summed(double[] perCell) {
    double[] sums = new double[perCell.length + 1];
    for (int cell = 0; cell < perCell.length; cell++) {
      sums[cell + 1] = sums[cell] + perCell[cell];
    }
    return sums;
  }

  private static double[] ofMap(SaliencyMap map, SlidingWindow slide) {
    int cells = slide.sideways() ? map.columns() : map.rows();
    int others = slide.sideways() ? map.rows() : map.columns();
    double[] perCell = new double[CELLS];
    for (int cell = 0; cell < CELLS; cell++) {
      int at = cell * cells / CELLS;
      for (int other = 0; other < others; other++) {
        perCell[cell] += slide.sideways() ? map.weight(at, other) : map.weight(other, at);
      }
    }
    return perCell;
  }

  private static double[] ofBoxes(List<WeightedBox> boxes, SlidingWindow slide) {
    double[][] most = new double[CELLS][CELLS];
    for (WeightedBox box : boxes) {
      double[] along = covered(slide.along(box.box()), slide.length());
      double[] across = covered(slide.across(box.box()), slide.across());
      for (int i = 0; i < CELLS; i++) {
        for (int j = 0; j < CELLS && along[i] > 0; j++) {
          most[i][j] = Math.max(most[i][j], box.weight() * along[i] * across[j]);
        }
      }
    }
    double[] perCell = new double[CELLS];
    for (int i = 0; i < CELLS; i++) {
      for (int j = 0; j < CELLS; j++) {
        perCell[i] += most[i][j];
      }
    }
    return perCell;
  }

  /** Which share of each cell lies in the extent. */
  private static double[] covered(Extent extent, int length) {
    double cell = length / (double) CELLS;
    double[] shares = new double[CELLS];
    for (int i = 0; i < CELLS; i++) {
      double from = Math.max(extent.start(), i * cell);
      double to = Math.min(extent.end(), (i + 1) * cell);
      shares[i] = Math.max(0, to - from) / cell;
    }
    return shares;
  }

  /** Share of everything of interest that the window at the offset keeps, 0 to 1. */
  double kept(int offset) {
    return to(offset + slide.window()) - to(offset);
  }

  /** Where along the slide, in pixels, half of the interest lies before and half after. */
  double middle() {
    return middle;
  }

  private int firstWithHalfBefore() {
    int low = 0;
    int high = slide.length();
    while (high - low > 1) {
      int mid = (low + high) >>> 1;
      if (to(mid) < 0.5) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return high;
  }

  private double to(int position) {
    double cell = position * (double) CELLS / slide.length();
    int whole = Math.min(CELLS - 1, (int) cell);
    return upTo[whole] + (cell - whole) * (upTo[whole + 1] - upTo[whole]);
  }
}
