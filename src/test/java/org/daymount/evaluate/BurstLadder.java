package org.daymount.evaluate;

import java.awt.image.BufferedImage;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.daymount.look.Measurer;
import org.daymount.unit.PixelBox;

/**
 * Which frame of a burst is taken for the sharpest; the first frame of each ladder is the right
 * one.
 */
final class BurstLadder {
  private static final long SEED = 20260603;
  private static final double[] BLURS = {0.6, 1, 1.6, 2.5};
  private static final int[] SHAKES = {3, 5, 9};
  private static final double NOISE = 8;

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
    Random random = new Random(SEED);
    for (EvalPhoto photo : photos) {
      if (photo.subject().isEmpty()) {
        continue;
      }
      ladders(photo, random)
          .forEach(
              (name, frames) -> {
                all.merge(name, 1, Integer::sum);
                count(photo, frames, right.computeIfAbsent(name, key -> new int[4]));
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

  private void count(EvalPhoto photo, List<BufferedImage> frames, int[] right) {
    PixelBox whole = photo.size().whole();
    PixelBox box = photo.subject().orElseThrow().box();
    List<ToDoubleFunction<BufferedImage>> measures =
        List.of(
            frame -> measurer.sharpnessIn(frame, whole),
            frame -> measurer.measure(frame).sharpness(),
            frame -> measurer.sharpnessIn(frame, box),
            frame -> measurer.measure(frame).clarity());
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

  private static Map<String, List<BufferedImage>> ladders(EvalPhoto photo, Random random) {
    BufferedImage sharp = photo.picture();
    Mask mask = photo.subject().orElseThrow();
    Map<String, List<BufferedImage>> ladders = new LinkedHashMap<>();
    List<BufferedImage> soft = new ArrayList<>(List.of(sharp));
    List<BufferedImage> noisy = new ArrayList<>(List.of(sharp));
    List<BufferedImage> allNoisy = new ArrayList<>(List.of(Alter.noisy(sharp, NOISE, random)));
    for (double blur : BLURS) {
      BufferedImage blurred = Alter.blurred(sharp, blur);
      soft.add(blurred);
      noisy.add(Alter.noisy(blurred, NOISE, random));
      allNoisy.add(Alter.noisy(blurred, NOISE, random));
    }
    ladders.put("out of focus, sigma .6 to 2.5", soft);
    ladders.put("and noise on the soft ones", noisy);
    ladders.put("and noise on all", allNoisy);
    List<BufferedImage> shaken = new ArrayList<>(List.of(sharp));
    for (int shake : SHAKES) {
      shaken.add(Alter.shaken(sharp, shake));
    }
    ladders.put("shaken, 3 to 9 px", shaken);
    BufferedImage blurred = Alter.blurred(sharp, BLURS[2]);
    ladders.put(
        "focus on the background instead",
        List.of(Alter.joined(mask, sharp, blurred), Alter.joined(mask, blurred, sharp)));
    return ladders;
  }
}
