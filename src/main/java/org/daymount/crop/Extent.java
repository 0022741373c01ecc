package org.daymount.crop;

/** A stretch along one axis of a picture, in pixels; {@code end} is the first pixel outside. */
record Extent(int start, int end) {

  Extent grown(int before, int after) {
    return new Extent(start - before, end + after);
  }

  /** Cut to 0 .. {@code length}: nothing can be asked for beyond the picture's own edge. */
  Extent within(int length) {
    int from = Math.max(0, Math.min(start, length));
    return new Extent(from, Math.max(from, Math.min(end, length)));
  }
}
