package org.daymount.evaluate;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoublePredicate;
import org.daymount.look.Measurer;
import org.daymount.look.Miniature;

/**
 * How surely a closer crop of a photograph is found in it, and how seldom an unrelated one is.
 * Crops hold .5 to .9 of the sides, anywhere, up to 3 % wider or narrower, half a stop lighter or
 * darker.
 */
final class SceneTable {
  private static final double[] FROM = {0.70, 0.75, 0.80}; // of Miniature.shows
  private static final int CROPS = 3; // of each photograph

  private SceneTable() {}

  static void print(List<EvalPhoto> photos, PrintStream out) {
    out.printf("%n%-34s %8s", "Same scene, found in %", "pairs");
    for (double from : FROM) {
      out.printf(Locale.ROOT, " %8.2f", from);
    }
    out.println();
    for (int half = 0; half < 2; half++) {
      Random chance = new Random(half);
      List<EvalPhoto> some = new ArrayList<>();
      for (EvalPhoto photo : photos) {
        if (EvalSet.half(photo.name()) == half) {
          some.add(photo);
        }
      }
      List<Miniature> wholes = some.stream().map(one -> of(one.picture())).toList();
      List<Double> closer = new ArrayList<>();
      List<Double> others = new ArrayList<>();
      for (int i = 0; i < some.size(); i++) {
        for (int crop = 0; crop < CROPS; crop++) {
          closer.add(wholes.get(i).shows(of(closer(some.get(i).picture(), chance)), 1));
        }
        for (int j = 0; j < some.size(); j++) {
          if (j != i) {
            others.add(
                wholes
                    .get(i)
                    .shows(
                        wholes.get(j), some.get(j).size().aspect() / some.get(i).size().aspect()));
          }
        }
      }
      String name = half == 0 ? "tuned on" : "the other half";
      row("closer crops, " + name, closer, out);
      row("unrelated, " + name, others, out);
    }
  }

  private static void row(String name, List<Double> values, PrintStream out) {
    out.printf("%-34s %8d", name, values.size());
    for (double from : FROM) {
      DoublePredicate found = value -> value >= from;
      double share =
          values.stream().mapToDouble(Double::doubleValue).filter(found).count()
              / (double) values.size();
      out.printf(Locale.ROOT, " %8.2f", 100 * share);
    }
    out.println();
  }

  private static Miniature of(BufferedImage picture) {
    return new Measurer().measure(picture).fingerprint().miniature();
  }

  private static BufferedImage closer(BufferedImage picture, Random chance) {
    double share = 0.5 + 0.4 * chance.nextDouble();
    int width = (int) (picture.getWidth() * share * (0.97 + 0.06 * chance.nextDouble()));
    int height = (int) (picture.getHeight() * share);
    int x = (int) ((picture.getWidth() - width) * chance.nextDouble());
    int y = (int) ((picture.getHeight() - height) * chance.nextDouble());
    BufferedImage part = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = part.createGraphics();
    pen.drawImage(picture, -x, -y, null);
    pen.dispose();
    return Alter.exposed(part, chance.nextDouble() - 0.5);
  }
}
