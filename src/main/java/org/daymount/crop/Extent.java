package org.daymount.crop;

/** A stretch along one axis of a picture, in pixels; {@code end} is the first pixel outside. */
record Extent(int start, int end) {

  int length() {
    return end - start;
  }

  /** Longer by a margin at both ends, as far as the picture reaches. */
  Extent grown(int margin, int length) {
    return new Extent(
        Math.min(start, Math.max(0, start - margin)),
        Math.max(end, Math.min(length, end + margin)));
  }
}
