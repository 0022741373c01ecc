package org.daymount.crop;

import java.util.List;

/**
 * How the edges that a crop makes meet what matters. One that just touches a thing, or takes a
 * sliver of it, looks like a mistake; one that leaves a margin or cuts clearly does not (common
 * practice, no source). A face that nobody need keep is kept whole or lost whole. The picture's own
 * edges are nobody's fault.
 *
 * @param faces of passers-by
 */
record CutEdges(List<Extent> things, List<Extent> faces, SlidingWindow slide) {
  /** Of the window. */
  static final double MARGIN = 0.025;

  private static final double CLEARLY = 0.03; // of the window
  private static final double AT_PICTURES_EDGE = 0.01; // of the picture; boxes end a little before

  /** Worth avoiding for so much of all interest. */
  private static final double TOUCHED = 0.03;

  private static final double FACE = 0.1;

  CutEdges {
    things = List.copyOf(things);
    faces = List.copyOf(faces);
  }

  static int margin(SlidingWindow slide) {
    return (int) Math.ceil(MARGIN * slide.window());
  }

  /** What ends of things on an edge of the window and cut faces are worth, of all interest. */
  double price(int at) {
    return TOUCHED * touched(at) + FACE * faces.stream().filter(face -> isCut(face, at)).count();
  }

  private int touched(int at) {
    int touched = 0;
    for (Extent thing : things) {
      boolean isSeen = thing.end() > at && thing.start() < at + slide.window();
      if (isSeen && at > 0 && !beginsThePicture(thing)) {
        touched += isOnEdge(thing.start() - at) ? 1 : 0;
      }
      if (isSeen && at < slide.slack() && !endsThePicture(thing)) {
        touched += isOnEdge(at + slide.window() - thing.end()) ? 1 : 0;
      }
    }
    return touched;
  }

  private boolean isCut(Extent face, int at) {
    int end = at + slide.window();
    return face.start() < at && face.end() > at || face.start() < end && face.end() > end;
  }

  /**
   * @param gap from the window's edge to where the thing ends inside it; below 0 it is cut
   */
  private boolean isOnEdge(int gap) {
    return gap < MARGIN * slide.window() && gap > -CLEARLY * slide.window();
  }

  private boolean beginsThePicture(Extent thing) {
    return thing.start() <= AT_PICTURES_EDGE * slide.length();
  }

  private boolean endsThePicture(Extent thing) {
    return thing.end() >= (1 - AT_PICTURES_EDGE) * slide.length();
  }
}
