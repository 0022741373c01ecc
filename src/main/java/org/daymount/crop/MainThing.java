package org.daymount.crop;

import java.util.List;
import java.util.Optional;
import org.daymount.look.Measures;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * What a picture is most about, with its like: several of a kind that are as weighty, two giraffes
 * or a box of donuts, are one thing. It narrows a slide to where the window holds it.
 *
 * @param things that are there, heaviest first: sure ones, and large ones that are likely
 */
record MainThing(List<WeightedBox> things, SlidingWindow slide) {
  private static final double AS_WEIGHTY = 0.6; // as the heaviest
  private static final int MANY = 3; // a flock, a buffet
  private static final double HEAD_AND_CHEST = 0.3; // of those who stand
  private static final int STEPS = 10; // from the whole margin to none

  MainThing {
    things = List.copyOf(things);
  }

  static MainThing of(Measures measures, PixelSize picture, SlidingWindow slide) {
    return new MainThing(
        WeightedBox.all(measures, picture).stream()
            .filter(box -> box.isSure() || box.isLikely(picture))
            .toList(),
        slide);
  }

  Optional<WeightedBox> heaviest() {
    return things.stream().findFirst();
  }

  /** Whether it is one of so many that losing some loses little. */
  boolean isOneOfMany() {
    return alike().size() >= MANY;
  }

  private List<WeightedBox> alike() {
    return things.stream()
        .filter(box -> box.subject().what().equals(things.get(0).subject().what()))
        .filter(this::isAsWeighty)
        .toList();
  }

  private boolean isAsWeighty(WeightedBox box) {
    return box.weight() >= AS_WEIGHTY * things.get(0).weight();
  }

  List<PixelBox> persons() {
    return things.stream()
        .filter(box -> box.isPerson() && isAsWeighty(box))
        .map(WeightedBox::box)
        .toList();
  }

  /** Where the heaviest lies along the slide, and all that are sure. */
  List<Extent> extents() {
    return things.stream()
        .filter(box -> box.isSure() || box == things.get(0))
        .map(box -> slide.along(box.box()))
        .toList();
  }

  /**
   * The offsets at which it is held with as much margin as there is room for. Of two that do not
   * both fit the heavier is held, rather than half of each; of many none before the others. What is
   * longer than the window fills it.
   */
  Offsets heldBy(Offsets allowed) {
    if (things.isEmpty()) {
      return allowed;
    }
    WeightedBox main = things.get(0);
    List<WeightedBox> group = alike();
    PixelBox around = group.stream().map(WeightedBox::box).reduce(PixelBox::around).orElseThrow();
    return holding(allowed, around)
        .or(() -> main.isLiving() ? holdingHeads(allowed, around) : Optional.empty())
        .or(() -> group.size() >= MANY ? Optional.of(allowed) : Optional.empty())
        .or(() -> holding(allowed, main.box()))
        .or(() -> allowed.inside(roomy(main.box(), CutEdges.margin(slide)), slide))
        .orElse(allowed);
  }

  /** Of those who stand and do not fit, people or animals, the heads go before the feet. */
  private Optional<Offsets> holdingHeads(Offsets allowed, PixelBox around) {
    if (slide.sideways() || around.width() > around.height()) {
      return Optional.empty();
    }
    int upper = (int) (HEAD_AND_CHEST * around.height()) + 1;
    return holding(allowed, new PixelBox(around.x(), around.y(), around.width(), upper));
  }

  private Optional<Offsets> holding(Offsets allowed, PixelBox box) {
    for (int step = STEPS; step >= 0; step--) {
      Extent roomy = roomy(box, CutEdges.margin(slide) * step / STEPS);
      Optional<Offsets> held = allowed.holding(roomy, slide);
      if (held.isPresent()) {
        return held;
      }
    }
    return Optional.empty();
  }

  private Extent roomy(PixelBox box, int margin) {
    return slide.along(box).grown(margin, slide.length());
  }

  /** How much of the heaviest a window holds, 0 to 1; 1 when there is none. */
  double keptBy(PixelBox window) {
    return heaviest()
        .map(main -> window.sharedArea(main.box()) / (double) main.box().area())
        .orElse(1.0);
  }
}
