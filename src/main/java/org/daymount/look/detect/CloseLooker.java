package org.daymount.look.detect;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.daymount.image.Pictures;
import org.daymount.image.Previews;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.FrameRule;
import org.daymount.look.Measurer;
import org.daymount.look.Measures.CloseLook;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;

/**
 * The second look, at photos that may still become a hero: faces and subjects, and how sharp they
 * are. Frames of one burst are looked at together, because their sharpness is compared on the same
 * thing.
 *
 * <p>Of a burst the detectors see two frames, which tell what it is about. The others are only
 * measured there; one that may be better than those seen is then looked at like them.
 */
public final class CloseLooker {
  /** Frames that the detectors may see because they turned out better than the first ones. */
  static final int LATER_FRAMES = 2;

  /** Where decoded pictures come from. */
  @FunctionalInterface
  public interface Source {
    BufferedImage whole(Photo photo, int longEdge) throws UnusablePicture;
  }

  /** What is found in a picture, in its own pixels. */
  @FunctionalInterface
  public interface Finder {
    CloseLook look(BufferedImage small, boolean orientationTagged);
  }

  private final Source source;
  private final Finder finder;
  private final BiConsumer<Photo, BufferedImage> shown;

  /**
   * @param shown is handed each photo that is looked at alone as a picture with a long edge of
   *     {@link Detectors#WORKING_LONG_EDGE}
   */
  CloseLooker(Pictures pictures, Detectors detectors, BiConsumer<Photo, BufferedImage> shown) {
    this(
        pictures::whole,
        (small, tagged) -> tagged ? detectors.look(small) : detectors.lookTurning(small),
        shown);
  }

  public CloseLooker(Source source, Finder finder) {
    this(source, finder, (photo, picture) -> {});
  }

  private CloseLooker(Source source, Finder finder, BiConsumer<Photo, BufferedImage> shown) {
    this.source = source;
    this.finder = finder;
    this.shown = shown;
  }

  /**
   * A frame with what was found in it.
   *
   * @param found in pixels of {@code picture}
   */
  private record Seen(AnalysedPhoto frame, CloseLook found, BufferedImage picture) {
    BurstFocus.Frame forFocus() {
      return new BurstFocus.Frame(found, picture, frame.measures().map());
    }

    AnalysedPhoto withSharpness(double sharpness) {
      PixelSize shown = new PixelSize(picture.getWidth(), picture.getHeight());
      CloseLook scaled = Detectors.scaled(found, shown, frame.photo().size());
      return frame.withClose(scaled.withSharpness(sharpness));
    }
  }

  /** A frame as sharp as it is where the burst has its main thing. */
  private record Glanced(AnalysedPhoto frame, double sharpness) {
    /** Sharper, or hardly softer in better light. */
    boolean mayBeat(Glanced other) {
      return sharpness > other.sharpness
          || FrameRule.isAboutAsSharp(sharpness, other.sharpness)
              && FrameRule.isBetterLit(frame.measures(), other.frame.measures());
    }
  }

  /**
   * @param frames of one burst, or a single photo, which has nothing to compare with, so that what
   *     the detectors need is enough
   * @return the same frames in the same order. One that can no longer be read comes back as it was,
   *     and so does one that cannot be better than those that were looked at
   */
  public List<AnalysedPhoto> look(List<AnalysedPhoto> frames) {
    if (frames.size() == 1) {
      AnalysedPhoto alone = frames.get(0);
      return List.of(
          decoded(alone, Detectors.WORKING_LONG_EDGE)
              .map(picture -> lookAlone(alone, picture))
              .orElse(alone));
    }
    int edge = FirstFrames.edge(frames);
    Set<AnalysedPhoto> first = FirstFrames.of(frames);
    List<Seen> seen = new ArrayList<>();
    for (AnalysedPhoto frame : frames) {
      if (first.contains(frame)) {
        see(frame, edge).ifPresent(seen::add);
      }
    }
    BurstFocus focus = BurstFocus.of(seen.stream().map(Seen::forFocus).toList());
    Map<AnalysedPhoto, AnalysedPhoto> closer = new IdentityHashMap<>();
    List<Glanced> best = new ArrayList<>();
    for (Seen one : seen) {
      double sharpness = focus.sharpnessOf(one.forFocus());
      closer.put(one.frame, one.withSharpness(sharpness));
      best.add(new Glanced(one.frame, sharpness));
    }
    seen.clear(); // their pictures are not held while others are decoded
    List<Glanced> better =
        FirstFrames.isClip(frames) ? List.of() : betterThan(best, frames, first, focus, edge);
    for (Glanced glanced : better) {
      see(glanced.frame, edge)
          .ifPresent(
              one -> closer.put(one.frame, one.withSharpness(focus.sharpnessOf(one.forFocus()))));
    }
    return frames.stream().map(frame -> closer.getOrDefault(frame, frame)).toList();
  }

  /**
   * A photo alone, already decoded.
   *
   * @param picture the whole photo, with the long edge that the detectors work at
   */
  AnalysedPhoto lookAlone(AnalysedPhoto frame, BufferedImage picture) {
    shown.accept(frame.photo(), picture);
    Seen seen = seen(frame, picture);
    return seen.withSharpness(BurstFocus.of(List.of(seen.forFocus())).sharpnessOf(seen.forFocus()));
  }

  /** Sharpest first, at most {@link #LATER_FRAMES}. */
  private List<Glanced> betterThan(
      List<Glanced> best,
      List<AnalysedPhoto> frames,
      Set<AnalysedPhoto> first,
      BurstFocus focus,
      int edge) {
    List<Glanced> better = new ArrayList<>();
    for (AnalysedPhoto frame : frames) {
      if (!first.contains(frame)) {
        decoded(frame, edge)
            .map(picture -> new Glanced(frame, focus.sharpnessOf(picture, frame.measures().map())))
            .filter(one -> best.stream().allMatch(one::mayBeat))
            .ifPresent(better::add);
      }
    }
    better.sort(Comparator.comparingDouble((Glanced one) -> -one.sharpness));
    return better.subList(0, Math.min(LATER_FRAMES, better.size()));
  }

  private Optional<BufferedImage> decoded(AnalysedPhoto frame, int edge) {
    try {
      return Optional.of(source.whole(frame.photo(), edge));
    } catch (UnusablePicture e) {
      return Optional.empty();
    }
  }

  private Optional<Seen> see(AnalysedPhoto frame, int edge) {
    return decoded(frame, edge).map(picture -> seen(frame, picture));
  }

  private Seen seen(AnalysedPhoto frame, BufferedImage picture) {
    BufferedImage small = Previews.scaled(picture, Detectors.WORKING_LONG_EDGE);
    CloseLook found = finder.look(small, frame.photo().orientationTagged());
    PixelSize seenAt = new PixelSize(small.getWidth(), small.getHeight());
    found = found.with(new Measurer().mainLook(small, BurstFocus.mainBox(found, seenAt)));
    PixelSize whole = new PixelSize(picture.getWidth(), picture.getHeight());
    return new Seen(frame, Detectors.scaled(found, seenAt, whole), picture);
  }
}
