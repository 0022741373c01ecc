package org.daymount.crop;

import java.util.List;
import java.util.Set;
import org.daymount.look.Subject;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * What the people a picture is about hold: where it is cut, so are their hands. Wrists are not
 * seen, but food, balls and the like inside a person's box are.
 */
record HeldThings(List<PixelBox> boxes) {
  private static final double LIKELY = 0.4;
  private static final double SMALL = 0.03; // of the picture; smaller is not missed
  private static final double WHOLE = 0.9;
  private static final Set<String> CARRIED =
      Set.of(
          "baseball bat",
          "baseball glove",
          "ball",
          "bird",
          "cat",
          "dog",
          "frisbee",
          "kite",
          "skateboard",
          "snowboard",
          "surfboard",
          "teddy bear",
          "tennis racket",
          "umbrella");

  HeldThings {
    boxes = List.copyOf(boxes);
  }

  static HeldThings of(List<Subject> things, List<PixelBox> persons, PixelSize picture) {
    return new HeldThings(
        things.stream()
            .filter(thing -> thing.isFood() || CARRIED.contains(thing.what()))
            .filter(thing -> thing.confidence() >= LIKELY)
            .map(Subject::box)
            .filter(box -> box.area() >= SMALL * picture.area())
            .filter(box -> persons.stream().anyMatch(it -> it.sharedArea(box) > box.area() / 2))
            .toList());
  }

  /** Whether a window loses some of one that it had room for. */
  boolean areCutBy(PixelBox window, SlidingWindow slide) {
    return boxes.stream()
        .filter(box -> slide.along(box).length() <= slide.window())
        .anyMatch(box -> window.sharedArea(box) < WHOLE * box.area());
  }
}
