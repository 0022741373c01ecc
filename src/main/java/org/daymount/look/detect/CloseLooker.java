package org.daymount.look.detect;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.image.Pictures;
import org.daymount.image.Previews;
import org.daymount.look.Looked;
import org.daymount.look.Measures.CloseLook;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;

/**
 * The second look, at photos that may still become a hero: faces and subjects, and how sharp they
 * are. Frames of one burst are looked at together, because their sharpness is compared on the same
 * thing.
 */
public final class CloseLooker {
  /** Long edge at which a 6 in print at 300 ppi would show what is soft. */
  static final int SHARPNESS_EDGE = 1800;

  private final Pictures pictures;
  private final Detectors detectors;

  public CloseLooker(Pictures pictures, Detectors detectors) {
    this.pictures = pictures;
    this.detectors = detectors;
  }

  /**
   * A frame with what was found in it.
   *
   * @param found in pixels of {@code picture}
   */
  private record Seen(Looked frame, CloseLook found, BufferedImage picture) {
    CloseLook inPhoto(double sharpness) {
      PixelSize shown = new PixelSize(picture.getWidth(), picture.getHeight());
      CloseLook scaled = Detectors.scaled(found, shown, frame.photo().size());
      return new CloseLook(scaled.faces(), scaled.subjects(), sharpness);
    }
  }

  /**
   * @param frames of one burst, or a single photo
   * @return the same frames in the same order; one that can no longer be read comes back as it was
   */
  public List<Looked> look(List<Looked> frames) {
    List<Seen> seen = new ArrayList<>();
    for (Looked frame : frames) {
      see(frame).ifPresent(seen::add);
    }
    List<Double> sharpness =
        CloseSharpness.of(
            seen.stream().map(Seen::found).toList(),
            seen.stream().map(Seen::picture).toList(),
            seen.stream().map(s -> s.frame.measures().map()).toList());
    Map<Looked, Looked> closer = new IdentityHashMap<>();
    for (int i = 0; i < seen.size(); i++) {
      Looked frame = seen.get(i).frame;
      closer.put(frame, frame.withClose(seen.get(i).inPhoto(sharpness.get(i))));
    }
    return frames.stream().map(frame -> closer.getOrDefault(frame, frame)).toList();
  }

  private Optional<Seen> see(Looked frame) {
    try {
      BufferedImage picture = pictures.whole(frame.photo(), SHARPNESS_EDGE);
      BufferedImage small = Previews.scaled(picture, Detectors.WORKING_LONG_EDGE);
      CloseLook found =
          frame.photo().orientationTagged() ? detectors.look(small) : detectors.lookTurning(small);
      PixelSize seenAt = new PixelSize(small.getWidth(), small.getHeight());
      PixelSize shown = new PixelSize(picture.getWidth(), picture.getHeight());
      return Optional.of(new Seen(frame, Detectors.scaled(found, seenAt, shown), picture));
    } catch (UnusablePicture e) {
      return Optional.empty();
    }
  }
}
