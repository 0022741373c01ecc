package org.daymount.look.detect;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daymount.look.Face;
import org.daymount.look.Measurer;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.Subject;
import org.daymount.look.SubjectMap;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * How sharp each frame of a burst is on the thing the burst is about: the same face, or the same
 * subject, in all of them. The frame in which most was found says what that is.
 */
public final class CloseSharpness {
  private static final double AROUND = 0.1; // of a box's side, so that its outline counts as well

  private CloseSharpness() {}

  /**
   * @param found what was found in each frame, in pixels of that frame's picture
   * @param pictures of the frames, all at one scale
   * @param maps of the frames
   * @return per frame; 0 for all when nothing was found in any
   */
  public static List<Double> of(
      List<CloseLook> found, List<BufferedImage> pictures, List<SubjectMap> maps) {
    Optional<CloseLook> guide =
        found.stream().max(Comparator.comparingDouble(CloseSharpness::sureness));
    Measurer measurer = new Measurer();
    List<Double> sharpness = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      BufferedImage picture = pictures.get(i);
      SubjectMap map = maps.get(i);
      sharpness.add(
          main(found.get(i), guide.orElseThrow())
              .map(box -> measurer.sharpnessIn(picture, around(box, picture), map))
              .orElse(0.0));
    }
    return sharpness;
  }

  /** The face, or else the thing, that a single look is most about. */
  public static Optional<PixelBox> mainBox(CloseLook look) {
    return main(look, look);
  }

  private static PixelBox around(PixelBox box, BufferedImage picture) {
    int beside = (int) (box.width() * AROUND);
    int over = (int) (box.height() * AROUND);
    PixelSize size = new PixelSize(picture.getWidth(), picture.getHeight());
    return box.grown(beside, over, beside, over).within(size);
  }

  /**
   * The box whose sharpness counts: the frame's own main face if the guide has one, else its own
   * main subject of the guide's kind, else the place where the guide has it.
   */
  private static Optional<PixelBox> main(CloseLook own, CloseLook guide) {
    Optional<Face> face = mainFace(guide);
    if (face.isPresent()) {
      return Optional.of(mainFace(own).orElse(face.get()).box());
    }
    Optional<Subject> subject = mainSubject(guide);
    return subject.map(
        s -> mainSubject(own).filter(mine -> mine.what().equals(s.what())).orElse(s).box());
  }

  private static Optional<Face> mainFace(CloseLook look) {
    return look.faces().stream()
        .filter(face -> face.confidence() >= Detectors.SCORE_FACE)
        .max(Comparator.comparingDouble(f -> f.confidence() * Math.sqrt(f.box().area())));
  }

  private static Optional<Subject> mainSubject(CloseLook look) {
    return look.subjects().stream()
        .max(Comparator.comparingDouble(s -> s.confidence() * Math.sqrt(s.box().area())));
  }

  private static double sureness(CloseLook look) {
    double faces = look.faces().stream().mapToDouble(Face::confidence).sum();
    double subjects = look.subjects().stream().mapToDouble(Subject::confidence).sum();
    return 10 * faces + subjects;
  }
}
