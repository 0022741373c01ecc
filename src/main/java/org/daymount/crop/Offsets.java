package org.daymount.crop;

import java.util.Optional;

/** The offsets of a slide that are still allowed, both ends included. */
record Offsets(int first, int last) {

  static Offsets all(SlidingWindow slide) {
    return new Offsets(0, slide.slack());
  }

  /** Those at which the window also holds the extent; empty when there are none. */
  Optional<Offsets> holding(Extent extent, SlidingWindow slide) {
    int from = Math.max(first, extent.end() - slide.window());
    int to = Math.min(last, extent.start());
    return from <= to ? Optional.of(new Offsets(from, to)) : Optional.empty();
  }

  /** Those at which the window shows nothing but the extent, which is longer than it. */
  Optional<Offsets> inside(Extent extent, SlidingWindow slide) {
    int from = Math.max(first, extent.start());
    int to = Math.min(last, extent.end() - slide.window());
    return from <= to ? Optional.of(new Offsets(from, to)) : Optional.empty();
  }
}
