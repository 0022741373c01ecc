package org.daymount.evaluate;

import java.awt.image.BufferedImage;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Measurer;
import org.daymount.look.Measures;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.SaliencyMap;
import org.daymount.look.detect.BurstFocus;
import org.daymount.look.detect.CloseLooker;
import org.daymount.photo.Photo;
import org.daymount.pick.BurstWinner;
import org.daymount.unit.PixelBox;

/**
 * Which frame of a burst is taken for the sharpest; the first frame of each ladder is the right
 * one.
 */
final class BurstLadder {
  private static final long SEED = 20260603;
  private static final double[] BLURS = {0.6, 1, 1.6, 2.5};
  private static final double DEFOCUS = 1.6; // of what is not in focus, sigma in pixels
  private static final int[] SHAKES = {3, 5, 9};
  private static final double NOISE = 8;
  private static final String AROUND = "focus on all but the marked box";
  private static final String BACKGROUND = "focus on all but the outline";
  private static final int SAMPLED = 6; // every sixth photo climbs all ladders; a look takes time
  private static final double INSIDE_MARKED = 0.5; // of a face's box: it belongs to the subject

  private final PrintStream out;
  private final Measurer measurer = new Measurer();

  BurstLadder(PrintStream out) {
    this.out = out;
  }

  void print(List<EvalPhoto> photos) {
    out.printf(
        Locale.ROOT, "%n%-34s %8s %8s %8s %8s%n", "Right frame", "whole", "map", "box", "clarity");
    Map<String, int[]> right = new LinkedHashMap<>();
    Map<String, Integer> all = new LinkedHashMap<>();
    for (EvalPhoto photo : photos) {
      if (photo.subject().isEmpty()) {
        continue;
      }
      ladders(photo)
          .forEach(
              (name, frames) -> {
                all.merge(name, 1, Integer::sum);
                count(photo, frames.get(), right.computeIfAbsent(name, key -> new int[4]));
              });
    }
    right.forEach(
        (name, counts) ->
            out.printf(
                Locale.ROOT,
                "%-34s %7.1f%% %7.1f%% %7.1f%% %7.1f%%%n",
                name,
                100.0 * counts[0] / all.get(name),
                100.0 * counts[1] / all.get(name),
                100.0 * counts[2] / all.get(name),
                100.0 * counts[3] / all.get(name)));
  }

  /**
   * The same by the way the program goes: the detectors look at some frames, and the sharpness of
   * all is that of the face or subject found. The ladders with the sharp background are made with
   * the marked subject, once with the box around it and once with its outline; where the detectors
   * take something else for it (a face beside the marked horse), the frames say nothing about
   * sharpness, so of the harder one those are also counted apart.
   */
  void print(String name, Function<BufferedImage, CloseLook> detector, List<EvalPhoto> photos) {
    Map<String, int[]> right = new LinkedHashMap<>();
    List<String> misses = new ArrayList<>();
    List<EvalPhoto> marked = photos.stream().filter(p -> p.subject().isPresent()).toList();
    for (int i = 0; i < marked.size(); i++) {
      EvalPhoto photo = marked.get(i);
      boolean all = i % SAMPLED == 0;
      ladders(photo)
          .forEach(
              (ladder, frames) -> {
                if (all || ladder.equals(BACKGROUND) || ladder.equals(AROUND)) {
                  boolean isRight = winner(frames.get(), detector) == 0;
                  count(right, ladder, isRight);
                  boolean sharpBehind = ladder.equals(BACKGROUND) || ladder.equals(AROUND);
                  String at = "";
                  if (sharpBehind) {
                    boolean same = looksAtSubject(detector.apply(photo.picture()), photo);
                    at = same ? ", looking at the marked subject" : ", looking at another";
                    count(right, "  " + ladder + at, isRight);
                  }
                  if (!isRight) {
                    misses.add(photo.name() + " " + ladder + at);
                  }
                }
              });
    }
    out.printf(
        Locale.ROOT, "%n%-66s %8s %8s; wanted >= 98%%%n", "Right frame: " + name, "right", "of");
    right.forEach(
        (ladder, counts) ->
            out.printf(
                Locale.ROOT,
                "%-66s %7.1f%% %8d%n",
                ladder,
                100.0 * counts[0] / counts[1],
                counts[1]));
    misses.forEach(line -> out.println("    wrong: " + line));
  }

  private static void count(Map<String, int[]> right, String ladder, boolean isRight) {
    int[] counts = right.computeIfAbsent(ladder, key -> new int[2]);
    counts[0] += isRight ? 1 : 0;
    counts[1]++;
  }

  private int winner(List<BufferedImage> frames, Function<BufferedImage, CloseLook> detector) {
    List<AnalysedPhoto> looked = new ArrayList<>();
    for (BufferedImage frame : frames) {
      String name = "frame " + (frames.size() - looked.size()); // a tie goes to the last one
      looked.add(
          new AnalysedPhoto(
              new EvalPhoto(name, frame, List.of(), Optional.empty()).photo(),
              measurer.measure(frame)));
    }
    CloseLooker looker =
        new CloseLooker(
            (photo, edge) -> frames.get(numberOf(photo, frames)),
            (small, tagged) -> detector.apply(small));
    List<AnalysedPhoto> close =
        looker.look(looked).stream().filter(f -> f.measures().close().isPresent()).toList();
    return numberOf(BurstWinner.of(close).looked().photo(), frames);
  }

  private static int numberOf(Photo photo, List<BufferedImage> frames) {
    return frames.size() - Integer.parseInt(photo.file().lastName().replaceAll("\\D", ""));
  }

  private static boolean looksAtSubject(CloseLook look, EvalPhoto photo) {
    Mask mask = photo.subject().orElseThrow();
    return BurstFocus.mainBox(look, photo.size())
        .map(box -> box.within(photo.size()))
        .map(box -> mask.shareOf(box) >= INSIDE_MARKED || isAlike(box, mask.box()))
        .orElse(false);
  }

  /** Half of the area of both together is common (Jaccard index). */
  private static boolean isAlike(PixelBox one, PixelBox other) {
    long shared = one.sharedArea(other);
    return 2 * shared >= one.area() + other.area() - shared;
  }

  private void count(EvalPhoto photo, List<BufferedImage> frames, int[] right) {
    PixelBox whole = photo.size().whole();
    PixelBox box = photo.subject().orElseThrow().box();
    Map<BufferedImage, Measures> measured = new IdentityHashMap<>();
    frames.forEach(frame -> measured.put(frame, measurer.measure(frame)));
    List<ToDoubleFunction<BufferedImage>> measures =
        List.of(
            frame -> measurer.sharpnessIn(frame, whole, SaliencyMap.even(1, 1)),
            frame -> measured.get(frame).sharpness(),
            frame -> measurer.sharpnessIn(frame, box, measured.get(frame).map()),
            frame -> measured.get(frame).clarity());
    for (int m = 0; m < right.length; m++) {
      right[m] += choice(frames, measures.get(m)) == 0 ? 1 : 0;
    }
  }

  private static int choice(List<BufferedImage> frames, ToDoubleFunction<BufferedImage> measure) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = frames.size() - 1; i >= 0; i--) { // a tie counts as wrong: the last one keeps it
      double value = measure.applyAsDouble(frames.get(i));
      if (value > most) {
        most = value;
        best = i;
      }
    }
    return best;
  }

  /** Frames are made when they are asked for: noise on large pictures takes its time. */
  private static Map<String, Supplier<List<BufferedImage>>> ladders(EvalPhoto photo) {
    BufferedImage sharp = photo.picture();
    Mask mask = photo.subject().orElseThrow();
    Random random = new Random(SEED + photo.name().hashCode());
    Map<String, Supplier<List<BufferedImage>>> ladders = new LinkedHashMap<>();
    ladders.put("out of focus, sigma .6 to 2.5", () -> with(sharp, blurs(sharp)));
    ladders.put("and noise on the soft ones", () -> with(sharp, noisy(blurs(sharp), random)));
    ladders.put("and noise on all", () -> noisy(with(sharp, blurs(sharp)), random));
    ladders.put(
        "shaken, 3 to 9 px",
        () -> with(sharp, Arrays.stream(SHAKES).mapToObj(by -> Alter.shaken(sharp, by)).toList()));
    ladders.put(
        AROUND,
        () -> {
          BufferedImage blurred = Alter.blurred(sharp, DEFOCUS);
          return List.of(
              Alter.pasted(blurred, sharp, mask.box()), Alter.pasted(sharp, blurred, mask.box()));
        });
    ladders.put(
        BACKGROUND,
        () -> {
          BufferedImage blurred = Alter.blurred(sharp, DEFOCUS);
          return List.of(Alter.joined(mask, sharp, blurred), Alter.joined(mask, blurred, sharp));
        });
    return ladders;
  }

  private static List<BufferedImage> blurs(BufferedImage sharp) {
    return Arrays.stream(BLURS).mapToObj(sigma -> Alter.blurred(sharp, sigma)).toList();
  }

  private static List<BufferedImage> noisy(List<BufferedImage> frames, Random random) {
    return frames.stream().map(frame -> Alter.noisy(frame, NOISE, random)).toList();
  }

  private static List<BufferedImage> with(BufferedImage first, List<BufferedImage> others) {
    List<BufferedImage> all = new ArrayList<>(List.of(first));
    all.addAll(others);
    return all;
  }
}
