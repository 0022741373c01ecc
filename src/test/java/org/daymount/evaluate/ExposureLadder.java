package org.daymount.evaluate;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import org.daymount.look.Measurer;

/** How often a photograph as taken is preferred to the same with more or less light. */
final class ExposureLadder {
  private static final double[] STOPS = {-2, -1.5, -1, -0.7, 0.7, 1, 1.5, 2};

  private ExposureLadder() {}

  static void print(List<EvalPhoto> photos, PrintStream out) {
    out.printf(Locale.ROOT, "%n%-34s %8s%n", "Well lit one preferred to", "right");
    Measurer measurer = new Measurer();
    double[] asTaken =
        photos.stream().mapToDouble(p -> measurer.measure(p.picture()).exposure()).toArray();
    for (double stops : STOPS) {
      int right = 0;
      for (int i = 0; i < asTaken.length; i++) {
        double altered = measurer.measure(Alter.exposed(photos.get(i).picture(), stops)).exposure();
        right += asTaken[i] > altered ? 1 : 0;
      }
      out.printf(Locale.ROOT, "%+.1f EV %35.1f%%%n", stops, 100.0 * right / asTaken.length);
    }
  }
}
