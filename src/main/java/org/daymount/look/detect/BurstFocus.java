package org.daymount.look.detect;

import java.awt.image.BufferedImage;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daymount.look.Face;
import org.daymount.look.MainFaces;
import org.daymount.look.Measurer;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.SaliencyMap;
import org.daymount.look.Subject;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * What a burst is about, a face or else a thing, and how sharp a frame is on it. Of all that is
 * found in any frame the surest, largest and, for things, most central one counts: in the frames
 * that are out of focus there it is seen less surely, or something behind it more.
 */
public final class BurstFocus {
  private static final double AROUND = 0.1; // of a box's side, so that its outline counts as well
  private static final double MIDDLE_SIGMA = 0.8; // of each side of the picture
  private static final double SAME = 0.3; // overlap of one thing in two frames of a moving hand

  private final Optional<Main> main;

  private BurstFocus(Optional<Main> main) {
    this.main = main;
  }

  /**
   * A frame that was looked at.
   *
   * @param found in pixels of {@code picture}
   */
  record Frame(CloseLook found, BufferedImage picture, SaliencyMap map) {}

  /**
   * What a picture is most about.
   *
   * @param what a kind of thing; empty for a face
   */
  private record Main(PixelBox box, Optional<String> what, double weight, PixelSize picture) {
    boolean isFace() {
      return what.isEmpty();
    }
  }

  private static final Comparator<Main> FACES_FIRST_THEN_BY_WEIGHT =
      Comparator.comparing(Main::isFace).thenComparingDouble(Main::weight);

  static BurstFocus of(List<Frame> frames) {
    return new BurstFocus(
        frames.stream()
            .flatMap(frame -> main(frame.found, sizeOf(frame.picture)).stream())
            .max(FACES_FIRST_THEN_BY_WEIGHT));
  }

  /** The face, or else the thing, that a single look is most about. */
  public static Optional<PixelBox> mainBox(CloseLook look, PixelSize picture) {
    return main(look, picture).map(Main::box);
  }

  private static Optional<Main> main(CloseLook look, PixelSize picture) {
    Optional<Main> face =
        MainFaces.counted(look.faces(), look.subjects(), picture).stream()
            .map(one -> of(one, picture))
            .max(FACES_FIRST_THEN_BY_WEIGHT);
    return face.or(
        () ->
            look.subjects().stream().map(one -> of(one, picture)).max(FACES_FIRST_THEN_BY_WEIGHT));
  }

  private static Main of(Face face, PixelSize picture) {
    double share = face.box().area() / (double) picture.area();
    return new Main(face.box(), Optional.empty(), face.confidence() * Math.sqrt(share), picture);
  }

  private static Main of(Subject thing, PixelSize picture) {
    double share = thing.box().area() / (double) picture.area();
    double x = (thing.box().centreX() / picture.width() - 0.5) / MIDDLE_SIGMA;
    double y = (thing.box().centreY() / picture.height() - 0.5) / MIDDLE_SIGMA;
    double weight = thing.confidence() * Math.sqrt(share) * Math.exp(-(x * x + y * y) / 2);
    return new Main(thing.box(), Optional.of(thing.what()), weight, picture);
  }

  /**
   * How sharp a frame is on what the burst is about: around where the frame has the same itself,
   * else where the burst has it.
   *
   * @return 0 when nothing was found in any frame
   */
  double sharpnessOf(Frame frame) {
    return main.map(it -> sharpnessIn(own(frame, it), frame.picture, frame.map)).orElse(0.0);
  }

  /** The same for a frame that nobody looked at. */
  double sharpnessOf(BufferedImage picture, SaliencyMap map) {
    return main.map(it -> sharpnessIn(place(it, sizeOf(picture)), picture, map)).orElse(0.0);
  }

  private static PixelBox own(Frame frame, Main main) {
    PixelBox place = place(main, sizeOf(frame.picture));
    return (main.isFace()
            ? frame.found.faces().stream().map(Face::box)
            : frame.found.subjects().stream()
                .filter(thing -> main.what.get().equals(thing.what()))
                .map(Subject::box))
        .filter(box -> overlap(box, place) >= SAME)
        .max(Comparator.comparingDouble(box -> overlap(box, place)))
        .map(box -> movedTo(box, place))
        .orElse(place);
  }

  /** As large as in the other frames: a box that is wider in one would compare more background. */
  private static PixelBox movedTo(PixelBox there, PixelBox place) {
    int right = (int) Math.round(there.centreX() - place.centreX());
    int down = (int) Math.round(there.centreY() - place.centreY());
    return new PixelBox(place.x() + right, place.y() + down, place.width(), place.height());
  }

  private static PixelBox place(Main main, PixelSize picture) {
    return main.box.scaled(main.picture, picture);
  }

  /** Shared area over the area of both together (Jaccard index). */
  private static double overlap(PixelBox one, PixelBox other) {
    double shared = one.sharedArea(other);
    return shared / (one.area() + other.area() - shared);
  }

  private static double sharpnessIn(PixelBox box, BufferedImage picture, SaliencyMap map) {
    int beside = (int) (box.width() * AROUND);
    int over = (int) (box.height() * AROUND);
    PixelBox around = box.grown(beside, over, beside, over).within(sizeOf(picture));
    return new Measurer().sharpnessIn(picture, around, map);
  }

  private static PixelSize sizeOf(BufferedImage picture) {
    return new PixelSize(picture.getWidth(), picture.getHeight());
  }
}
