package org.daymount.crop;

import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.MainFaces;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Where the largest window of a piece's shape goes. What has to be inside narrows the offsets in
 * turn: faces, then the main subject, then air above heads where it costs next to nothing; each
 * only as far as those before it allow. Among the offsets left the one that keeps most of the
 * interest wins, and among those that keep as much, the one that puts its middle on a third or the
 * centre.
 */
final class CropSearch {
  private static final double ALSO_MAIN = 0.6; // of the weight of the main thing
  private static final int MANY = 3; // a flock, a buffet
  private static final double MARGIN = 0.025; // of the window; at the edge it looks cut
  private static final double AS_MUCH = 0.0002; // of all interest; a tie to the eye
  private static final double AIR_MAY_COST = 0.02; // of all interest
  private static final double LOPSIDED = 0.1; // a tenth as bad as a middle that is off
  private static final double JOINT_MAY_COST = 0.03; // of all interest
  private static final double HEAD_AND_CHEST = 0.3; // of those who stand
  private static final int STEPS = 2000; // offsets tried at most, evenly spread

  private final SlidingWindow slide;
  private final SaliencyProfile interest;
  private final List<Face> faces;
  private final List<WeightedBox> sure;
  private final FaceRoom room;
  private final List<Body> bodies;
  private final HeldThings held;
  private final boolean holdsFaces;
  private final boolean hasAir;
  private final int offset;

  CropSearch(AnalysedPhoto looked, PaperSize piece, CropSettings settings) {
    PixelSize picture = looked.photo().size();
    this.slide = SlidingWindow.of(picture, piece);
    this.interest = new SaliencyProfile(looked.measures(), picture, slide);
    this.faces = looked.measures().mainFaces(picture);
    this.sure =
        WeightedBox.all(looked.measures(), picture).stream()
            .filter(box -> box.isSure() || box.isLikely(picture))
            .toList();
    this.room = new FaceRoom(picture, slide.at(0).size(), piece, settings);
    this.bodies = Body.of(faces, mainPersons(), picture);
    this.held = HeldThings.of(looked.measures().subjects(), mainPersons(), picture);

    Offsets allowed = Offsets.all(slide);
    boolean all = true;
    for (Face face : faces) {
      Optional<Offsets> narrower = allowed.holding(slide.along(room.needed(face)), slide);
      all &= narrower.isPresent();
      allowed = narrower.orElse(allowed);
    }
    this.holdsFaces = all;
    Offsets withFaces = allowed;
    Offsets withMain = holdingThings(withFaces);
    for (Face face :
        MainFaces.bystanders(looked.measures().faces(), looked.measures().subjects(), picture)) {
      withMain = withMain.holding(slide.along(room.head(face)), slide).orElse(withMain);
    }
    Offsets withAir = withMain;
    boolean air = true;
    for (Face face : faces) {
      Optional<Offsets> narrower = withAir.holding(slide.along(room.liked(face)), slide);
      air &= narrower.isPresent();
      withAir = narrower.orElse(withAir);
    }
    double mostWithMain = mostKept(withMain);
    double mostWithAir = withAir.equals(withMain) ? mostWithMain : mostKept(withAir);
    boolean airIsCheap = mostWithAir >= mostWithMain - AIR_MAY_COST;
    this.hasAir = air && airIsCheap;
    this.offset = airIsCheap ? best(withAir, mostWithAir) : best(withMain, mostWithMain);
  }

  /**
   * Holds the main thing with a margin, or without one. Several of a kind that are as weighty, two
   * giraffes or a box of donuts, are one thing; where there is no room for all of them, none is
   * held before the others.
   */
  private Offsets holdingThings(Offsets withFaces) {
    if (sure.isEmpty()) {
      return withFaces;
    }
    WeightedBox main = sure.get(0);
    List<WeightedBox> group = alike();
    PixelBox around = group.stream().map(WeightedBox::box).reduce(PixelBox::around).orElseThrow();
    Optional<Offsets> all = holding(withFaces, around);
    return all.or(() -> main.isLiving() ? holdingHeads(withFaces, around) : Optional.empty())
        .or(() -> group.size() > 1 ? Optional.of(withFaces) : Optional.empty())
        .or(() -> holding(withFaces, main.box()))
        .or(() -> withFaces.inside(slide.along(main.box()), slide))
        .orElse(withFaces);
  }

  /** Of those who stand and do not fit, people or animals, the heads go before the feet. */
  private Optional<Offsets> holdingHeads(Offsets allowed, PixelBox around) {
    if (slide.sideways() || around.width() > around.height()) {
      return Optional.empty();
    }
    int upper = (int) (HEAD_AND_CHEST * around.height()) + 1;
    return holding(allowed, new PixelBox(around.x(), around.y(), around.width(), upper));
  }

  private List<PixelBox> mainPersons() {
    return sure.stream()
        .filter(box -> box.isPerson() && box.weight() >= ALSO_MAIN * sure.get(0).weight())
        .map(WeightedBox::box)
        .toList();
  }

  /** The main thing and those of its kind that are as weighty. */
  private List<WeightedBox> alike() {
    return sure.stream()
        .filter(box -> box.subject().what().equals(sure.get(0).subject().what()))
        .filter(box -> box.weight() >= ALSO_MAIN * sure.get(0).weight())
        .toList();
  }

  private Optional<Offsets> holding(Offsets allowed, PixelBox box) {
    Extent exact = slide.along(box);
    Extent roomy = exact.grown((int) Math.ceil(MARGIN * slide.window()), slide.length());
    return allowed.holding(roomy, slide).or(() -> allowed.holding(exact, slide));
  }

  private double mostKept(Offsets allowed) {
    return mostKept(allowed, at -> true);
  }

  private double mostKept(Offsets allowed, IntPredicate counts) {
    double most = 0;
    for (int at = allowed.first(); at <= allowed.last(); at += step(allowed)) {
      if (counts.test(at)) {
        most = Math.max(most, interest.kept(at));
      }
    }
    return most;
  }

  private static int step(Offsets allowed) {
    return Math.max(1, (allowed.last() - allowed.first()) / STEPS);
  }

  /** Where no one is cut at a joint, if that costs next to nothing. */
  private int best(Offsets allowed, double most) {
    double mostClear = slide.sideways() ? 0 : mostKept(allowed, this::isClearOfJoints);
    return mostClear > 0 && mostClear >= most - JOINT_MAY_COST
        ? best(allowed, mostClear, this::isClearOfJoints)
        : best(allowed, most, at -> true);
  }

  private boolean isClearOfJoints(int at) {
    return bodies.stream().noneMatch(body -> body.isCutAtJoint(slide.at(at)));
  }

  private int best(Offsets allowed, double most, IntPredicate counts) {
    int best = allowed.first();
    double least = Double.POSITIVE_INFINITY;
    for (int at = allowed.first(); at <= allowed.last(); at += step(allowed)) {
      if (interest.kept(at) >= most - AS_MUCH && counts.test(at)) {
        double off = offBalance(at);
        if (off < least) {
          least = off;
          best = at;
        }
      }
    }
    return best;
  }

  /**
   * How far the interest's middle is from the nearest third or the centre, in windows; where that
   * leaves a choice, the less one side loses more than the other the better.
   */
  private double offBalance(int at) {
    double lopsided = Math.abs(at - slide.slack() / 2.0) / slide.window();
    double middle = (interest.middle() - at) / slide.window();
    double third = Math.min(Math.abs(middle - 1 / 3.0), Math.abs(middle - 2 / 3.0));
    return Math.min(Math.abs(middle - 0.5), third) + LOPSIDED * lopsided;
  }

  PixelBox window() {
    return slide.at(offset);
  }

  /** Whether every protected face is inside, with its room. */
  boolean holdsFaces() {
    return holdsFaces;
  }

  /** Whether every head has air above it. */
  boolean hasAir() {
    return hasAir;
  }

  List<Face> faces() {
    return faces;
  }

  /** Of the people the picture is about. */
  List<Body> bodies() {
    return bodies;
  }

  /** Whether the window that was found goes through something a person holds. */
  boolean cutsHeldThing() {
    return held.areCutBy(window(), slide);
  }

  /** Share of the interest that is kept, 0 to 1. */
  double kept() {
    return interest.kept(offset);
  }

  /** What the picture is most about, when a detector is sure of it or sees it large. */
  Optional<WeightedBox> main() {
    return sure.stream().findFirst();
  }

  /** Whether the main thing is one of so many that losing some loses little. */
  boolean isOneOfMany() {
    return alike().size() >= MANY;
  }

  /** How much of the main subject a window holds, 0 to 1; 1 when there is none. */
  double keptOfMain(PixelBox window) {
    return main()
        .map(main -> window.sharedArea(main.box()) / (double) main.box().area())
        .orElse(1.0);
  }
}
