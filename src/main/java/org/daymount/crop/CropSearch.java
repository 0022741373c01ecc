package org.daymount.crop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
 * interest wins, or one that keeps nearly as much and cuts nothing badly; and among those as good,
 * the one that puts its middle on a third or the centre.
 */
final class CropSearch {
  private static final double AS_MUCH = 0.0002; // of all interest; a tie to the eye
  private static final double AIR_MAY_COST = 0.02; // of all interest
  private static final double LOPSIDED = 0.1; // a tenth as bad as a middle that is off
  private static final double JOINT = 0.05; // worth avoiding for so much of all interest
  private static final int STEPS = 2000; // offsets tried at most, evenly spread

  private final SlidingWindow slide;
  private final SaliencyProfile interest;
  private final List<Face> faces;
  private final MainThing main;
  private final CutEdges edges;
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
    this.main = MainThing.of(looked.measures(), picture, slide);
    List<Face> passersBy =
        MainFaces.bystanders(looked.measures().faces(), looked.measures().subjects(), picture);
    this.edges =
        new CutEdges(
            main.extents(),
            passersBy.stream().map(face -> slide.along(face.box().within(picture))).toList(),
            slide);
    this.room = new FaceRoom(picture, slide.at(0).size(), piece, settings);
    this.bodies = Body.of(faces, main.persons(), picture);
    this.held = HeldThings.of(looked.measures().subjects(), main.persons(), picture);

    Offsets allowed = Offsets.all(slide);
    boolean all = true;
    for (Face face : faces) {
      Optional<Offsets> narrower = allowed.holding(slide.along(room.needed(face)), slide);
      all &= narrower.isPresent();
      allowed = narrower.orElse(allowed);
    }
    this.holdsFaces = all;
    Offsets withFaces = allowed;
    Offsets withMain = main.heldBy(withFaces);
    for (Face face : passersBy) {
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
    this.offset = best(airIsCheap ? withAir : withMain);
  }

  private double mostKept(Offsets allowed) {
    double most = 0;
    for (int at = allowed.first(); at <= allowed.last(); at += step(allowed)) {
      most = Math.max(most, interest.kept(at));
    }
    return most;
  }

  private static int step(Offsets allowed) {
    return Math.max(1, (allowed.last() - allowed.first()) / STEPS);
  }

  /** What keeps most, less what is cut badly. */
  private int best(Offsets allowed) {
    double[] worth = new double[(allowed.last() - allowed.first()) / step(allowed) + 1];
    for (int i = 0; i < worth.length; i++) {
      worth[i] = worth(allowed.first() + i * step(allowed));
    }
    double most = Arrays.stream(worth).max().orElseThrow();
    int best = allowed.first();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < worth.length; i++) {
      int at = allowed.first() + i * step(allowed);
      if (worth[i] >= most - AS_MUCH && offBalance(at) < least) {
        least = offBalance(at);
        best = at;
      }
    }
    return best;
  }

  private double worth(int at) {
    return interest.kept(at) - edges.price(at) - (isCutAtJoint(at) ? JOINT : 0);
  }

  private boolean isCutAtJoint(int at) {
    return !slide.sideways() && bodies.stream().anyMatch(body -> body.isCutAtJoint(slide.at(at)));
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
    return main.heaviest();
  }

  /** Whether the main thing is one of so many that losing some loses little. */
  boolean isOneOfMany() {
    return main.isOneOfMany();
  }

  /** How much of the main subject a window holds, 0 to 1; 1 when there is none. */
  double keptOfMain(PixelBox window) {
    return main.keptBy(window);
  }
}
