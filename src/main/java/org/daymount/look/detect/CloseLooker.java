package org.daymount.look.detect;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daymount.image.Pictures;
import org.daymount.image.Previews;
import org.daymount.look.Face;
import org.daymount.look.Looked;
import org.daymount.look.Measurer;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.Subject;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * The second look, at photos that may still become a hero: faces and subjects, and how sharp they
 * are. Frames of one burst are looked at together, because their sharpness is compared on the same
 * thing.
 */
public final class CloseLooker {
  /** Long edge at which a 6 in print at 300 ppi would show what is soft. */
  static final int SHARPNESS_EDGE = 1800;

  private static final double AROUND = 0.1; // of a box's side, so that its outline counts as well

  private final Pictures pictures;
  private final Detectors detectors;
  private final Measurer measurer = new Measurer();

  public CloseLooker(Pictures pictures, Detectors detectors) {
    this.pictures = pictures;
    this.detectors = detectors;
  }

  /** A frame with what was found in it, and the picture it was found in. */
  private record Seen(Looked frame, CloseLook found, BufferedImage picture) {}

  /**
   * @param frames of one burst, or a single photo
   * @return the same frames in the same order; one that can no longer be read comes back as it was
   */
  public List<Looked> look(List<Looked> frames) {
    List<Seen> seen = new ArrayList<>();
    for (Looked frame : frames) {
      see(frame).ifPresent(seen::add);
    }
    Optional<Seen> guide = seen.stream().max(Comparator.comparingDouble(s -> sureness(s.found)));
    List<Looked> result = new ArrayList<>();
    for (Looked frame : frames) {
      result.add(
          seen.stream()
              .filter(s -> s.frame == frame)
              .findFirst()
              .map(s -> frame.withClose(measured(s, guide.orElseThrow())))
              .orElse(frame));
    }
    return result;
  }

  private Optional<Seen> see(Looked frame) {
    try {
      BufferedImage picture = pictures.whole(frame.photo(), SHARPNESS_EDGE);
      BufferedImage small = Previews.scaled(picture, Detectors.WORKING_LONG_EDGE);
      CloseLook found =
          frame.photo().orientationTagged() ? detectors.look(small) : detectors.lookTurning(small);
      PixelSize seenAt = new PixelSize(small.getWidth(), small.getHeight());
      return Optional.of(
          new Seen(frame, Detectors.scaled(found, seenAt, frame.photo().size()), picture));
    } catch (UnusablePicture e) {
      return Optional.empty();
    }
  }

  private CloseLook measured(Seen seen, Seen guide) {
    double sharpness =
        main(seen.found, guide.found)
            .map(
                box -> {
                  PixelSize size = seen.frame.photo().size();
                  PixelSize shown =
                      new PixelSize(seen.picture.getWidth(), seen.picture.getHeight());
                  int beside = (int) (box.width() * AROUND);
                  int over = (int) (box.height() * AROUND);
                  PixelBox region = box.grown(beside, over, beside, over).within(size);
                  return measurer.sharpnessIn(seen.picture, region.scaled(size, shown));
                })
            .orElse(0.0);
    return new CloseLook(seen.found.faces(), seen.found.subjects(), sharpness);
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
