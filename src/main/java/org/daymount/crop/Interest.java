package org.daymount.crop;

import java.util.List;
import org.daymount.look.Measures;
import org.daymount.look.SubjectMap;
import org.daymount.unit.PixelSize;

/**
 * How much of what a picture is about each window of a slide keeps: the subject map and the
 * detectors' boxes, the boxes counting three times as much.
 */
final class Interest {
  private static final double BOXES_TO_MAP = 3;

  private final Slide slide;
  private final double[] mapUpTo; // weight of the map's cells along the slide, summed up to each
  private final List<WeightedBox> boxes;
  private final double boxMass;

  Interest(Measures measures, PixelSize picture, Slide slide) {
    this.slide = slide;
    this.mapUpTo = summed(measures.map(), slide);
    this.boxes = WeightedBox.all(measures, picture);
    this.boxMass = boxes.stream().mapToDouble(WeightedBox::mass).sum();
  }

  private static double[] summed(SubjectMap map, Slide slide) {
    int cells = slide.sideways() ? map.columns() : map.rows();
    int others = slide.sideways() ? map.rows() : map.columns();
    double[] sums = new double[cells + 1];
    for (int cell = 0; cell < cells; cell++) {
      sums[cell + 1] = sums[cell];
      for (int other = 0; other < others; other++) {
        sums[cell + 1] += slide.sideways() ? map.weight(cell, other) : map.weight(other, cell);
      }
    }
    return sums;
  }

  /** Share of everything of interest that the window at the offset keeps, 0 to 1. */
  double kept(int offset) {
    return between(offset, offset + slide.window());
  }

  /** Where along the slide, in pixels, half of the interest lies before and half after. */
  double middle() {
    int low = 0;
    int high = slide.length();
    while (high - low > 1) {
      int mid = (low + high) >>> 1;
      if (between(0, mid) < 0.5) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return high;
  }

  private double between(int from, int to) {
    double inMap = (mapTo(to) - mapTo(from)) / mapUpTo[mapUpTo.length - 1];
    if (boxMass <= 0) {
      return inMap;
    }
    double inBoxes = 0;
    for (WeightedBox box : boxes) {
      inBoxes += box.mass() * slide.along(box.box()).shareIn(from, to);
    }
    return (inMap + BOXES_TO_MAP * inBoxes / boxMass) / (1 + BOXES_TO_MAP);
  }

  private double mapTo(int position) {
    double cell = position * (mapUpTo.length - 1.0) / slide.length();
    int whole = Math.min(mapUpTo.length - 2, (int) cell);
    return mapUpTo[whole] + (cell - whole) * (mapUpTo[whole + 1] - mapUpTo[whole]);
  }
}
