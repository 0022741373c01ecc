package org.daymount.look.detect;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.daymount.look.AnalysedPhoto;
import org.daymount.photo.PhotoFormat;

/** Which frames of a burst or stills of a clip the detectors see first, and how large. */
final class FirstFrames {
  /** Long edge at which a 6 in print at 300 ppi would show what is soft. */
  static final int SHARPNESS_EDGE = 1800;

  /** Up to here the half or quarter of a picture is taken as it was decoded. */
  private static final int LONGEST_EDGE = 2340;

  /**
   * All that are held decoded at a time. One leads by the first look; it may be misled, by a sharp
   * background, so the other comes from between.
   */
  static final int COUNT = 2;

  private FirstFrames() {}

  /**
   * How large the frames are seen: one and the same for all of a burst, or their sharpness would
   * not compare.
   */
  static int edge(List<AnalysedPhoto> frames) {
    if (isClip(frames)) {
      return Math.max(
          Detectors.WORKING_LONG_EDGE,
          Math.min(SHARPNESS_EDGE, frames.get(0).photo().size().longEdge() / 2));
    }
    if (frames.stream().map(frame -> frame.photo().size()).distinct().count() > 1) {
      return SHARPNESS_EDGE;
    }
    int edge = frames.get(0).photo().size().longEdge();
    while (edge % 2 == 0 && edge / 2 >= SHARPNESS_EDGE) {
      edge /= 2;
    }
    return edge <= LONGEST_EDGE ? edge : SHARPNESS_EDGE;
  }

  /**
   * Stills of one clip, which has a picture for every second and is mostly of one mind: it costs as
   * much as two photos.
   */
  static boolean isClip(List<AnalysedPhoto> frames) {
    return frames.get(0).photo().format() == PhotoFormat.CLIP;
  }

  /**
   * The sharpest by the first look, and the middle one of the others; of a clip, in which things
   * come and go, the sharpest of each half.
   */
  static Set<AnalysedPhoto> of(List<AnalysedPhoto> frames) {
    if (frames.size() <= COUNT) {
      return new HashSet<>(frames);
    }
    if (isClip(frames)) {
      int half = frames.size() / 2;
      return Set.of(
          sharpest(frames.subList(0, half)), sharpest(frames.subList(half, frames.size())));
    }
    AnalysedPhoto leading = sharpest(frames);
    List<AnalysedPhoto> others = frames.stream().filter(frame -> frame != leading).toList();
    return Set.of(leading, others.get(others.size() / 2));
  }

  private static AnalysedPhoto sharpest(List<AnalysedPhoto> frames) {
    return frames.stream()
        .max(Comparator.comparingDouble(frame -> frame.measures().sharpness()))
        .orElseThrow();
  }
}
